// Packer, patch and resin of the shelf: what fits, and what does not with its reason. What the foreman may waive can be picked.

import { flag, html } from "../../html.js";
import { choice as rows } from "../../parts/choice.js";
import { say, within } from "../../text/say.js";

/** How many of those that do not fit are shown before all are asked for. */
const NEAREST = 2;

/** Returns the three lists. */
export function candidates({ proposal, repair: { repair }, drafts }) {
  const typed = drafts?.[`plan-${repair.id}`] ?? {};
  return [["packer", proposal.packers], ["patch", proposal.patches], ["resin", proposal.resins]].map(([name, all]) => list(name, all, proposal.choice[name], typed));
}

function list(name, all, chosen, typed) {
  const picked = typed[`choice.${name}`] ?? chosen;
  const whole = [typed[`all.${name}`] ?? []].flat().includes("yes");
  const near = all.filter(({ fits, id }) => !fits && id !== picked).slice(0, NEAREST);
  const shown = whole ? all : all.filter((one) => one.fits || one.id === picked || near.includes(one));
  return html`<div id="pick-${name}" tabindex="-1">${rows({ legend: say(`planned.${name}`), name: `choice.${name}`, picked, options: shown.map(({ id, name: strong, fits, waivable, rule, says }) => ({
    value: id, strong, text: fits ? "" : within(say(`rule.name.${rule}`)), note: says, closed: !fits && !waivable && id !== picked,
  })) })}${all.length > shown.length || whole ? html`<label class="choice tick-row"><input type="checkbox" name="all.${name}" value="yes" data-as="list" ${flag("checked", whole)}> ${say("plan.all", { n: all.length })}</label>` : ""}</div>`;
}
