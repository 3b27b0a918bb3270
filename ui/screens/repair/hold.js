// The hold: counted minutes, the next reading, the window, and why release is closed.

import { html } from "../../html.js";
import { minSec, minutes, number, range, trim } from "../../format.js";
import { figure } from "../../drawings/svg.js";
import { holdChart } from "../../drawings/hold-chart.js";
import { conditions } from "../../parts/conditions.js";
import { count } from "../../parts/count.js";
import { act, deck, gate, usual } from "../../parts/deck.js";
import { hold } from "../../parts/hold.js";
import { pair } from "../../parts/pair.js";
import { form } from "../../parts/action.js";
import { readings } from "../../parts/readings.js";
import { section } from "../../parts/section.js";
import { table } from "../../parts/table.js";
import { pending, tape } from "../../parts/tape.js";
import { say } from "../../text/say.js";
import { lineOf } from "./drawn.js";
import { at, frame, tell, to } from "./frame.js";
import { inTheWay } from "./gate.js";

export const title = () => say("stage.hold");

export function render(view) {
  return frame(view, {
    title: title(), mainKind: "stage holdm",
    main: html`<div class="hold-count">${counted(view)}</div>${chart(view)}
      <section class="section hold-where"><h2>${say("hold.check")} <small>${say("hold.check_each")}</small></h2>${conditions(checks(view))}</section>
      ${log(view)}<div class="hold-gate">${view.next.gate && !view.next.gate.open && inTheWay(view)}</div>
      <section class="section only-wide hold-line"><h2>${say("hold.where")}</h2>${lineOf(view)}</section>`,
    foot: foot(view),
  });
}

function counted(view) {
  const { hold: shown } = view;
  const done = minutes(shown.counted_ms);
  const needed = Math.max(1, Math.ceil(shown.required_ms / 60e3));
  const waits = Math.floor(shown.pending_ms / 60e3);
  const due = shown.reading_due_ms - (view.now?.at_ms ?? 0);
  return html`${count({ figure: String(done), lines: [say("hold.of", { n: needed }), say("hold.counted")] })}
    ${tape({ n: needed, label: say("hold.tape", { counted: done, needed, pending: waits }), parts: [{ kind: "full", m: Math.min(done, needed) }, { kind: "pend", m: Math.min(waits, Math.max(0, needed - done)) }] })}
    ${waits > 0 && pending(say("hold.pending", { n: waits }))}
    ${readings([
      { label: say("hold.next_in"), value: due < 0 ? say("others.late", { by: minSec(-due, "up") }) : minSec(due), then: say("hold.due", { at: at(view, shown.reading_due_ms) }) },
      ...(shown.upstream_um === null ? [] : [{ label: say("hold.water"), value: number(shown.upstream_um / 1e6, 2), unit: "m", then: say("hold.look_again") }]),
    ], "two")}<p class="soft hold-say">${say("hold.coldest", { min: needed, n: trim("celsius", shown.coldest_mc) })}</p>`;
}

/** Returns the chart of a hold, as it is drawn wide and narrow. */
export function chart(view, hold_ = view.hold, id = "hold") {
  const now = view.now?.at_ms ?? hold_.target_ms;
  const gaps = hold_.stretches.filter(({ kind }) => kind === "not_witnessed");
  const end = hold_.released_ms ?? Math.max(now, hold_.earliest_release_ms);
  const common = {
    readings: hold_.readings.map(({ at_ms: ms, gauge_pa: pa }) => ({ at_ms: ms, bar: pa / 1e5 })),
    window_bar: [hold_.window.lower_pa / 1e5, hold_.window.upper_pa / 1e5], gaps,
    now_ms: hold_.released_ms ? undefined : now, release_ms: hold_.missing_ms > 0 ? hold_.earliest_release_ms : undefined,
    from_ms: hold_.target_ms - 60_000, to_ms: end + 300_000, offset_min: view.now?.offset_min ?? 0,
    label: say("hold.chart", { range: range("bar", hold_.window.lower_pa, hold_.window.upper_pa) }),
  };
  return figure({
    kind: "hold-chart", flush: true,
    above: html`<b>${say("hold.pressure")}</b> ${say("hold.window", { range: range("bar", hold_.window.lower_pa, hold_.window.upper_pa), low: hold_.window.lower_governs, high: hold_.window.upper_governs })}`,
    inside: html`<div class="only-narrow">${holdChart({ ...common, id: `${id}-n`, narrow: true })}</div><div class="only-wide">${holdChart({ ...common, id: `${id}-w`, height: 260 })}</div>`,
    caption: gaps.length > 0 && say("hold.gap_says", { from: at(view, gaps[0].from_ms), to: at(view, gaps[0].to_ms), min: Math.ceil((gaps[0].to_ms - gaps[0].from_ms) / 60e3) }),
  });
}

const checks = (view) => {
  const sample = view.repair.attempts.at(-1).sample.at(-1);
  return [
    { state: "open", text: say("hold.check_water"), note: say("hold.check_water_note") },
    sample
      ? { state: sample[1] ? "met" : "failed", text: say(sample[1] ? "hold.sample_hard" : "hold.sample_soft"), note: say("hold.sample_note") }
      : { state: "open", text: say("hold.sample_open"), inside: html`<p>${say("hold.sample_note")}</p><a class="way" href="${to(view, "sample")}"><b>${say("hold.sample_feel")}</b></a>` },
  ];
};

const log = (view) => html`<section class="section hold-log"><h2>${say("hold.readings")}</h2>${table({
  label: say("hold.readings"), head: [say("hold.col_time"), say("hold.col_bar"), say("hold.col_pipe"), say("hold.col_counted")],
  rows: [...view.hold.readings].reverse().map((one) => [
    at(view, one.at_ms), html`${number(one.gauge_pa / 1e5, 2)}${!one.inside && html` <b>${say("hold.outside")}</b>`}`,
    one.pipe_mc === null ? "–" : trim("celsius", one.pipe_mc), one.index === null ? say("hold.target") : one.witnessed ? minSec(one.counted_ms) : say("hold.not_witnessed"),
  ]),
})}</section>`;

function foot(view) {
  const { hold: shown, next } = view;
  const more = usual({ repair: view.repair.id });
  const closed = next.gate && !next.gate.open && gate(shown.missing_ms > 0
    ? { reason: say("hold.closed_until", { at: at(view, shown.earliest_release_ms) }), note: say("hold.earliest") }
    : { reason: next.gate.broken[0].says, note: next.gate.broken[0].way_out });
  if (next.act === "release") return deck({ more, act: hold({ label: say("hold.release_act"), note: say("hold.release_note"), does: tell(view, { command: "release" }), then: to(view) }) });
  if (next.act === "sample") return deck({ gate: closed, more, act: act({ label: say("hold.sample_feel"), note: say("hold.sample_note"), href: to(view, "sample") }) });
  return deck({ gate: closed, more, act: act({ label: say("hold.read_act"), note: say("hold.read_note"), href: to(view, "reading") }) });
}

/** The sample in the manhole: soft forbids release, hard alone proves nothing. */
export const sample = {
  title: () => say("hold.sample_feel"),
  render: (view) => frame(view, {
    title: say("hold.sample_feel"),
    main: html`<p class="lead">${say("hold.sample_how")}</p>${form({
      id: "sample", does: tell(view, { command: "report", happening: { what: "sample_felt" } }), then: to(view),
      inside: pair({ legend: say("hold.sample_open"), name: "command.happening.hard", as: "yes", picked: view.drafts?.sample?.["command.happening.hard"], options: [{ value: "yes", label: say("hold.hard") }, { value: "no", label: say("hold.soft") }] }),
    })}<p class="soft">${say("hold.sample_note")}</p>`,
    foot: deck({ act: act({ label: say("hold.sample_record"), note: say("tasks.records"), mark: "tick", form: "sample" }) }),
  }),
};

