// In a rehearsal that is played: what one would see on the street, the pace of the clock, and the way to the debrief.

import { html } from "../../html.js";
import { quantity } from "../../format.js";
import { action } from "../../parts/action.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { PACES } from "../practice.js";
import { to } from "./about.js";

/** By the end of its name, the unit in which a sight is shown, and its decimals. */
const SHOWN = { mc: ["celsius", 1], pa: ["bar", 2], um: ["m", 2] };
const SMALL = ["least_um", "most_um", "fold_um"];

/** Returns what there is to see, or nothing in a repair in earnest. */
export const sights = (view) => view.practice && view.params?.sub !== "debrief" && html`<section class="section practice" aria-labelledby="practice-see"><h2 id="practice-see">${say("practice.see")}</h2>
  ${measured(view.practice.sights)}${view.practice.sights.filter(({ value }) => value === null).map(({ seen }) => html`<p>${say(`seen.${seen}`)}</p>`)}${view.practice.sights.length === 0 && html`<p class="soft">${say("practice.nothing")}</p>`}
  <div class="paces" role="group" aria-label="${say("practice.pace")}"><span>${say("practice.clock_now")}</span>${PACES.map((n) => action({ does: { do: "pace", repair: view.repair.id, pace: n }, then: to(view, view.params?.sub), inside: say("practice.clock", { n }), more: html`aria-pressed="${String(n === view.practice.pace)}"` }))}</div>
  ${view.practice.debrief.over && view.repair.attempts.length > 0 && way({ label: say("practice.debrief"), note: say("practice.debrief_note"), href: to(view, "debrief") })}</section>`;

const measured = (all) => {
  const items = all.filter(({ value }) => value !== null);
  return items.length > 0 && html`<dl class="sights">${items.map(({ seen, value }) => html`<div><dt>${say(`seen.${seen}`)}</dt><dd>${shown(seen, value)}</dd></div>`)}</dl>`;
};

function shown(seen, value) {
  const [unit, digits] = SMALL.includes(seen) ? ["mm", 1] : SHOWN[seen.split("_").at(-1)];
  return quantity(unit, value, digits);
}
