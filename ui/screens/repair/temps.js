// Three temperatures to enter, and the water's where there is any.

import { html } from "../../html.js";
import { LIKELY_CELSIUS, number, quantity } from "../../format.js";
import { entry } from "../../parts/entry.js";
import { problemOf } from "../../parts/problem-list.js";
import { say } from "../../text/say.js";

const PLACES = ["resin_mc", "air_mc", "pipe_mc", "water_mc"];
const given = (value) => value !== undefined && value !== null;

/**
 * Returns the entries. `prefix` is the path in the request, `drafts` what was typed, `last` the set read last. `fresh` leaves
 * them empty, because an old reading is no reading: the first press of − or + begins at the last one.
 */
export const temperatureEntries = ({ prefix, drafts = {}, last = {}, fresh = false, problems = [] }) => html`${PLACES.map((key) => {
  const shown = given(last[key]) ? number(last[key] / 1000, 1) : undefined;
  return entry({
    id: key, name: `${prefix}.${key}`, label: say(`temperature.${key}`), unit: "°C", digits: 1, steps: 1000, step: 0.5, min: -30, max: 80, likely: LIKELY_CELSIUS, start: shown && Number(last[key] / 1000),
    aside: shown && say("temperature.last", { n: quantity("celsius", last[key], 1) }), value: drafts[`${prefix}.${key}`] ?? (fresh ? "" : shown ?? ""), needed: fresh && key !== "water_mc", problem: fresh ? problemOf(problems, key) : undefined,
  });
})}`;

/** Returns the three that bear on the working time, for the rule. */
export const onTheRule = (set) => [["resin", set.resin_mc], ["air", set.air_mc], ["pipe", set.pipe_mc]].map(([name, mc]) => ({ name: say(`temperature.${name}`), celsius: mc / 1000 }));
