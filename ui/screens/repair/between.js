// Between two attempts: how the last one ended, what stays valid, and either another go or the end.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { act, deck, usual } from "../../parts/deck.js";
import { facts } from "../../parts/facts.js";
import { lines } from "../../parts/field.js";
import { note } from "../../parts/note.js";
import { yesNo } from "../../parts/pair.js";
import { problemOf } from "../../parts/problem-list.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { at, attempt, frame, tell, to } from "./frame.js";

export const title = (view) => say(`outcome.${attempt(view).ended.outcome}`);

export function render(view) {
  const last = attempt(view);
  const typed = view.drafts?.["new-attempt"] ?? {};
  const carried = last.test_push.back?.[1];
  return frame(view, {
    title: title(view),
    main: html`${facts([
      { label: say("between.attempt", { n: last.n }), value: say(`outcome.${last.ended.outcome}`), note: at(view, last.ended.at.moment.at_ms) },
      { label: say("between.why"), value: last.ended.reasons.join(" ") || say("between.not_said") },
      { label: say("between.in_pipe"), value: last.ended.in_pipe || say("between.not_said") },
    ])}
    ${section({ id: "again", title: say("between.title"), kind: "section-gap", inside: html`${note({ lead: say("between.view_first"), text: say(carried ? "between.stays_push" : "between.stays") })}
      ${form({ id: "new-attempt", kind: "stack section-gap", does: tell(view, { command: "new_attempt" }), then: to(view), inside: html`
        ${asked("pipe", typed)}${asked("packer", typed)}` })}` })}
    ${view.ending && way({ label: say(view.repair.issued ? "between.record" : "between.sign"), note: view.repair.issued?.number ?? say("between.sign_note"), href: to(view, view.repair.issued ? "certificate" : "sign") })}
    ${section({ id: "close", title: say("between.close"), kind: "section-gap", inside: form({ id: "close-form", kind: "stack", does: tell(view, { command: "close_unrepaired" }), then: to(view), inside: html`
      ${lines({ id: "close-reason", name: "command.reason", label: say("between.close_why"), value: view.drafts?.["close-form"]?.["command.reason"] ?? "", rows: 2, needed: true, problem: problemOf(view.problems, "close-reason") })}<button type="submit" class="way"><b>${say("between.close_act")}</b><small>${say("between.close_note")}</small></button>` }) })}`,
    foot: deck({ more: usual({ repair: view.repair.id }), act: act({ label: say("between.again", { n: last.n + 1 }), note: say("between.again_note"), form: "new-attempt" }) }),
  });
}

const asked = (what, typed) => yesNo({ legend: say(`between.${what}`), name: `command.${what}_unharmed`, picked: typed[`command.${what}_unharmed`], needed: true });
