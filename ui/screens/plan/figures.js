// What the plan says, part by part: time, place, hold, pressure, sleeve and binding. A part that can't be computed yet says so.

import { html } from "../../html.js";
import { figure, quantity, range, short, span, unitOf, up } from "../../format.js";
import { facts } from "../../parts/facts.js";
import { note } from "../../parts/note.js";
import { readings } from "../../parts/readings.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";
import { defectClock } from "../repair/places.js";
import { budgetOf } from "../repair/budget.js";
import { pace } from "../repair/worked.js";

/** Returns the time budget as an estimate, or what it waits for. */
export const timed = ({ proposal, repair }, part) => section({
  id: "plan-time", title: say("planned.estimate"), aside: part && say("go.warmest", { what: say(`temperature.${part.budget.warmest}`), n: short("celsius", part.budget.warmest_mc) }), kind: "",
  inside: part ? html`${budgetOf(part.budget)}${pace(repair.pace)}<p class="soft plan-say">${say("plan.until")}</p>` : html`<p>${say(proposal.breaks.some(({ rule }) => rule === "temperatures_missing") ? "plan.no_time_yet" : "plan.no_time")}</p>`,
});

/** Returns where the patch goes, how it is brought there and where its mark is read. */
export function place({ repair: { repair: { line, defect } }, proposal: { choice } }, part) {
  const upstream = choice.from_node === "upstream";
  const [here, there] = upstream ? [line.upstream.name, line.downstream.name] : [line.downstream.name, line.upstream.name];
  const mouth = choice.reading_point.kind === "pipe_mouth";
  return section({ id: "plan-where", title: say("plan.where"), inside: html`${readings([
    { label: say("plan.from", { node: line.upstream.name }), value: figure("m", part.from_upstream_um), unit: unitOf("m") },
    { label: say("plan.from", { node: line.downstream.name }), value: figure("m", part.from_downstream_um), unit: unitOf("m") },
  ], "two")}${facts([
    { label: say("plan.brought"), value: say(`way_in.${choice.way_in}`, { node: there }) },
    { label: say("plan.hose"), value: here },
    { label: say(part.mark.whole_rods > 0 ? "plan.mark_rods" : "plan.mark"), value: part.mark.whole_rods > 0 ? say("plan.rods", { n: part.mark.whole_rods, rest: quantity("mm", part.mark.remainder_um) }) : say("plan.from_centre", { m: quantity("m", part.mark.path_um) }) },
    { label: say("push.read_at"), value: say(`reading_point.${choice.reading_point.kind}`) },
    { label: say(mouth ? "plan.mouth" : "plan.cap"), value: choice.reading_point.offset_um === 0 && mouth ? say("plan.not_entered") : say("plan.offset", { m: quantity("m", choice.reading_point.offset_um), node: here }) },
    { label: say("plan.below"), value: choice.below || say("plan.nobody") },
    { label: say("plan.seam"), value: choice.seam_hour === 0 ? say("plan.not_chosen") : say("plan.hour", { n: choice.seam_hour }) },
    ...(part.in_series > 1 ? [{ label: say("plan.series"), value: say("plan.series_of", { n: choice.series_done + 1, of: part.in_series }) }] : []),
  ])}${defectClock({ line, defect }, { seam: choice.seam_hour, covered: part.covered })}` });
}

/** Returns the required hold and the full cure. */
export function held({ proposal: { plan, choice }, shelf }, part) {
  if (!part) return "";
  const sheet = plan?.resin ?? shelf.resins.find(({ id }) => id === choice.resin);
  return section({ id: "plan-hold", title: say("stage.hold"), aside: say("plan.coldest", { n: short("celsius", part.hold_at_mc) }), inside: html`
    ${readings([{ label: say("plan.hold"), value: String(Math.ceil(part.hold_ms / 60e3)), unit: "min", quiet: true }])}<p class="soft">${say("plan.sheet", { name: sheet?.name ?? "" })}</p>
    ${facts([{ label: say("plan.cure"), value: span(part.full_cure_ms, "up"), note: sheet && say(`counts.${(sheet.cure_counts_from ?? sheet.counts_from).value}`) }])}` });
}

/** Returns the pressure window with what governs it, and the thrust as a number for keeping away. */
export const pressed = (part) => part && section({ id: "plan-window", title: say("plan.window"), inside: html`${facts([
  { label: say("plan.between"), value: range("bar", part.window.lower_pa, part.window.upper_pa) },
  { label: say("plan.lower"), value: part.window.lower_governs }, { label: say("plan.upper"), value: part.window.upper_governs },
  ...(part.window.water_pa > 0 ? [{ label: say("plan.water"), value: quantity("bar", part.window.water_pa) }] : []),
  { label: say("plan.target"), value: quantity("bar", part.window.target_pa) },
])}${note({ lead: say("plan.danger"), text: say("plan.thrust", { n: up("kN", part.thrust_n) }) })}` });

/** Returns sleeve, membrane, wrap, resin and binding. Bands count from the front edge of what they hold. */
export const bound = (part) => part && section({ id: "plan-bound", title: say("plan.bound"), inside: facts([
  { label: say("plan.sleeve"), value: quantity("mm", part.sleeve_um), note: say("plan.bands", { n: part.sleeve_bands_um.length, at: bands(part.sleeve_bands_um) }) },
  ...(part.membrane_um === null ? [] : [{ label: say("plan.membrane"), value: quantity("mm", part.membrane_um), note: part.membrane_bands_um.length > 0 && say("plan.bands", { n: part.membrane_bands_um.length, at: bands(part.membrane_bands_um) }) }]),
  { label: say("plan.wrap"), value: quantity("mm", part.wrap_um) },
  { label: say("plan.binding"), value: bands(part.patch_bands_um), note: say("plan.binding_note") },
  { label: say("plan.bare"), value: quantity("mm", part.bare_end_um) },
  { label: say("plan.batch"), value: quantity("g", part.batch_mg) },
]) });

const bands = (all) => `${all.map((um) => figure("mm", um)).join(", ")}\u00a0${unitOf("mm")}`;
