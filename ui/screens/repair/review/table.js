// The table of exceptions: what, the evidence, the decision. On a phone each row is a paragraph.

import { flag, html } from "../../../html.js";
import { inMinutes, minSec, span, time } from "../../../format.js";
import { form } from "../../../parts/action.js";
import { picks } from "../../../parts/field.js";
import { keyOf, pin } from "../../../parts/pin.js";
import { say } from "../../../text/say.js";
import { tell, to } from "../frame.js";
import { name } from "../gate.js";

/** Returns the form that waives one open departure. */
export const waiveForm = ({ what: { broken } }) => `waive-${broken.rule}-${broken.subject}`.replace(/\W+/g, "-");

const lookForm = (one) => `look-${waiveForm(one)}`;

/** Returns what the foreman has picked for an open departure and not yet sent: "yes", "no" or nothing. */
export const decisionOf = (view, one) => view.drafts?.[lookForm(one)]?.decision;

/** Returns the table. */
export const exceptions = (view) => html`<table class="exceptions"><caption class="unseen">${say("review.caption")}</caption><thead><tr><th scope="col"><span class="unseen">${say("review.mark")}</span></th>
  ${["what", "evidence", "decision"].map((head) => html`<th scope="col">${say(`review.${head}`)}</th>`)}</tr></thead><tbody>${view.review.off.map((one) => row(view, one))}</tbody></table>`;

const row = (view, one) => html`<tr ${one.open && html`class="needs"`}><td class="num"><span>${one.n}</span></td><th scope="row">${titleOf(one)}</th>
  <td>${evidence(view, one)}${who(view, one)}</td><td>${decision(view, one)}</td></tr>`;

const titleOf = ({ what, doubt }) => html`${what.kind === "rule" ? say(`rule.name.${what.broken.rule}`) : what.kind === "attempt" ? say(`off.${what.outcome}`, { n: what.n ?? "" }) : say(`off.${what.kind}`)}${doubt && html`<small class="soft"> ${say("review.doubt")}</small>`}`;

const at = (view, ms) => time(ms, view.now?.offset_min ?? 0);
const stretch = (view, { from_ms: from, to_ms: to }) => ({ span: span(to - from, "up"), from: at(view, from), to: at(view, to) });

function evidence(view, { what, at_ms: ms, attempt }) {
  const when = ms === null ? "" : `${at(view, ms)}. `;
  switch (what.kind) {
    case "rule": return html`${when}${what.broken.says}`;
    case "attempt": return html`${when}${say("off.attempt", { n: attempt })} ${what.reasons.join(" ")} ${what.in_pipe}`;
    case "correction": return html`${what.label}: <s>${what.old}</s> ${what.new}${ms !== null && ` ${say("off.at", { at: at(view, ms) })}`}. ${what.reason}`;
    case "gap": return say("off.gap_text", stretch(view, what));
    case "outside": return say("off.outside_text", stretch(view, what));
    case "late": return html`${say("off.late_text", { n: what.labels.length })}<details><summary>${say("off.which")}</summary>${what.labels.join("; ")}.</details>`;
    case "paper": return html`${say("off.paper_text", { n: what.entries.length })}<details><summary>${say("off.which")}</summary>${what.entries.map((one) => html`<p>${say("off.paper_entry", { what: one.what, at: at(view, one.at_ms), keyed: at(view, one.keyed_ms) })}</p>`)}</details>`;
    default: return say(what.restarted ? "off.clock_restarted" : "off.clock_text", { by: minSec(Math.abs(what.by_ms), "up"), at: at(view, ms) });
  }
}

const who = (view, { person }) => html`<small>${person ? name(view, person) : say("review.found")}</small>`;

function decision(view, one) {
  const { what } = one;
  if (what.kind === "correction") return soft(say("review.both_printed"));
  if (what.kind === "gap" && view.hold) return soft(say("review.gap_printed", { counted: inMinutes(view.hold.counted_ms), of: Math.ceil(view.hold.required_ms / 60e3) }));
  if (what.kind === "outside") return soft(say("review.outside_printed"));
  if (what.kind !== "rule") return soft(say("review.printed"));
  const { broken } = what;
  if (broken.waived) return soft(say("review.said", { who: name(view, broken.waived.foreman), at: at(view, broken.waived.at.moment.at_ms), why: broken.waived.reason }));
  if (!broken.waivable) return html`<b>${say("review.never")}</b> ${broken.way_out}`;
  return html`${broken.rule === "photo_missing" && html`<a class="way" href="${to(view, `photo/${broken.subject}`)}"><b>${say("photos.take")}</b></a>`}${asked(view, one)}`;
}

const soft = (text) => html`<span class="soft">${text}</span>`;

// The two answers belong to a form of their own: what is sent is the reason alone.
function asked(view, one) {
  const { broken } = one.what;
  const id = waiveForm(one);
  const typed = view.drafts?.[id] ?? {};
  const picked = decisionOf(view, one);
  const me = view.people.find(({ id: who_ }) => who_ === view.person);
  return html`<form id="${lookForm(one)}" novalidate><fieldset class="pair-v"><legend class="unseen">${say("review.decision_on", { what: say(`rule.name.${broken.rule}`) })}</legend>
    ${["yes", "no"].map((value) => html`<label><input type="radio" name="decision" value="${value}" ${flag("checked", picked === value)}>${say(`review.${value}`)}</label>`)}</fieldset></form>
    ${picked !== "no" && form({ id, does: tell(view, { command: "waive", rule: broken.rule, subject: broken.subject, ...(me?.role === "foreman" && { foreman: me.id }) }), then: to(view, "review"), inside: html`
      ${me?.role !== "foreman" && picks({ id: `${id}-who`, name: "command.foreman", label: say("waive.foreman"), value: typed["command.foreman"], options: view.people.filter(({ role }) => role === "foreman").map(({ id: value, name: label }) => ({ value, label })) })}
      <label class="why" for="${id}-why">${say("review.reason")} <input id="${id}-why" name="command.reason" type="text" value="${typed["command.reason"] ?? ""}" autocomplete="off"></label>${!view.repair.rehearsal && view.people.some((person) => person.role === "foreman" && keyOf(person)) && pin(`${id}-pin`, say("key.pin_foreman"))}` })}`;
}
