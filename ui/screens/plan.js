// The plan: every figure with where it comes from. Every change asks the core again; nothing is written before it is accepted.

import { html } from "../html.js";
import { minSec } from "../format.js";
import { act, deck, gate } from "../parts/deck.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { say } from "../text/say.js";
import { inTheWay } from "./repair/gate.js";
import { cover, figures, pictures, sketch } from "./plan/figures.js";
import { entries } from "./plan/entries.js";

export const title = () => say("plan.title");

/** Returns what of the plan's form goes with the question, if it was changed on this screen. */
export const choiceOf = (fields) => (fields?.choice ? { choice: whole(fields.choice) } : {});

// A set of temperatures counts when resin, air and pipe are there; until then none was measured.
const whole = ({ temperatures, ...choice }) => (["resin_mc", "air_mc", "pipe_mc"].every((key) => temperatures?.[key] !== undefined) ? { ...choice, temperatures } : choice);

export function render(view) {
  const { repair, proposal } = view;
  const { line } = repair.repair;
  const shown = { ...repair, drafts: view.drafts, now: view.now };
  const breaks = proposal.breaks.map((one) => ({ ...one, subject: "", waived: repair.repair.waivers.find(({ rule, attempt }) => rule === one.rule && attempt === Math.max(1, repair.attempt)) }));
  const open = breaks.filter((one) => !one.waived);
  const draft = !proposal.plan && sketch(view);
  return page({
    rehearsal: repair.repair.rehearsal,
    mast: mast({ title: title(), strong: say("today.line", { from: line.upstream.name, to: line.downstream.name }), where: line.street, side: [repair.repair.number], rehearsal: repair.repair.rehearsal }),
    main: html`<main class="plan">${breaks.length > 0 && html`<div class="plan-time">${inTheWay(shown, breaks)}</div>`}
      ${proposal.plan && html`${pictures(view, proposal.plan)}${figures(view, proposal.plan)}`}${draft && html`${pictures(view, draft)}<div class="plan-pick">${cover(view, draft)}</div>`}${entries(view)}</main>`,
    deck: foot(view, open),
  });
}

function foot(view, open) {
  const { repair, proposal } = view;
  const budget = proposal.plan?.computed.budget;
  const note = budget && say(budget.spare_ms < 0 ? "plan.short" : "plan.spare", { spare: minSec(Math.abs(budget.spare_ms)) });
  if (open.length > 0) return deck({ gate: gate({ reason: open[0].says, note: open[0].ways_out?.[0]?.says ?? open[0].way_out }), act: act({ label: say("plan.again"), note: say("plan.again_note"), form: `plan-${repair.repair.id}` }) });
  return deck({ act: act({ label: say("plan.accept"), note: note ?? "", does: { do: "accept_plan", repair: repair.repair.id, choice: proposal.choice }, then: `#/repair/${repair.repair.id}` }) });
}

