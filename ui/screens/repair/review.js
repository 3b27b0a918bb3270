// The foreman's review, by exception: everything off the plan, what asks for a decision first; then accept or reject.

import { html } from "../../html.js";
import { date, time } from "../../format.js";
import { form } from "../../parts/action.js";
import { act, deck, gate, small } from "../../parts/deck.js";
import { lines } from "../../parts/field.js";
import { mast } from "../../parts/mast.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say, within } from "../../text/say.js";
import { frame, sending, tell, to } from "./frame.js";
import { inTheWay } from "./gate.js";
import { timeOf } from "./review/line.js";
import { exceptions, decisionOf, waiveForm } from "./review/table.js";
import { looked } from "./review/photos.js";
import { twoSign } from "./review/signs.js";

export const title = ({ review }) => say(review.off.length === 0 ? "review.nothing" : "review.title", { n: review.off.length, open: review.open });

export function render(view) {
  const { repair, review } = view;
  const done = view.standing !== "underway";
  return frame(view, {
    title: title(view), top: head(view), mainKind: "review",
    main: html`${timeOf(view)}<div class="review-cols"><div>${review.doubtful && note({ lead: say("review.doubtful"), text: say("review.doubtful_text") })}
      ${review.off.length > 0 ? exceptions(view) : html`<p class="lead">${say("review.nothing_text")}</p>`}${looked(view)}${!done && otherwise(view)}${!done && rejecting(view)}${sending(view)}</div>${twoSign(view)}</div>`,
    foot: done ? deck({ more: back(view), act: act({ label: say("review.signs"), note: say("review.signs_note"), href: to(view, "sign") }) }) : foot(view),
  });
}

function head(view) {
  const { repair, people, person, now } = view;
  const me = people.find(({ id }) => id === person);
  return mast({
    title: title(view), strong: repair.number, between: " · ", where: [say("today.line", { from: repair.line.upstream.name, to: repair.line.downstream.name }), repair.line.street].filter(Boolean).join(", "), rehearsal: repair.rehearsal,
    side: [me ? say("review.me", { name: me.name, role: within(say(`role.${me.role}`)) }) : say("people.nobody"), now && `${date(now.at_ms, now.offset_min)}, ${time(now.at_ms, now.offset_min)}`].filter(Boolean),
  });
}

// What stands in the way of accepting and is no exception of the table: open tasks, nobody picked.
function otherwise(view) {
  const known = (one) => one.rule === "departure_open" || view.review.broken.some(({ rule, subject }) => rule === one.rule && subject === one.subject);
  const rest = (view.next.gate?.broken ?? []).filter((one) => !known(one));
  return html`${inTheWay(view, rest)}${rest.some(({ rule }) => ["foreman_needed", "person_missing", "reads_only"].includes(rule)) && way({ label: say("people.who"), note: say("people.note"), href: "#/people" })}`;
}

const REJECT = "reject-form";

const rejecting = (view) => section({ id: "reject", title: say("review.reject"), inside: form({ id: REJECT, does: tell(view, { command: "judge", accept: false }), then: to(view), inside: html`
  ${lines({ id: "reject-why", name: "command.reasons", as: "list", label: say("review.reject_why"), value: view.drafts?.[REJECT]?.["command.reasons"] ?? "", rows: 2 })}<button type="submit" class="way"><b>${say("review.reject_act")}</b><small>${say("review.reject_note")}</small></button>` }) });

const back = (view) => [small({ mark: "cross", label: say("review.back"), href: to(view) }), view.repair.issued ? small({ mark: "note", label: say("done.issued"), href: to(view, "certificate") }) : small({ mark: "note", label: say("review.correct"), href: to(view, "correct") })];

function foot(view) {
  const open = view.review.off.filter((one) => one.open);
  const shut = view.next.gate?.broken ?? [];
  if (open.length > 0) {
    const [one] = [...open.filter((other) => decisionOf(view, other)), ...open];
    const closed = gate({ reason: say("review.decide", { which: open.map(({ n }) => n).join(", ") }) });
    if (decisionOf(view, one) === "no") return deck({ gate: closed, more: back(view), act: act({ label: say("review.reject_act"), note: say("review.reject_note"), mark: "cross", href: "#reject-why", more: html`data-jump="reject-why"` }) });
    return deck({ gate: closed, more: back(view), act: act({ label: say("review.accept_one", { n: one.n }), note: say("review.accept_one_note"), mark: "tick", form: waiveForm(one) }) });
  }
  if (shut.length > 0) return deck({ gate: gate({ reason: shut[0].says, note: shut[0].way_out }), more: back(view), act: act({ label: say("review.to_verification"), note: say("gate.count", { n: shut.length }), href: to(view) }) });
  return deck({ more: back(view), act: act({ label: say("review.accept"), note: say("review.accept_note", { n: view.repair.waivers.length }), mark: "tick", does: tell(view, { command: "judge", accept: true, reasons: [] }), then: to(view, "sign") }) });
}
