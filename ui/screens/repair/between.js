// Between two attempts: what stays valid, and either another go or the end.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { act, deck, usual } from "../../parts/deck.js";
import { facts } from "../../parts/facts.js";
import { lines } from "../../parts/field.js";
import { note } from "../../parts/note.js";
import { yesNo } from "../../parts/pair.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { at, attempt, frame, tell, to } from "./frame.js";

export const title = () => say("between.title");

export function render(view) {
  const last = attempt(view);
  const typed = view.drafts?.["new-attempt"] ?? {};
  return frame(view, {
    title: title(),
    main: html`${facts([
      { label: say("between.attempt", { n: last.n }), value: say(`outcome.${last.ended.outcome}`), note: at(view, last.ended.at.moment.at_ms) },
      { label: say("between.why"), value: last.ended.reasons.join(" ") || "–" },
      { label: say("between.in_pipe"), value: last.ended.in_pipe || say("between.not_said") },
    ])}${note({ lead: say("between.view_first"), text: say("between.stays") })}
    ${form({ id: "new-attempt", does: tell(view, { command: "new_attempt" }), then: to(view), inside: html`
      <p class="entry-label">${say("between.pipe")}</p>${yesNo({ legend: say("between.pipe"), name: "command.pipe_unharmed", picked: typed["command.pipe_unharmed"] ?? "yes", quiet: true })}
      <p class="entry-label">${say("between.packer")}</p>${yesNo({ legend: say("between.packer"), name: "command.packer_unharmed", picked: typed["command.packer_unharmed"] ?? "yes", quiet: true })}` })}
    ${view.ending && way({ label: say(view.repair.issued ? "between.record" : "between.sign"), note: view.repair.issued?.number ?? say("between.sign_note"), href: to(view, view.repair.issued ? "certificate" : "sign") })}
    ${section({ id: "close", title: say("between.close"), inside: form({ id: "close-form", does: tell(view, { command: "close_unrepaired" }), then: to(view), inside: html`
      ${lines({ id: "close-reason", name: "command.reason", label: say("between.close_why"), value: view.drafts?.["close-form"]?.["command.reason"] ?? "", rows: 2 })}<button type="submit" class="way"><b>${say("between.close_act")}</b><small>${say("between.close_note")}</small></button>` }) })}`,
    foot: deck({ more: usual({ repair: view.repair.id }), act: act({ label: say("between.again", { n: last.n + 1 }), note: say("between.again_note"), form: "new-attempt" }) }),
  });
}
