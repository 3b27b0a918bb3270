// What runs by itself: mixed resin, holds and cures, each named by its manhole.

import { html } from "../../html.js";
import { figure as figureOf, minSec, minutes, otherDay, span, time, unitOf } from "../../format.js";
import { holdChart } from "../../drawings/hold-chart.js";
import { figure } from "../../drawings/svg.js";
import { liveCure, liveHold } from "../../parts/live.js";
import { note } from "../../parts/note.js";
import { tape } from "../../parts/tape.js";
import { say } from "../../text/say.js";
import { figures, label } from "../followed/words.js";

const at = (view, ms) => time(ms, view.now.offset_min);
const street = ({ street: name, number: no, rehearsal }) => html`${rehearsal && html`<b>${say("rehearsal.word")}</b> · `}${name}${name && no && " · "}<span class="nowrap">${no}</span>`;

/** Returns the article of mixed resin: what is left of the working time. */
export function mixed(view, { summary, clock, trouble }) {
  const left = clock.deadline_ms - view.now.at_ms;
  const all = clock.working_ms / 60e3;
  return html`<article class="live"><div class="live-head"><div><h3><a href="#/repair/${summary.repair}">${summary.node}</a></h3><p class="soft">${street(summary)}</p></div>
    <p class="live-count"><b>${minSec(Math.abs(left), left < 0 ? "up" : "down")}</b> ${say(left < 0 ? "today.over" : "today.left")}</p></div>
    ${tape({ n: all, label: say("runs.tape", { left: minSec(left), all: Math.round(all) }), parts: [{ kind: "full", m: Math.max(0, left / 60e3) }, { kind: "gone", m: Math.min(all, all - left / 60e3) }] })}
    ${trouble ? note({ lead: say("trouble.over"), text: say("trouble.where") }) : html`<dl class="live-facts">${[["runs.way_in", clock.way_in_ms], ["runs.inflate", clock.inflate_ms], ["runs.on_target", clock.on_target_ms]].map(([name, ms]) =>
    html`<div${name === "runs.inflate" && html` class="only-wide"`}><dt>${say(name)}</dt> <dd>${at(view, ms)}</dd></div>`)}</dl>`}</article>`;
}

/** Returns the article of a hold: counted minutes, the next reading, and on a wide screen the pressure. */
export function holding(view, { summary, hold, trouble, handed }) {
  const last = hold.readings.at(-1);
  return html`${liveHold({
    href: `#/repair/${summary.repair}`, manhole: summary.node, where: street(summary),
    counted: minutes(hold.counted_ms), pending: minutes(hold.pending_ms), needed: Math.max(1, Math.ceil(hold.required_ms / 60e3)),
    items: [
      ...(hold.reading_due_ms === null ? [] : [{ label: say("today.due_in"), value: due(hold.reading_due_ms - view.now.at_ms) }]),
      { label: say(hold.missing_ms > 0 ? "today.closed_until" : "today.reached"), value: at(view, hold.earliest_release_ms) },
      { label: say("today.last"), value: figureOf("bar", last.gauge_pa), note: say("today.bar_at", { unit: unitOf("bar"), at: at(view, last.at_ms) }), wide: true },
    ],
    chart: figure({ kind: "live-chart only-wide", flush: true, inside: chart(view, summary.repair, hold) }),
  })}${(handed?.away || handed?.offered) && note({ lead: say(handed.away ? "given.title" : "offer.title"), text: say(handed.away ? "given.way_note" : "offer.way_note"), accent: handed.offered })}${trouble && !handed?.away && note({ lead: say(trouble.low ? "trouble.low" : "trouble.high"), text: say("trouble.low_3") })}`;
}

/** Returns the article of a hold on another phone, followed by its code. */
export function followed(view, { repair, hold, key }) {
  const [counted, pending, needed] = figures(hold);
  return html`${liveHold({
    href: `#/follow/${repair.id}`, manhole: repair.node || repair.number, where: street(repair), counted, pending, needed, label: label(hold),
    items: [
      { label: say("today.due_in"), value: minSec(Math.max(0, hold.reading_due_ms - view.now.at_ms)) },
      { label: say("followed.earliest"), value: at(view, hold.earliest_release_ms) },
      { label: say("today.last"), value: figureOf("bar", hold.last_pa), note: say("today.bar_at", { unit: unitOf("bar"), at: at(view, hold.last_ms) }), wide: true },
    ],
  })}${note({ lead: say("followed.record"), text: say("followed.paper"), accent: true })}${key === "false" && note({ lead: say("followed.key_false"), text: say("followed.key_false_text"), accent: true })}`;
}

const due = (ms) => (ms < 0 ? say("others.late", { by: minSec(-ms, "up") }) : minSec(ms));

const chart = (view, id, hold) => holdChart({
  id: `live-${id}`, height: 132, label: say("hold.pressure", { unit: unitOf("bar") }), offset_min: view.now.offset_min,
  readings: hold.readings.map(({ at_ms: ms, gauge_pa: pa }) => ({ at_ms: ms, bar: pa / 1e5 })),
  window_bar: [hold.window.lower_pa / 1e5, hold.window.upper_pa / 1e5], gaps: hold.stretches.filter(({ kind }) => kind === "not_witnessed"),
  now_ms: view.now.at_ms, release_ms: hold.missing_ms > 0 ? hold.earliest_release_ms : undefined, from_ms: hold.target_ms - 180_000, to_ms: Math.max(view.now.at_ms, hold.earliest_release_ms) + 240_000,
});

/** Returns the article of a full cure. */
export function curing(view, { summary, cure }) {
  const gone = Math.max(0, view.now.at_ms - cure.from_ms);
  const all = cure.until_ms - cure.from_ms;
  return liveCure({ href: `#/repair/${summary.repair}`, manhole: summary.node, where: street(summary), gone: gone / 3600e3, needed: all / 3600e3, when: at(view, cure.until_ms), day: otherDay(cure.until_ms, view.now.at_ms, view.now.offset_min), label: say("today.cure", { gone: span(gone), all: span(all) }) });
}
