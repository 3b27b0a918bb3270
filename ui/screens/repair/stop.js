// Stop: emergency release, held, at any minute and without a PIN; or say what happened.

import { html } from "../../html.js";
import { minutes } from "../../format.js";
import { act, deck, small } from "../../parts/deck.js";
import { hold } from "../../parts/hold.js";
import { doNow } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { action, form } from "../../parts/action.js";
import { field } from "../../parts/field.js";
import { problemOf } from "../../parts/problem-list.js";
import { say, within } from "../../text/say.js";
import { agoLink, agoOf, at, attempt, frame, nowOf, report, to } from "./frame.js";

export const title = () => say("stop.title");

const HAPPENED = ["pressure_lost", "burst", "water_coming", "gas_alarm", "stuck"];

export function render(view) {
  const one = attempt(view);
  // From joining on the packer may be under pressure, whatever was tapped.
  const pressed = Boolean(one?.joined && !one.released && !one.ended);
  return frame(view, {
    title: title(), mastKind: "stop-mast",
    main: html`<p class="clock-what">${standing(view, one, pressed)}</p>
      ${pressed && doNow([say("stop.do_1"), say("stop.do_2"), say("stop.do_3")], "tight-do")}
      ${section({ id: "happened", title: say("stop.happened"), aside: when(view), inside: html`<div class="happened">${HAPPENED.map((what) => tap(view, say(`report.${what}`), { what }))}${pressed && tap(view, say("stop.released"), { what: "released", emergency: true })}</div>` })}
      ${section({ id: "stopped", title: say("stop.stopped"), inside: form({ id: "stopped-form", does: report(view, { what: "stopped" }, "stop"), then: to(view), kind: "stack", inside: html`${field({ id: "stopped-why", name: "command.happening.why", label: say("task.because"), kind: "why", value: view.drafts?.["stopped-form"]?.["command.happening.why"] ?? "", needed: true, problem: problemOf(view.problems, "stopped-why") })}<button type="submit" class="way"><b>${say("stop.stopped_act")}</b><small>${say("stop.recorded")}</small></button>` }) })}
      ${one && !one.ended && section({ id: "give-up", title: say("stop.end"), inside: way({ label: say(one.joined ? "stop.end_mixed" : "stop.end_dry"), note: say("stop.end_note"), href: to(view, "ended") }) })}`,
    foot: deck({
      more: [small({ mark: "cross", label: say("stop.back_to", { stage: within(say(`stage.${view.stage}`)) }), href: to(view) }), small({ mark: "ago", label: say("deck.ago", { n: agoLink(view, "stop").min }), href: to(view, "ago/stop") })],
      act: pressed
        ? hold({ alarm: true, label: say("stop.release"), note: say("stop.release_note"), does: report(view, { what: "released", emergency: true }, "stop"), then: to(view) })
        : act({ label: say("stop.back_to", { stage: within(say(`stage.${view.stage}`)) }), mark: "back", note: say("stop.nothing"), href: to(view) }),
    }),
  });
}

function standing(view, one, pressed) {
  const { hold: shown } = view;
  if (pressed && shown) {
    const values = { counted: minutes(shown.counted_ms), needed: Math.ceil(shown.required_ms / 60e3) };
    return say(shown.missing_ms > 0 ? "stop.held" : "stop.held_enough", values);
  }
  if (pressed) return say("stop.resin");
  return say(one?.released ? "stop.let_down" : "stop.none");
}

// A report is never closed: it happened.
const tap = (view, label, happening) => action({ does: report(view, happening, "stop"), then: to(view), inside: label });

const when = (view) => (agoOf(view, "stop") > 0 ? say("ago.at", { at: at(view, nowOf(view) - agoOf(view, "stop")) }) : say("stop.recorded"));
