// One reading: pressure, pipe wall, water, entered in gloves.

import { html } from "../../html.js";
import { LIKELY_CELSIUS, amount, beside, between, inRecorded, likelyGauge, number, quantity, range as ranged, short as shortOf } from "../../format.js";
import { scale } from "../../drawings/scale.js";
import { roundStep } from "../../drawings/svg.js";
import { form } from "../../parts/action.js";
import { act, deck, small } from "../../parts/deck.js";
import { entry } from "../../parts/entry.js";
import { field, picks } from "../../parts/field.js";
import { problemOf } from "../../parts/problem-list.js";
import { say, within } from "../../text/say.js";
import { agoLink, agoOf, at, attempt, frame, tell, to, where } from "./frame.js";
import { short } from "./who.js";

export const title = () => say("reading.title");

const FORM = "reading";
const NAME = "command.happening";

/** The values of a reading: key, wire steps of one unit, decimals, step, unit. */
const VALUES = {
  gauge_pa: { steps: 100_000, digits: 2, step: 0.01, unit: "bar" },
  pipe_mc: { steps: 1000, digits: 1, step: 0.5, unit: "°C", likely: LIKELY_CELSIUS },
  upstream_um: { steps: 1_000_000, digits: 2, step: 0.01, unit: "m" },
  water_mc: { steps: 1000, digits: 1, step: 0.5, unit: "°C", likely: LIKELY_CELSIUS },
  outside_pa: { steps: 100_000, digits: 3, step: 0.001, unit: "bar", min: 0.5, max: 1.1 },
};

export function render(view) {
  const ago = agoOf(view, "reading");
  return frame(view, {
    title: title(),
    main: form({
      id: FORM, then: to(view), kind: "stack", does: tell(view, { command: "report", ...(ago > 0 && { ago_ms: ago }), happening: { what: "reading", by: "hand", gauge: gaugeOf(view) } }),
      inside: html`${valueOf(view, "gauge_pa", { needed: true, likely: likelyGauge(view.hold.window) })}${inside(view)}${valueOf(view, "pipe_mc")}${valueOf(view, "upstream_um")}${valueOf(view, "water_mc")}${outside(view)}${gauges(view)}
        ${field({ id: "why", name: `${NAME}.why`, label: say("reading.why"), value: draft(view, "why") ?? "" })}`,
    }),
    foot: deck({ more: [small({ mark: "cross", label: say("stop.back_to", { stage: within(say("stage.hold")) }), href: to(view) }), small({ mark: "ago", label: say("deck.ago", { n: agoLink(view, "reading").min }), href: to(view, "ago/reading") })],
      act: act({ label: say(`reading.act_${typedOf(view).length}`), note: says(view), mark: "tick", form: FORM }) }),
  });
}

const draft = (view, key) => view.drafts?.[FORM]?.[`${NAME}.${key}`];
const last = (view, key) => view.hold.readings.findLast((reading) => reading[key] !== null && reading[key] !== undefined);
const WIRE = { gauge_pa: "bar", pipe_mc: "celsius", upstream_um: "m", water_mc: "celsius", outside_pa: "bar" };
const shown = (key, value) => beside(WIRE[key], value, VALUES[key].digits);

// Empty until somebody reads it: the last value stands beside, and the first press of − or + begins there.
function valueOf(view, key, more = {}) {
  const { steps, digits, step, unit, min, max, likely } = VALUES[key];
  const before = last(view, key);
  return entry({
    id: key, name: `${NAME}.${key}`, label: say(`reading.${key}`, { node: where(view).strong }), unit, digits, steps, step, min, max, likely, ...more,
    start: before && before[key] / steps, aside: before && say("reading.last", { n: shown(key, before[key]), at: at(view, before.at_ms) }),
    value: draft(view, key) ?? "", problem: problemOf(view.problems, key),
  });
}

// Asked until somebody has read it once. No value stands in for it: the height of the place changes it by a tenth.
const outside = (view) => view.hold.leak.outside_pa === null && html`${valueOf(view, "outside_pa", { aside: say("reading.outside_once") })}<p class="soft">${say("reading.outside_note")}</p>`;

// Says before it is sent whether the pressure lies in the window; it is recorded either way.
function inside(view) {
  const { lower_pa: lower, upper_pa: upper } = view.hold.window;
  const typed = inRecorded("bar", draft(view, "gauge_pa") ?? "");
  const gauge = typed === null ? undefined : Math.round(typed * 1e5);
  const [low, high, value] = [lower, upper, gauge].map((pa) => (pa === undefined ? NaN : amount("bar", pa)));
  const long = roundStep((high - low) / 4);
  const [from, last] = [Math.floor(low / long - 0.3) * long, Math.ceil(high / long + 0.3) * long];
  const verdict = gauge === undefined ? "window" : gauge < lower || gauge > upper ? "outside" : "inside";
  const digits = long < 1 ? 2 : 0;
  return scale({
    from, to: last, every: long / 10, long, window: [low, high], value, left: number(from, digits), right: number(last, digits),
    label: say(`reading.${verdict}_label`, { n: quantity("bar", gauge ?? 0), range: ranged("bar", lower, upper) }), says: say(`reading.${verdict}`, { range: between("bar", lower, upper) }),
  });
}

const gaugeOf = (view) => attempt(view).readings.at(-1)?.gauge || Object.values(attempt(view).answers).find(({ kind }) => kind === "instruments")?.answer.values?.gauge || "";

// The gauge is picked where there is more than one.
function gauges(view) {
  const all = view.repair.plan.instruments.filter(({ kind }) => kind === "pressure_gauge");
  return all.length > 1 && picks({ id: "gauge", name: `${NAME}.gauge`, label: say("reading.gauge"), value: draft(view, "gauge") ?? gaugeOf(view), options: all.map(({ id, name }) => ({ value: id, label: name })) });
}

const UNITS = { gauge_pa: (v) => quantity("bar", v), pipe_mc: (v) => shortOf("celsius", v), upstream_um: (v) => quantity("m", v), water_mc: (v) => shortOf("celsius", v), outside_pa: (v) => quantity("bar", v, 3) };

const typedOf = (view) => Object.keys(UNITS).map((key) => [key, inRecorded(WIRE[key], draft(view, key) ?? "")]).filter(([, value]) => value !== null);

/** Returns in words what would be recorded: the values, and who reads them. */
function says(view) {
  const typed = typedOf(view).map(([key, value]) => UNITS[key](value * VALUES[key].steps));
  const who = view.people.find(({ id }) => id === view.person);
  return [typed.join(", ") || say("hold.read_note"), who && short(who.name)].filter(Boolean).join(" · ");
}
