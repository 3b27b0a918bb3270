// The chart of a hold, wide and narrow, with what was not witnessed said below it.

import { html } from "../../html.js";
import { between, range, unitOf } from "../../format.js";
import { figure } from "../../drawings/svg.js";
import { holdChart } from "../../drawings/hold-chart.js";
import { say } from "../../text/say.js";
import { at, nowOf } from "./about.js";

/** Returns the chart of a repair's hold. */
export function chart(view, id = "hold") {
  const { hold } = view;
  const gaps = hold.stretches.filter(({ kind }) => kind === "not_witnessed");
  const now = nowOf(view);
  const end = hold.released_ms ?? Math.max(now, hold.earliest_release_ms);
  const common = {
    readings: hold.readings.map(({ at_ms, gauge_pa: pa }) => ({ at_ms, bar: pa / 1e5 })), gaps,
    window_bar: [hold.window.lower_pa / 1e5, hold.window.upper_pa / 1e5],
    now_ms: hold.released_ms ? undefined : now, release_ms: hold.missing_ms > 0 && !hold.released_ms ? hold.earliest_release_ms : undefined,
    from_ms: hold.target_ms - 60_000, to_ms: end + 300_000, offset_min: view.now?.offset_min ?? 0,
    label: say("hold.chart", { range: range("bar", hold.window.lower_pa, hold.window.upper_pa) }),
  };
  return figure({
    kind: "hold-chart", flush: true, above: html`<b>${say("hold.pressure", { unit: unitOf("bar") })}</b> ${window(hold)}`,
    inside: html`<div class="only-narrow">${holdChart({ ...common, id: `${id}-n`, narrow: true })}</div><div class="only-wide">${holdChart({ ...common, id: `${id}-w`, height: 260 })}</div>`,
    caption: gaps.length > 0 && gapSays(view, gaps),
  });
}

const window = ({ window: { lower_pa: low, upper_pa: high, lower_governs: below, upper_governs: above } }) =>
  say("hold.window", { range: between("bar", low, high), low: below, high: above });

function gapSays(view, gaps) {
  const allowed = view.repair.plan.contract.reading_interval_ms.value / 60_000;
  return gaps.map(({ from_ms: from, to_ms: to }) => say("hold.gap_says", { from: at(view, from), to: at(view, to), min: Math.ceil((to - from) / 60e3), allowed })).join(" ");
}
