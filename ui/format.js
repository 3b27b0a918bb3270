// Numbers with their units, spans as min:s, moments in local time. Wire units in (µm, Pa, mg, m°C, ms), text out.

import { say } from "./text/say.js";

/** A non-breaking space: a value and its unit stay on one line. */
const NB = "\u00a0";

let point = ".";

/** Writes numbers as a language has them (CLDR: a comma before the decimals in German, Spanish and French). */
export const useLanguage = (tag) => { point = tag === "en" ? "." : ","; };

/** Returns `value` with `digits` decimals, a true minus sign and the decimal sign of the language. */
export const number = (value, digits = 0) => {
  const text = Math.abs(value).toFixed(digits).replace(".", point);
  return value < 0 && /[1-9]/.test(text) ? `\u2212${text}` : text;
};

/** What a wire unit is on the screen: how many wire steps make one, its unit, its usual decimals. */
export const UNITS = {
  m: { steps: 1e6, unit: "m", digits: 2 },
  mm: { steps: 1e3, unit: "mm", digits: 0 },
  bar: { steps: 1e5, unit: "bar", digits: 2 },
  kg: { steps: 1e6, unit: "kg", digits: 3 },
  g: { steps: 1e3, unit: "g", digits: 0 },
  celsius: { steps: 1e3, unit: "°C", digits: 0 },
  kN: { steps: 1e3, unit: "kN", digits: 1 },
  min: { steps: 60e3, unit: "min", digits: 0 },
};

/** The same in US customary units (NIST SP 811, B.8): how many wire steps make one, and what is added for a shifted zero. */
const CUSTOMARY = {
  m: { per: 304_800, unit: "ft", digits: 2, step: 0.1 }, mm: { per: 25_400, unit: "in", digits: 2, step: 0.05 }, bar: { per: 6_894.757293168361, unit: "psi", digits: 1, step: 0.5 },
  kg: { per: 453_592.37, unit: "lb", digits: 3, step: 0.01 }, kN: { per: 4.4482216152605, unit: "lbf", digits: 0, step: 1 }, g: { per: 28_349.523125, unit: "oz", digits: 1, step: 0.5 }, "°C": { per: 1e3 / 1.8, plus: -32e3 / 1.8, unit: "°F", digits: 1, step: 1 },
};

let customary = false;

/** Sets the system of units in which values are shown and typed: "us" or "si". */
export const useUnits = (name) => { customary = name === "us"; };

/** Returns how a unit is shown now, { per, plus, unit, digits, step }, or nothing where it stays as it is. */
export const shownAs = (unit) => (customary ? CUSTOMARY[unit] : undefined);

const inShown = ({ per, plus = 0 }, steps) => (steps - plus) / per;

/** Returns the unit in which a wire quantity is shown now. */
export const unitOf = (unit) => shownAs(UNITS[unit].unit)?.unit ?? UNITS[unit].unit;

/** Returns a wire quantity as a number in the unit that is shown, for a drawing. */
export function amount(unit, steps) {
  const other = shownAs(UNITS[unit].unit);
  return other ? inShown(other, steps) : steps / UNITS[unit].steps;
}

// Decimals beyond the usual ones are kept in the other unit too.
function decimals(unit, asked) {
  const { unit: own, digits } = UNITS[unit];
  const other = shownAs(own);
  return other ? other.digits + Math.max(0, (asked ?? digits) - digits) : asked ?? digits;
}

/** Returns the bare figure of a wire quantity: `figure("m", 18_570_000)` is `18.57`, or `60.93` where feet are shown. */
export const figure = (unit, steps, digits) => number(amount(unit, steps), decimals(unit, digits));

// Six more decimals are enough to tell a figure from the rounding of binary fractions.
function cut(unit, steps, to) {
  const ten = 10 ** decimals(unit);
  return number(to(Number((amount(unit, steps) * ten).toFixed(6))) / ten, decimals(unit));
}

/** Returns the bare figure rounded down, for what must not look larger than it is. */
export const down = (unit, steps) => cut(unit, steps, Math.floor);

/** Returns figure and unit rounded up, for a danger that must not look smaller than it is. */
export const up = (unit, steps) => `${cut(unit, steps, Math.ceil)}${NB}${unitOf(unit)}`;

/** Returns figure and unit: `quantity("bar", 121_000)` is `1.21 bar`. */
export const quantity = (unit, steps, digits) => `${figure(unit, steps, digits)}${NB}${unitOf(unit)}`;

/** Returns figure and unit without zeros at the end, for temperatures and limits: `17.5 °C`, `9 °C`. */
export function short(unit, steps, most = 1) {
  const shown = amount(unit, steps).toFixed(shownAs(UNITS[unit].unit)?.digits ?? most);
  return `${number(Number(shown), (String(Number(shown)).split(".")[1] ?? "").length)}${NB}${unitOf(unit)}`;
}

/** Returns a bare range: `1.10 – 1.40`. */
export const between = (unit, low, high, digits) => `${figure(unit, low, digits)}${NB}–${NB}${figure(unit, high, digits)}`;

/** Returns a range with its unit once: `1.10 – 1.40 bar`. */
export const range = (unit, low, high, digits) => `${figure(unit, low, digits)}${NB}–${NB}${quantity(unit, high, digits)}`;

/** Returns a number of a field in words, by the shape of the field: its unit, the wire steps of one, its decimals. */
export function shaped({ unit, per, decimals: digits }, value) {
  const known = Object.keys(UNITS).find((name) => UNITS[name].unit === unit);
  return known ? quantity(known, (value * UNITS[known].steps) / per, digits) : `${number(value / per, digits)}${unit && `${NB}${unit}`}`;
}

// How many of a field's own steps make one unit that is shown: a field may record kilograms in grams.
function stepped(other, unit, steps) {
  const of = steps / Object.values(UNITS).find((one) => one.unit === unit).steps;
  return { ...other, per: other.per * of, plus: (other.plus ?? 0) * of };
}

/**
 * Returns an entry of a wire quantity in the units that are shown now. A plain number in it is in the recorded unit; what was
 * typed carries its unit and stays as it is. `shown` and `own` tell the form what nobody has touched.
 */
export function localEntry({ unit, steps, value, step, min, max, digits, start }) {
  const known = shownAs(unit);
  const other = known && steps > 1 && stepped(known, unit, steps);
  if (!other) return { unit, steps, value: bare(value, unit), step, min, max, digits, start };
  const turned = (of) => (of === undefined || of === null || of === "" ? of : Number(inShown(other, Number(of) * steps).toFixed(other.digits)));
  const plain = typed(String(value ?? ""));
  const shown = plain === null ? bare(value, other.unit) : inShown(other, plain * steps).toFixed(other.digits);
  return { unit: other.unit, steps: other.per, plus: other.plus, value: shown, own: plain === null ? undefined : Math.round(plain * steps), step: other.step, min: turned(min), max: turned(max), digits: other.digits, start: turned(start) };
}

/** Returns a figure that stands beside an entry: bare in the recorded unit, with its unit in any other. */
export const beside = (unit, steps, digits) => (shownAs(UNITS[unit].unit) ? quantity(unit, steps) : figure(unit, steps, digits));

/**
 * Returns what was typed as a number in the recorded unit, or null: `inRecorded("bar", "17.4 psi")` is 1.1997. A field gives
 * its { unit, steps } instead of a name.
 */
export function inRecorded(of, text) {
  const { steps, unit: own } = UNITS[of] ?? of;
  const other = CUSTOMARY[own];
  const plain = typed(bare(text, other?.unit ?? own));
  return plain === null || !other || !String(text).endsWith(` ${other.unit}`) ? typed(bare(text, own)) : (plain * other.per + (other.plus ?? 0)) / steps;
}

/** Returns between which steps a value is likely that is expected from `low` to `high`; outside, a slip of the unit is asked about. */
export const likely = (low, high = low) => [Math.round(0.3 * low), Math.round(2 * high)];

/** Returns the same for a gauge pressure, from its window. */
export const likelyGauge = ({ lower_pa: lower, upper_pa: upper }) => likely(lower, upper);

/** Between which temperatures, in thousandths of °C, a reading beside a manhole is likely. */
export const LIKELY_CELSIUS = [-20_000, 45_000];

/** Returns what was typed without the unit that stands beside it. */
export const bare = (value, unit) => { const text = String(value ?? ""); return text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text; };

/** Returns whole seconds of a span. Down is right for time that is left, up for time that is gone: in nobody's favour. */
const wholeSeconds = (ms, round) => (round === "up" ? Math.ceil(ms / 1000) : Math.floor(ms / 1000));

/** Returns a span as `18:42`, from an hour on `1:05:00`. Negative spans carry a minus sign. `round` is "down" or "up". */
export function minSec(ms, round = "down") {
  const s = Math.abs(wholeSeconds(ms, round));
  const rest = `${pad(Math.floor(s / 60) % 60, s >= 3600)}:${pad(s % 60, true)}`;
  return `${ms < 0 && s > 0 ? "\u2212" : ""}${s >= 3600 ? `${Math.floor(s / 3600)}:` : ""}${rest}`;
}

/** Returns a span in minutes and seconds, however long: `81:12`. Rounded down. */
export const inMinutes = (ms) => `${minutes(ms)}:${pad(wholeSeconds(ms, "down") % 60, true)}`;

/** Returns a span in words that are read aloud well: `18 min 42 s`, `8 h 49 min`. */
export function span(ms, round = "down") {
  const s = Math.abs(wholeSeconds(ms, round));
  const parts = s >= 3600 ? [[Math.floor(s / 3600), "h"], [Math.floor(s / 60) % 60, "min"]] : [[Math.floor(s / 60), "min"], [s % 60, "s"]];
  const said = parts.filter(([n]) => n > 0).map(([n, unit]) => `${n}${NB}${unit}`);
  return said.join(" ") || `0${NB}s`;
}

/** Returns whole minutes of a span, down by default. */
export const minutes = (ms, round = "down") => (round === "up" ? Math.ceil(ms / 60e3) : Math.floor(ms / 60e3));

const pad = (n, wanted) => String(n).padStart(wanted ? 2 : 1, "0");

// The offset that was recorded, not the one of this device: a record reads the same everywhere.
const local = (atMs, offsetMin) => new Date(atMs + offsetMin * 60e3);

/** Returns local time of day, `13:36`, or with seconds `13:02:10`. */
export function time(atMs, offsetMin, seconds = false) {
  const d = local(atMs, offsetMin);
  const text = `${pad(d.getUTCHours(), true)}:${pad(d.getUTCMinutes(), true)}`;
  return seconds ? `${text}:${pad(d.getUTCSeconds(), true)}` : text;
}

/** Returns the day where it is not the day of `nowMs`, and nothing where it is. */
export const otherDay = (atMs, nowMs, offsetMin) => (day(atMs, offsetMin) === day(nowMs, offsetMin) ? "" : day(atMs, offsetMin));

/** Returns local time of day, with its day behind it where that is not the day of `nowMs`: `02:10, Thu 15 Oct`. */
export const timeSeen = (atMs, nowMs, offsetMin) => [time(atMs, offsetMin), otherDay(atMs, nowMs, offsetMin)].filter(Boolean).join(", ");

// The names stand in the catalogue: an engine that writes dates itself reads its tables first, which takes as long as a screen.
const named = (list, n) => say(list).split(" ")[n];
const ofMonth = (d) => say("date.day", { day: d.getUTCDate(), month: named("date.months", d.getUTCMonth()) });

/** Returns `14 Oct 2026`. */
export function date(atMs, offsetMin) {
  const d = local(atMs, offsetMin);
  return `${ofMonth(d)} ${d.getUTCFullYear()}`.replaceAll(" ", NB);
}

/** Returns `Wed 14 Oct`. */
export function day(atMs, offsetMin) {
  const d = local(atMs, offsetMin);
  return `${named("date.weekdays", d.getUTCDay())} ${ofMonth(d)}`.replaceAll(" ", NB);
}

/** Returns a day written as `2026-10-14` as `14 Oct 2026`; anything else as it stands. */
export function isoDate(text) {
  const ms = /^\d{4}-\d\d-\d\d$/.test(text ?? "") ? Date.parse(`${text}T00:00:00Z`) : NaN;
  return Number.isNaN(ms) ? text ?? "" : date(ms, 0);
}

/** Returns a clock position: `12 h`, or a range clockwise `10 – 2 h`. */
export const hours = (from, to = from) => (from === to ? `${from}${NB}h` : `${from}${NB}–${NB}${to}${NB}h`);

/**
 * Returns what somebody typed as a number, or null. Takes a comma for a point, a true minus, and min:s where `minSec`.
 * Anything else is no number: it is never guessed.
 */
export function typed(text, { minSec = false } = {}) {
  const plain = String(text).trim().replace("\u2212", "-").replace(",", ".");
  const span = minSec && /^(\d+):([0-5]\d)$/.exec(plain);
  if (span) return Number(span[1]) * 60 + Number(span[2]);
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}
