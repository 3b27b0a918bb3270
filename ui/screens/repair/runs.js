// Resin is mixed. A clock that no one can miss, and one tap: target pressure. All else may follow.

import { html } from "../../html.js";
import { number } from "../../format.js";
import { form } from "../../parts/action.js";
import { clock } from "../../parts/clock.js";
import { conditions } from "../../parts/conditions.js";
import { deck, small, usual } from "../../parts/deck.js";
import { entry } from "../../parts/entry.js";
import { hold } from "../../parts/hold.js";
import { tape } from "../../parts/tape.js";
import { way } from "../../parts/way.js";
import { minSec } from "../../format.js";
import { say } from "../../text/say.js";
import { lineOf } from "./drawn.js";
import { agoLink, agoOf, at, computed, frame, report, tell, to } from "./frame.js";

export const title = (view) => say(`stage.${view.stage}`);

export const TARGET_FORM = "target";

export function render(view) {
  const { clock: runs } = view;
  const left = runs.deadline_ms - (view.now?.at_ms ?? 0);
  const all = runs.working_ms / 60e3;
  const open = view.tasks.filter((task) => !task.answer && task.mandatory && ["wet_out", "placement", "inflation"].includes(task.stage)).length;
  return frame(view, {
    title: title(view),
    main: html`${clock({ what: say("runs.left"), ms: left, note: say("runs.until", { at: at(view, runs.deadline_ms) }) })}
      ${tape({ n: all, label: say("runs.tape", { left: minSec(left), all: Math.round(all) }), parts: [{ kind: "full", m: Math.max(0, left / 60e3) }, { kind: "gone", m: Math.min(all, all - left / 60e3) }],
        marks: [runs.way_in_ms, runs.inflate_ms, runs.on_target_ms].map((ms, i) => ({ at: (runs.deadline_ms - ms) / 60e3, name: String(i + 1) })) })}
      <p class="by-what">${say("runs.latest")}</p>
      <ol class="by"><li><b>1</b> ${say("runs.way_in")} <strong>${at(view, runs.way_in_ms)}</strong></li><li><b>2</b> ${say("runs.inflate")} <strong>${at(view, runs.inflate_ms)}</strong></li><li><b>3</b> ${say("runs.on_target")} <strong>${at(view, runs.on_target_ms)}</strong></li></ol>
      ${conditions(steps(view, runs))}
      ${way({ label: say("runs.later"), note: say("runs.later_note", { n: open }), kind: "later", href: to(view, "fill") })}
      ${pressure(view)}${lineOf(view)}`,
    foot: deck({ more: usual({ repair: view.repair.id, ago: agoLink(view) }), act: hold({ label: say("runs.target"), note: say("runs.target_note"), form: TARGET_FORM }) }),
  });
}

/** Returns the form that reports the target pressure, with the value that the gauge shows. */
export function pressure(view) {
  const { window } = computed(view);
  const ago = agoOf(view);
  return form({
    id: TARGET_FORM, then: to(view),
    does: tell(view, { command: "report", ...(ago > 0 && { ago_ms: ago }), happening: { what: "target_reached" } }),
    inside: entry({
      id: "target-gauge", name: "command.happening.gauge_pa", label: say("runs.gauge"), unit: "bar", digits: 2, steps: 100_000, step: 0.01, min: 0, max: 20,
      aside: say("runs.window", { low: number(window.lower_pa / 1e5, 2), high: number(window.upper_pa / 1e5, 2) }),
      value: view.drafts?.[TARGET_FORM]?.["command.happening.gauge_pa"] ?? number(window.target_pa / 1e5, 2),
    }),
  });
}

// Taps that help the record and may be left out.
const steps = (view, runs) => [
  mixing(view, runs),
  tapped(view, "insertion", runs.insertion_ms, { what: "insertion_begun" }),
  tapped(view, "at_mark", runs.at_mark_ms, { what: "at_the_mark" }),
  tapped(view, "air_joined", runs.air_joined_ms, { what: "air_joined" }),
];

const mixing = (view, runs) => ({
  state: (view.now?.at_ms ?? 0) >= runs.mix_until_ms ? "met" : "open",
  text: say("runs.mix", { at: at(view, runs.mix_until_ms) }), note: say("runs.mix_note"),
});

const tapped = (view, name, ms, happening) => (ms
  ? { state: "met", text: say(`runs.${name}`), note: at(view, ms, true) }
  : { state: "open", text: say(`runs.${name}`), inside: small({ mark: "tick", label: say("runs.now"), does: report(view, happening), kind: "way" }) });
