// The foreman's review, by exception: everything off the plan, then accept or reject.

import { html } from "../../html.js";
import { minSec } from "../../format.js";
import { form } from "../../parts/action.js";
import { act, deck, small } from "../../parts/deck.js";
import { facts } from "../../parts/facts.js";
import { lines } from "../../parts/field.js";
import { conditions } from "../../parts/conditions.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";
import { at, attempt, frame, tell, to } from "./frame.js";
import { inTheWay, name, strip } from "./gate.js";

export const title = () => say("review.title");

export function render(view) {
  const { review, repair, hold } = view;
  return frame(view, {
    title: title(), mainKind: "stack",
    main: html`${review.doubtful && note({ lead: say("review.doubtful"), text: say("review.doubtful_text") })}
      ${inTheWay(view, review.broken)}${review.broken.length === 0 && html`<p class="lead">${say("review.nothing")}</p>`}
      ${inTheWay(view, (view.next.gate?.broken ?? []).filter((one) => !review.broken.some((known) => known.rule === one.rule && known.subject === one.subject) && one.rule !== "departure_open"))}
      ${hold && section({ id: "review-hold", title: say("stage.hold"), inside: facts([
        { label: say("review.counted"), value: minSec(hold.counted_ms), note: say("review.required", { n: minSec(hold.required_ms) }) },
        { label: say("review.gaps"), value: minSec(hold.not_witnessed_ms) },
        { label: say("review.outside"), value: minSec(hold.outside_ms) },
      ]) })}
      ${also(view)}
      ${section({ id: "reject", title: say("review.reject"), inside: form({ id: "reject-form", does: tell(view, { command: "judge", accept: false }), then: to(view), inside: html`
        ${lines({ id: "reject-why", name: "command.reasons", as: "list", label: say("review.reject_why"), value: view.drafts?.["reject-form"]?.["command.reasons"] ?? "", rows: 2 })}<button type="submit" class="way"><b>${say("review.reject_act")}</b><small>${say("review.reject_note")}</small></button>` }) })}`,
    foot: deck({ gate: strip(view, say("review.verdict")), more: [small({ mark: "cross", label: say("review.back"), href: to(view) }), small({ mark: "note", label: say("deck.note"), href: to(view, "note") })],
      act: act({ label: say("review.accept"), note: say("review.accept_note", { n: repair.waivers.length }), mark: "tick", does: tell(view, { command: "judge", accept: true, reasons: [] }), then: to(view) }) }),
  });
}

// What is kept and printed without asking anybody.
function also(view) {
  const { repair } = view;
  const items = [
    ...repair.attempts.filter((one) => one.ended && one !== attempt(view)).map((one) => ({ state: "met", text: say("review.attempt", { n: one.n, how: say(`outcome.${one.ended.outcome}`) }), note: one.ended.reasons.join(" ") })),
    ...repair.corrections.map((one) => ({ state: "met", text: say("review.correction", { what: one.label }), note: say("review.corrected", { old: one.old, new: one.new, why: one.reason }) })),
    ...repair.notes.map((one) => ({ state: "met", text: one.text, note: `${at(view, one.at.moment.at_ms)} ${name(view, one.at.person)}` })),
    ...view.tasks.filter((task) => task.late).map((task) => ({ state: "met", text: task.label, note: say("task.late") })),
  ];
  return items.length > 0 && section({ id: "also", title: say("review.also"), aside: String(items.length), inside: conditions(items) });
}
