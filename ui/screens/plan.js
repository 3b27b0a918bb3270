// The plan: every figure with where it comes from. Every change asks the core again; nothing is written before it is accepted.

import { html } from "../html.js";
import { form } from "../parts/action.js";
import { act, deck, gate } from "../parts/deck.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { span } from "../format.js";
import { say } from "../text/say.js";
import { waiver } from "./repair/gate.js";
import { spot, worked } from "./repair/worked.js";
import { candidates } from "./plan/candidates.js";
import { cover } from "./plan/cover.js";
import { entries, measured } from "./plan/entries.js";
import { bound, held, place, pressed, timed } from "./plan/figures.js";
import { pictures } from "./plan/pictures.js";
import { breaksOf, closed, opens, refused } from "./plan/refused.js";

export const title = () => say("plan.title");

export function render(view) {
  const { repair: { repair }, proposal } = view;
  const { place: where, bound: sleeve, pressed: pressure, timed: time } = proposal.parts;
  const breaks = breaksOf(view);
  const open = breaks.filter((one) => !one.waived);
  return page({
    rehearsal: repair.rehearsal,
    mast: mast({ title: title(), strong: say("today.line", { from: repair.line.upstream.name, to: repair.line.downstream.name }), between: ", ", where: repair.line.street, side: [repair.number], rehearsal: repair.rehearsal }),
    main: html`<main>${form({ id: `plan-${repair.id}`, kind: open.length > 0 ? "plan refused" : "plan", live: true, does: { do: "plan", repair: repair.id }, inside: html`
      ${refused(view, breaks)}${open.length > 0 && html`<div class="plan-time">${timed(view, time)}</div>`}${where && pictures(view, where)}
      <div data-key="measured" class="${open.length > 0 ? "plan-enter" : "plan-time"}">${open.length === 0 && timed(view, time)}${notes(proposal)}${measured(view)}</div>
      <div class="plan-where">${where && place(view, where)}${held(view, time)}${pressed(pressure)}${bound(sleeve)}${spot(view.repair.spot)}${worked(view.repair, "plan")}</div>
      <div class="plan-pick">${where && cover(view, where)}${candidates(view)}</div>${entries(view)}` })}${open.map((one) => one.waivable && waiver({ ...view.repair, drafts: view.drafts }, one, one.i))}</main>`,
    deck: foot(view, open),
  });
}

const notes = ({ notes: all }) => all.map(({ says }) => note({ text: says }));

function foot({ repair: { repair }, proposal }, open) {
  if (open.length > 0) return deck({ gate: gate({ reason: closed(open, proposal) }), act: opens(open[0]) });
  return deck({ act: act({
    label: say("plan.accept"), note: say("plan.spare", { spare: span(proposal.plan.computed.budget.spare_ms) }),
    does: { do: "accept_plan", repair: repair.id, choice: proposal.choice }, then: `#/repair/${repair.id}`,
  }) });
}
