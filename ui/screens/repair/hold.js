// The hold: counted minutes, the next reading, the window, and why release is closed.

import { html } from "../../html.js";
import { figure, minSec, minutes, quantity, short, unitOf } from "../../format.js";
import { conditions } from "../../parts/conditions.js";
import { count } from "../../parts/count.js";
import { act, deck, gate, usual } from "../../parts/deck.js";
import { hold } from "../../parts/hold.js";
import { readings } from "../../parts/readings.js";
import { section } from "../../parts/section.js";
import { table } from "../../parts/table.js";
import { pending, tape } from "../../parts/tape.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { lineOf } from "./drawn.js";
import { at, attempt, computed, frame, nowOf, tell, to, upTo, where } from "./frame.js";
import { inTheWay, withoutTasks } from "./gate.js";
import { chart } from "./hold-chart.js";
import { leak } from "./leak.js";
import { photosAsked } from "./photo.js";
import { worked } from "./worked.js";

export const title = () => say("stage.hold");

export function render(view) {
  const [patch] = computed(view).patches;
  return frame(view, {
    title: title(), mainKind: "stage holdm",
    main: html`<div class="hold-count">${counted(view)}</div>${chart(view)}
      <div class="hold-where">${leak(view)}<section class="section"><h2>${say("hold.check")} <small>${say("hold.check_each")}</small></h2>${conditions(checks(view))}${fillIn(view)}${inTheWay(view, release(view))}${photosAsked(view, "hold")}</section></div>
      <div class="hold-log">${log(view)}${worked(view, "hold")}${handable(view) && way({ label: say("handing.title"), note: say("handing.note"), href: to(view, "handover") })}</div>
      <section class="section only-wide hold-line"><h2>${say("hold.where")} <small>${say("hold.from", { at: quantity("m", (patch.from_um + patch.to_um) / 2), node: view.repair.line.upstream.name })}</small></h2>${lineOf(view)}</section>`,
    foot: foot(view),
  });
}

// What stands in the way of release besides the minutes, which the deck tells, and the sample, which stands above.
const release = (view) => withoutTasks(view.next.gate?.broken ?? []).filter(({ rule, waived }) => !["sample_missing"].includes(rule) && (rule !== "hold_short" || waived || view.hold.counted_ms > 0));

function counted(view) {
  const { hold: shown } = view;
  const done = minutes(shown.counted_ms);
  const needed = Math.max(1, Math.ceil(shown.required_ms / 60e3));
  const waits = minutes(shown.pending_ms);
  return html`${count({ figure: String(done), lines: [say("hold.of", { n: needed }), say("hold.counted")] })}
    ${tape({ n: needed, label: say("hold.tape", { counted: done, needed, pending: waits }), parts: [{ kind: "full", m: Math.min(done, needed) }, { kind: "pend", m: Math.min(waits, Math.max(0, needed - done)) }] })}
    ${waits > 0 && pending(say("hold.pending", { n: waits }))}
    ${readings([next(view), ...water(view)], "two")}<p class="soft hold-say">${say("hold.coldest", { min: needed, n: short("celsius", shown.coldest_mc) })}</p>`;
}

function next(view) {
  const { reading_due_ms: at_ms } = view.hold;
  if (at_ms === null) return { label: say("hold.next_in"), value: "–" };
  const due = at_ms - nowOf(view);
  if (due >= 0) return { label: say("hold.next_in"), value: minSec(due), then: say("hold.due", { at: at(view, at_ms) }) };
  const { gap_from_ms: gap } = view.hold;
  return { label: say("hold.next_late"), late: true, value: minSec(-due, "up"), then: say(gap > nowOf(view) ? "hold.gap_soon" : "hold.gap_runs", { at: at(view, gap) }) };
}

const lastWater = ({ hold }) => hold.readings.findLast(({ upstream_um: um }) => um !== null);

function water(view) {
  const last = lastWater(view);
  return last ? [{ label: say("hold.water", { node: where(view).strong }), value: figure("m", last.upstream_um), unit: unitOf("m"), then: say("hold.look_again", { at: at(view, last.at_ms) }) }] : [];
}

function checks(view) {
  const felt = attempt(view).sample.at(-1);
  const last = lastWater(view);
  return [
    { state: "open", text: say("hold.check_water"), note: [last && say("hold.water_was", { n: quantity("m", last.upstream_um), at: at(view, last.at_ms), node: where(view).strong }), say("hold.check_water_note")].filter(Boolean).join(" ") },
    ...view.repair.plan.choice.closures.map(({ what, until_ms: until }) => ({ state: until > nowOf(view) ? "met" : "failed", text: what, note: say("go.until", { at: upTo(view, until) }) })),
    { state: felt ? (felt[1] ? "met" : "failed") : "open", text: say(felt ? (felt[1] ? "hold.sample_hard" : "hold.sample_soft") : "hold.sample_open"), note: say("hold.sample_note"), inside: html`<a class="way" href="${to(view, "sample")}"><b>${say(felt ? "hold.sample_again" : "hold.sample_feel")}</b></a>` },
  ];
}

// What was left while the resin ran is filled in now.
const fillIn = (view) => {
  const n = view.tasks.filter(({ overdue }) => overdue).length;
  return n > 0 && way({ label: say("runs.later_now"), note: say("runs.later_note", { n }), href: to(view, "fill") });
};

// A rehearsal with a clock of its own stays on its phone; what another phone has is handed over there.
const handable = ({ practice, handed, hold: shown }) => !practice && !shown.released_ms && !handed?.away && !handed?.offered;

const log = (view) => html`<section class="section"><h2>${say("hold.readings")} <small>${gauges(view)}</small></h2>${table({
  label: say("hold.readings"), head: [say("hold.col_time"), say("hold.col_bar", { unit: unitOf("bar") }), say("hold.col_pipe", { unit: unitOf("celsius") }), say("hold.col_counted")],
  rows: [...view.hold.readings].reverse().map((one) => [
    html`${at(view, one.at_ms)}${one.paper && html` <small>${say("keyed.mark")}</small>`}`, html`${figure("bar", one.gauge_pa)}${!one.inside && html` <b>${say("hold.outside")}</b>`}`, one.pipe_mc === null ? "–" : bareShort(one.pipe_mc), worth(one),
  ]),
})}</section>`;

const bareShort = (mc) => short("celsius", mc).split("\u00a0")[0];
const worth = ({ index, witnessed, counted_ms: ms }) => (index === null ? say("hold.target") : !witnessed ? say("hold.not_witnessed") : minSec(ms));

const gauges = (view) => {
  const used = [...new Set(attempt(view).readings.map(({ gauge }) => gauge).filter(Boolean))];
  return used.length > 0 ? say("hold.by_hand", { gauge: used.join(", ") }) : "";
};

function foot(view) {
  const { hold: shown, next: { act: step, gate: shut } } = view;
  const more = usual({ repair: view.repair.id });
  if (step === "release") return deck({ more, act: hold({ label: say("hold.release_act"), note: say("hold.release_note"), does: tell(view, { command: "release" }), then: to(view) }) });
  const closed = shut && !shut.open && gate(shown.missing_ms > 0
    ? { reason: say("hold.closed_until", { at: at(view, shown.earliest_release_ms) }), note: say("hold.earliest") }
    : { reason: shut.broken[0].says, note: shut.broken[0].way_out });
  if (step === "sample") return deck({ gate: closed, more, act: act({ label: say("hold.sample_feel"), note: say("hold.sample_note"), href: to(view, "sample") }) });
  return deck({ gate: closed, more, act: act({ label: say("hold.read_act"), note: say("hold.read_note"), href: to(view, "reading") }) });
}
