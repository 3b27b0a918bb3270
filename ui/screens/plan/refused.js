// What stands against the plan: the rule, the way out, and the foreman where he may waive it.

import { html } from "../../html.js";
import { minSec, short, span } from "../../format.js";
import { tempRule } from "../../drawings/temp-rule.js";
import { figure } from "../../drawings/svg.js";
import { conditions } from "../../parts/conditions.js";
import { act } from "../../parts/deck.js";
import { say, within } from "../../text/say.js";
import { name } from "../repair/gate.js";
import { onTheRule } from "../repair/temps.js";

/** Returns every rule against the plan, with what the foreman said to it, each with its place `i` in the list. */
export function breaksOf({ repair: { repair, attempt }, proposal }) {
  const said = (one) => repair.waivers.find(({ rule, attempt: n }) => rule === one.rule && n === Math.max(1, attempt));
  return proposal.breaks.map((one, i) => ({ ...one, i, subject: "", waived: said(one) }));
}

/** Returns the note above the plan: what keeps it from being accepted, and below it what was waived. */
export function refused(view, breaks) {
  const open = breaks.filter((one) => !one.waived);
  const waived = breaks.filter((one) => one.waived);
  return html`${open.length > 0 && html`<section class="note" aria-labelledby="plan-refused" id="refusal" tabindex="-1">${open.map((one, i) => html`<h2 ${i === 0 && html`id="plan-refused"`}>${one.says}</h2>
    ${one.rule === "no_time" && needs(view)}${one.rule === "no_time" && rule(view, one)}
    <p><b>${say("refusal.way_out")}</b> ${ways(one)}</p>${one.waivable
    ? html`<button type="button" class="way" data-opens="waive-${one.i}"><b>${say("gate.ask_foreman")}</b><small>${say("waive.printed")}</small></button>`
    : html`<p class="soft">${say("plan.never")}</p>`}`)}</section>`}
    ${waived.length > 0 && html`<section class="note">${conditions(waived.map((one) => ({ state: "waived", text: one.says, note: say("gate.waived", { by: name(view.repair, one.waived.foreman), why: one.waived.reason }) })))}</section>`}`;
}

const ways = ({ ways_out: all }) => all.map(({ says }) => says).join(" ");

function needs({ proposal: { parts: { timed } } }) {
  if (!timed) return "";
  const { working_ms: working, spare_ms: spare, warmest_mc: warmest } = timed.budget;
  return html`<p>${say("plan.needs", { n: short("celsius", warmest), working: minSec(working), needs: minSec(working - spare, "up") })}</p>`;
}

// The three against the warmest that still gives time enough, where the sheet has one.
function rule({ proposal: { choice } }, { ways_out: all }) {
  const enough = all.find(({ values }) => values.enough_mc !== undefined)?.values;
  return figure({ flush: true, inside: tempRule({
    id: "plan-temps-rule", temps: onTheRule(choice.temperatures), label: say("plan.temps_rule"),
    ...(enough && { limit: enough.enough_mc / 1000, limit_says: say("plan.gives", { n: short("celsius", enough.enough_mc), gives: minSec(enough.gives_ms) }) }),
  }) });
}

/** Returns the words of the closed gate. */
export const closed = (open, { parts: { timed } }) => (open[0].rule === "no_time" && timed
  ? say("plan.closed_time", { short: span(-timed.budget.spare_ms, "up") })
  : say("plan.closed", { what: within(say(`rule.name.${open[0].rule}`)), more: open.length - 1 }));

/** Where a rule is opened again: the words of the act, and the field that it leads to. */
const OPENS = {
  temps: { rules: ["no_time", "outside_sheet", "temperatures_missing", "temperatures_old"], field: "resin_mc" },
  patch: { rules: ["cover_short", "diameter_outside_patch", "too_short_to_bind", "patch_outside_line"], field: "pick-patch" },
  packer: { rules: ["diameter_outside_packer", "patch_longer_than_packer", "pressure_not_named", "window_empty", "membrane_short", "membrane_in_bend", "bare_end_short"], field: "pick-packer" },
  batches: { rules: ["batch_too_large"], field: "plan-batches" },
  way: { rules: ["rods_dont_turn"], field: "plan-way_in" },
};

/** Returns the act that leads to where the first rule is opened again. */
export function opens({ rule: broken }) {
  const [kind, { field } = { field: "refusal" }] = Object.entries(OPENS).find(([, { rules }]) => rules.includes(broken)) ?? ["other"];
  return act({ label: say(`plan.opens_${kind}`), note: say(`plan.opens_${kind}_note`), href: `#${field}`, more: html`data-jump="${field}"` });
}
