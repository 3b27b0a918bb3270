// The first screen: resin that runs, holds, cures, what comes next, what waits for a signature.

import { html } from "../html.js";
import { day, minSec, minutes, number, quantity, span, time } from "../format.js";
import { holdChart } from "../drawings/hold-chart.js";
import { figure } from "../drawings/svg.js";
import { action } from "../parts/action.js";
import { light } from "../parts/light.js";
import { liveCure, liveHold } from "../parts/live.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { tape } from "../parts/tape.js";
import { way } from "../parts/way.js";
import { say } from "../text/say.js";

export const title = (view) => (view.crew ? say("today.crew", { crew: view.crew }) : say("today.title"));

export function render(view) {
  const empty = !view.owner;
  return page({
    mast: mast({ title: title(view), where: view.owner || say("app.name"), side: view.now ? [day(view.now.at_ms, view.now.offset_min), time(view.now.at_ms, view.now.offset_min)] : [] }),
    main: html`<main class="today">${empty ? first() : lists(view)}${tools(empty)}
      <section class="section today-light" aria-labelledby="h-light"><h2 id="h-light">${say("light.label")}</h2>${light(view.light)}</section></main>`,
  });
}

const lists = (view) => [
  list("mixed", view.mixed, (one) => mixed(view, one), "lives"),
  list("holding", view.holding, (one) => holding(view, one), "lives"),
  list("curing", view.curing, (one) => curing(view, one)),
  list("underway", view.underway, row), list("review", view.review, row), list("next", view.next, row), list("taken", view.taken, row), list("done", view.done, row), list("damaged", view.damaged, row),
  [view.mixed, view.holding, view.curing, view.underway, view.review, view.next, view.taken, view.done].every((all) => all.length === 0)
    && html`<section class="section"><p>${say("today.none")}</p></section>`,
];

const list = (name, items, draw, kind) => items.length > 0 && section({
  id: `h-${name}`, title: say(`today.${name}`), aside: String(items.length), kind: "", inside: kind ? html`<div class="${kind}">${items.map(draw)}</div>` : items.map(draw),
});

const at = (view, ms) => time(ms, view.now.offset_min);
const street = ({ street: name, number: no }) => `${name} · ${no}`;

function mixed(view, { summary, clock, trouble }) {
  const left = clock.deadline_ms - view.now.at_ms;
  return html`<article class="live"><div class="live-head"><div><h3><a href="#/repair/${summary.repair}">${summary.node}</a></h3><p class="soft">${street(summary)}</p></div>
    <p class="live-count"><b>${minSec(Math.abs(left), left < 0 ? "up" : "down")}</b> ${say(left < 0 ? "today.over" : "today.left")}</p></div>
    ${tape({ n: clock.working_ms / 60e3, label: say("runs.tape", { left: minSec(left), all: Math.round(clock.working_ms / 60e3) }), parts: [{ kind: "full", m: Math.max(0, left / 60e3) }, { kind: "gone", m: Math.min(clock.working_ms, clock.working_ms - left) / 60e3 }] })}
    ${trouble && note({ lead: say("trouble.over"), text: say("trouble.where") })}</article>`;
}

function holding(view, { summary, hold, trouble }) {
  const due = hold.reading_due_ms - view.now.at_ms;
  const last = hold.readings.at(-1);
  return html`${liveHold({
    href: `#/repair/${summary.repair}`, manhole: summary.node, where: street(summary),
    counted: minutes(hold.counted_ms), pending: minutes(hold.pending_ms), needed: Math.max(1, Math.ceil(hold.required_ms / 60e3)),
    items: [
      { label: say("today.due_in"), value: due < 0 ? say("others.late", { by: minSec(-due, "up") }) : minSec(due) },
      { label: say("today.closed_until"), value: at(view, hold.earliest_release_ms) },
      { label: say("today.last"), value: number(last.gauge_pa / 1e5, 2), note: say("today.bar_at", { at: at(view, last.at_ms) }), wide: true },
    ],
    chart: figure({ kind: "live-chart only-wide", inside: chart(view, summary.repair, hold) }),
  })}${trouble && note({ lead: say(trouble.low ? "trouble.low" : "trouble.high"), text: say("trouble.low_3") })}`;
}

const chart = (view, id, hold) => holdChart({
  id: `live-${id}`, height: 130, label: say("hold.pressure"), offset_min: view.now.offset_min,
  readings: hold.readings.map(({ at_ms: ms, gauge_pa: pa }) => ({ at_ms: ms, bar: pa / 1e5 })),
  window_bar: [hold.window.lower_pa / 1e5, hold.window.upper_pa / 1e5], gaps: hold.stretches.filter(({ kind }) => kind === "not_witnessed"),
  now_ms: view.now.at_ms, release_ms: hold.missing_ms > 0 ? hold.earliest_release_ms : undefined, from_ms: hold.target_ms - 60_000, to_ms: Math.max(view.now.at_ms, hold.earliest_release_ms) + 300_000,
});

const curing = (view, { summary, cure }) => {
  const gone = Math.max(0, view.now.at_ms - cure.from_ms);
  return liveCure({ href: `#/repair/${summary.repair}`, manhole: summary.node, where: street(summary), gone: gone / 3600e3, needed: (cure.until_ms - cure.from_ms) / 3600e3, when: at(view, cure.until_ms), label: say("today.cure", { gone: span(gone), all: span(cure.until_ms - cure.from_ms) }) });
};

/** Returns the row of one repair in a list. */
export const row = (one) => way({
  href: `#/repair/${one.repair}`, label: say("today.line", { from: one.upstream, to: one.downstream }),
  note: [street(one), `DN ${one.dn_um / 1000}`, one.defect && say("today.defect", { what: one.defect, at: quantity("m", one.station_um) }), one.rehearsal && say("rehearsal.word"),
    one.certificate ?? say(`status.${one.status}`), one.open_departures > 0 && say("today.open", { n: one.open_departures })].filter(Boolean).join(" · "),
});

const first = () => html`<section class="section" aria-labelledby="h-first"><h2 id="h-first">${say("first.title")}</h2><p class="lead">${say("first.text")}</p>
  ${action({ kind: "way", does: { do: "take_examples" }, then: "#/people", inside: html`<b>${say("first.examples")}</b><small>${say("first.examples_note")}</small>` })}
  ${way({ label: say("first.own"), note: say("first.own_note"), href: "#/shelf" })}</section>`;

const tools = (empty) => html`<section class="section" aria-labelledby="h-tools"><h2 id="h-tools">${say("today.more")}</h2>
  ${!empty && html`${way({ label: say("today.intake"), note: say("today.intake_note"), href: "#/intake" })}${way({ label: say("search.title"), note: say("search.note"), href: "#/search" })}`}
  ${way({ label: say("people.title"), note: say("people.note"), href: "#/people" })}${way({ label: say("shelf.title"), note: say("shelf.note"), href: "#/shelf" })}
  ${way({ label: say("check.title"), note: say("check.note"), href: "#/check" })}${way({ label: say("help.title"), note: say("help.note"), href: "#/help" })}</section>`;
