// An observation as a list shows it: where, at which hour, and what a patch could do for it. Stations are in metres.

import { hours, quantity, range } from "../../format.js";
import { say, within } from "../../text/say.js";

/** Start, finish and intermediate nodes, and what is no damage: kept, and out of the way (EN 13508-2, main codes BCD, BCE and BD). */
const ASIDE = /^(BCD|BCE|BD)/;

/** Returns { shown, aside }: a continuous defect stands in two rows of the file and is one here, with its other end as `until`. */
export function folded(observations) {
  const rows = observations.filter((one) => one.other_end === null || one.index < one.other_end)
    .map((one) => (one.other_end === null ? one : { ...one, until: observations[one.other_end] }));
  return { shown: rows.filter(({ code }) => !ASIDE.test(code)), aside: rows.filter(({ code }) => ASIDE.test(code)) };
}

/** Returns [from, to] counted by `key`, "upstream_um" or "downstream_um"; nothing where the file does not say. */
export function stations(one, key = "upstream_um") {
  const ends = [one[key], (one.until ?? one)[key]];
  if (ends.includes(null)) return undefined;
  return [...ends].sort((a, b) => a - b);
}

/** Returns an extent with its unit: `18.46 – 18.68 m`, or one place. */
export const placed = ([from, to]) => (from === to ? quantity("m", from) : range("m", from, to));

/** Returns the clock position, looking downstream, or nothing. */
export const clock = (one) => one.clock_from && hours(one.clock_from, one.clock_to ?? one.clock_from);

/** Returns what a patch could do for it, as text: it never closes anything. */
export const advice = ({ advice: { advice: says }, advice_words: why, lateral }) => (says === "yes" || lateral ? "" : say(`advice.${says}`, { why }));

/** Returns a few words for the drawing. */
export const short = (one) => (one.lateral ? say("line.lateral") : within(one.words.split(",")[0]));
