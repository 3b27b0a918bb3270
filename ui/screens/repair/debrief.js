// The debrief of a rehearsal: what went wrong on purpose and how it was met, then every rule that was broken.

import { html } from "../../html.js";
import { act, deck, small } from "../../parts/deck.js";
import { conditions } from "../../parts/conditions.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";
import { at, frame, to } from "./frame.js";

export const title = () => say("debrief.title");

export function render(view) {
  const { debrief, surprise } = view.practice;
  return frame(view, {
    title: title(), mainKind: "stack",
    main: html`${!debrief.over && note({ lead: say("debrief.open"), text: say("debrief.open_text"), accent: true })}
      ${section({ id: "met", title: say("debrief.met"), kind: "", inside: debrief.met.length > 0 ? conditions(debrief.met.map(met)) : html`<p class="soft">${say(surprise ? "debrief.hidden" : "debrief.none")}</p>` })}
      ${section({ id: "wrong", title: say("debrief.wrong"), aside: String(debrief.wrong.length), inside: debrief.wrong.length > 0 ? html`<ul class="rule-list">${debrief.wrong.map((one) => wrong(view, one))}</ul>` : html`<p>${say("debrief.clean")}</p>` })}`,
    foot: deck({ more: [small({ mark: "cross", label: say("debrief.back"), href: to(view) })], act: act({ label: say("debrief.again"), note: say("debrief.again_note"), href: "#/practice" }) }),
  });
}

const STATES = [["not_yet", "open"], ["waits", "open"], ["no", "failed"], ["yes", "met"]];

function met({ mishap, struck, handled, rule }) {
  const [word, state] = STATES[!struck ? 0 : handled === null ? 1 : handled ? 3 : 2];
  return { state, text: say(`mishap.${mishap}`), note: html`<b>${say(`debrief.${word}`)}.</b> ${say("debrief.right")} ${say(`mishap.${mishap}_right`)}<br>${say("debrief.rule")} ${say(`rule.name.${rule}`)}` };
}

const wrong = (view, { attempt, rule, kind, says, way_out: out, at_ms: ms, waived }) => html`<li><b>${say(`rule.name.${rule}`)}</b> <span class="kind">${say(`kind.${kind}`)}</span><br>${says}${out && html`<br><span class="soft">${out}</span>`}
  <br><small>${[say("debrief.attempt", { n: attempt }), ms !== null && at(view, ms), waived && say("debrief.waived", { reason: waived })].filter(Boolean).join(" · ")}</small></li>`;
