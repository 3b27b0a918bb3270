// What the plan's documents ask of a value, said beside its field; the first press of − or + begins there. Nothing is filled in.

import { LIKELY_CELSIUS, likely, shaped } from "../../format.js";
import { say } from "../../text/say.js";

/**
 * Returns { aside, start, likely } for a number of a task: what the sheet, the contract or the plan says about it, and between
 * which values it is likely; nothing where none does.
 */
export function asksOf(view, kind, { key, shape }) {
  const asked = view.repair.plan && ASKS[kind]?.[key]?.(view.repair.plan, view);
  if (!asked) return {};
  const [low, high] = asked.range ?? [asked.value, asked.value];
  return {
    start: asked.start === undefined ? low / shape.per : asked.start / shape.per,
    likely: within(key, low, high),
    aside: say(asked.says, { low: shaped(shape, low), high: shaped(shape, high) }),
  };
}

// A bare end is asked for at least, and may be much longer; a span has but one unit.
function within(key, low, high) {
  if (key.endsWith("_mc")) return LIKELY_CELSIUS;
  if (high <= 0) return undefined;
  if (key === "front_um" || key === "rear_um") return likely(low, 2.5 * high);
  return /_(pa|um)$/.test(key) ? likely(low, high) : undefined;
}

const value = (says, of) => (plan, view) => { const found = of(plan, view); return found === undefined || found === null ? undefined : { says, value: found }; };

const temperature = (key) => value("asks.last", (plan, view) => (view.repair.attempts.at(-1)?.temperatures.at(-1)?.[1] ?? plan.choice.temperatures)[key]);
const TEMPERATURES = { resin_mc: temperature("resin_mc"), air_mc: temperature("air_mc"), pipe_mc: temperature("pipe_mc"), water_mc: temperature("water_mc") };

const stored = (plan) => ({ says: "asks.range", range: [plan.resin.storage_least_mc.value, plan.resin.storage_most_mc.value] });
const bare = value("asks.least", ({ patch }) => patch.bare_end_least_um.value);

const ASKS = {
  measured_diameter: {
    least_um: value("asks.plan", ({ choice }) => choice.diameter_least_um),
    most_um: value("asks.plan", ({ choice }) => choice.diameter_most_um),
  },
  packer_test: {
    gauge_pa: value("asks.sheet", ({ packer }) => packer.test_pressure_pa.value),
    held_ms: value("asks.sheet", ({ packer }) => packer.test_ms.value),
  },
  lots: { stored_least_mc: stored, stored_most_mc: stored },
  temperatures: TEMPERATURES,
  bare_ends: { front_um: bare, rear_um: bare },
  mixed: { mixed_ms: value("asks.least", ({ resin }) => resin.mixing_least_ms.value) },
  seam: { hour: value("asks.plan", ({ choice }) => choice.seam_hour || undefined) },
  at_the_mark: { counter_um: value("asks.plan", ({ computed: { patches: [patch] } }) => Math.floor((patch.from_um + patch.to_um) / 2)) },
};
