// Resin is mixed. A clock that no one can miss, and one tap: target pressure. All else may follow.

import { html } from "../../html.js";
import { beside, inRecorded, likelyGauge, minSec, number, quantity } from "../../format.js";
import { form } from "../../parts/action.js";
import { clock } from "../../parts/clock.js";
import { conditions } from "../../parts/conditions.js";
import { deck, usual } from "../../parts/deck.js";
import { entry } from "../../parts/entry.js";
import { hold } from "../../parts/hold.js";
import { icon } from "../../parts/icon.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { tape } from "../../parts/tape.js";
import { warned } from "../../parts/warned.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { warningAt } from "../../warnings.js";
import { lineOf } from "./drawn.js";
import { agoLink, agoOf, at, computed, frame, nowOf, report, tell, to } from "./frame.js";

export const title = (view) => say(`stage.${view.stage}`);

const TARGET_FORM = "target";

export function render(view) {
  const { clock: runs } = view;
  const left = runs.deadline_ms - nowOf(view);
  const open = view.tasks.filter((task) => !task.answer && task.mandatory && ["wet_out", "placement", "inflation"].includes(task.stage)).length;
  return frame(view, {
    title: title(view),
    main: html`${pressing(view, left)}
      <p class="by-what">${say("runs.latest")}</p>
      <ol class="by">${flags(view).map(flag)}</ol>
      ${runs.restarted && note({ text: say("runs.restarted") })}
      ${way({ label: say("runs.later"), note: say("runs.later_note", { n: open }), kind: "later", href: to(view, "fill") })}
      ${pressure(view)}${section({ id: "steps", title: say("runs.steps"), aside: say("runs.steps_note"), inside: conditions(steps(view, runs)) })}
      ${lineOf(view, { kind: "only-tall" })}`,
    foot: deck({ more: usual({ repair: view.repair.id, ago: agoLink(view, "target_reached") }), act: targetAct(view) }),
  });
}

function pressing(view, left) {
  const { clock: runs } = view;
  const level = warningAt(runs, nowOf(view));
  return warned({ level, says: say(`runs.${level}`), inside: html`${clock({ what: level === "calm" && say("runs.left"), ms: left, note: say("runs.until", { at: at(view, runs.deadline_ms) }) })}${measure(view, left)}` });
}

/** Returns what has to happen and by when: what was tapped is done, the first that was not is next, what is past its moment is late. */
function flags(view) {
  const { clock: runs } = view;
  const done = [["way_in", runs.insertion_ms ?? runs.air_joined_ms], ["inflate", runs.air_joined_ms], ["on_target", null]];
  const next = done.findIndex(([, ms]) => !ms);
  return done.map(([name, ms], i) => {
    const left = runs[`${name}_ms`] - nowOf(view);
    if (ms) return { i, name, view, kind: "done", says: say("runs.done", { at: at(view, ms) }) };
    if (left < 0) return { i, name, view, kind: "late", says: say("runs.late", { by: minSec(-left, "up") }) };
    return { i, name, view, kind: i === next ? "next" : "", says: i === next && say("runs.in", { left: minSec(left) }) };
  });
}

const MARKS = { done: "tick", late: "warn", next: "go" };

const flag = ({ i, name, view, kind, says }) => html`<li class="is-${kind}"><b>${i + 1}</b> ${say(`runs.${name}`)} <strong>${at(view, view.clock[`${name}_ms`])}</strong>${says && html`<small>${icon(MARKS[kind])}${says}</small>`}</li>`;

function measure(view, left) {
  const { clock: runs } = view;
  const all = runs.working_ms / 60e3;
  return tape({
    n: all, label: say("runs.tape", { left: minSec(left), all: minSec(runs.working_ms) }),
    parts: [{ kind: "full", m: Math.max(0, left / 60e3) }, { kind: "gone", m: Math.min(all, all - left / 60e3) }],
    marks: [runs.way_in_ms, runs.inflate_ms, runs.on_target_ms].map((ms, i) => ({ at: (runs.deadline_ms - ms) / 60e3, name: String(i + 1) })),
  });
}

const GAUGE = "command.happening.gauge_pa";
const gaugeOf = (view) => view.drafts?.[TARGET_FORM]?.[GAUGE] ?? number(computed(view).window.target_pa / 1e5, 2);

/** Returns the form that reports the target pressure, with the value that the gauge shows. */
export function pressure(view) {
  const { window } = computed(view);
  const ago = agoOf(view, "target_reached");
  return form({
    id: TARGET_FORM, then: to(view), kind: "section-gap",
    does: tell(view, { command: "report", ...(ago > 0 && { ago_ms: ago }), happening: { what: "target_reached" } }),
    inside: entry({
      id: "target-gauge", name: GAUGE, label: say("runs.gauge"), unit: "bar", digits: 2, steps: 100_000, step: 0.01, min: 0, max: 20, likely: likelyGauge(window),
      aside: say("runs.window", { low: beside("bar", window.lower_pa, 2), high: beside("bar", window.upper_pa, 2) }), value: gaugeOf(view),
    }),
  });
}

/** Returns the held button that stops the clock. The form with the pressure must stand on the same screen. */
export function targetAct(view, extra) {
  const ago = agoOf(view, "target_reached");
  const bar = inRecorded("bar", gaugeOf(view));
  const value = bar === null ? "" : quantity("bar", bar * 1e5);
  return hold({
    label: ago > 0 ? say("runs.target_at", { at: at(view, nowOf(view) - ago) }) : say("runs.target"),
    note: extra ?? (view.repair.rehearsal ? say("runs.target_rehearsal", { value }) : say("runs.target_note", { value })), form: TARGET_FORM,
  });
}

// Taps that help the record and may be left out.
const steps = (view, runs) => [
  mixing(view, runs),
  tapped(view, "insertion_begun", runs.insertion_ms), tapped(view, "at_the_mark", runs.at_mark_ms), tapped(view, "air_joined", runs.air_joined_ms),
];

const mixing = (view, runs) => ({
  state: nowOf(view) >= runs.mix_until_ms ? "met" : "open",
  text: say("runs.mix", { at: at(view, runs.mix_until_ms, true) }), note: say("runs.mix_note"),
});

const tapped = (view, what, ms) => (ms
  ? { state: "met", text: say(`report.${what}`), note: at(view, ms, true) }
  : { state: "open", text: say(`report.${what}`), inside: html`<div class="taps">${way({ label: say("runs.now"), mark: "tick", does: report(view, { what }), then: to(view) })}${way({ label: say("runs.earlier"), mark: "ago", href: to(view, `ago/${what}`) })}</div>` });
