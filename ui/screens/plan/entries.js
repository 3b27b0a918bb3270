// What the crew chooses and measures for the plan. The form asks the core again at every change.

import { html } from "../../html.js";
import { number } from "../../format.js";
import { choice as rows } from "../../parts/choice.js";
import { entry } from "../../parts/entry.js";
import { field, picks } from "../../parts/field.js";
import { pair, yesNo } from "../../parts/pair.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";
import { temperatureEntries } from "../repair/temps.js";

// Zero everywhere is what stands there before anybody has measured.
const measured = (set) => (set.resin_mc === 0 && set.air_mc === 0 && set.pipe_mc === 0 ? {} : set);

// What fits, and the two nearest that do not, with their reason.
const shortList = (list) => [...list.filter(({ fits }) => fits).slice(0, 5), ...list.filter(({ fits }) => !fits).slice(0, 2)];

/** Returns the form of the choice, filled with what the proposal was made from. */
export function entries(view) {
  const { proposal, shelf } = view;
  const { choice } = proposal;
  const id = `plan-${view.repair.repair.id}`;
  const typed = view.drafts?.[id] ?? {};
  const hidden = (name, value) => html`<input type="hidden" name="choice.${name}" value="${value}">`;
  const value = (name, recorded) => typed[`choice.${name}`] ?? recorded;
  const length = (name, label, unit, recorded, most) => entry({
    id: `plan-${name}`, name: `choice.${name}`, label, unit, digits: unit === "m" ? 2 : 1, steps: unit === "m" ? 1e6 : 1e3, step: unit === "m" ? 0.05 : 0.5, min: 0, max: most,
    value: value(name, recorded === null || recorded === undefined ? "" : number(recorded / (unit === "m" ? 1e6 : 1e3), unit === "m" ? 2 : 1)),
  });
  const candidates = (name, list, legend) => rows({ legend, name: `choice.${name}`, picked: value(name, choice[name]), options: shortList(list).map((one) => ({ value: one.id, strong: one.name, note: one.says, closed: !one.fits && one.id !== choice[name] })) });
  const count = (name, label, recorded, min, max) => entry({ id: `plan-${name}`, name: `choice.${name}`, label, min, max, value: value(name, recorded || "") });
  const nodes = [{ value: "upstream", label: view.repair.repair.line.upstream.name }, { value: "downstream", label: view.repair.repair.line.downstream.name }];
  return html`<form id="${id}" class="plan-pick" data-live="yes" data-request="${JSON.stringify({ do: "plan", repair: view.repair.repair.id })}" novalidate>
    ${hidden("contract", choice.contract)}${hidden("method", choice.method)}${hidden("counter", choice.counter)}${hidden("tape", choice.tape)}
    ${candidates("patch", proposal.patches, say("planned.patch"))}${candidates("packer", proposal.packers, say("planned.packer"))}${candidates("resin", proposal.resins, say("planned.resin"))}
    ${section({ id: "plan-temps", title: say("plan.temperatures"), inside: temperatureEntries({ prefix: "choice.temperatures", drafts: typed, last: measured(choice.temperatures) }) })}
    ${section({ id: "plan-pipe", title: say("plan.pipe"), inside: html`${length("diameter_least_um", say("plan.least"), "mm", choice.diameter_least_um, 3000)}${length("diameter_most_um", say("plan.most"), "mm", choice.diameter_most_um, 3000)}
      <p class="entry-label">${say("plan.measured")}</p>${yesNo({ legend: say("plan.measured"), name: "choice.diameter_measured", picked: value("diameter_measured", choice.diameter_measured ? "yes" : "no"), quiet: true })}
      ${length("head_um", say("plan.head"), "m", choice.head_um, 100)}${length("behind_um", say("plan.behind"), "m", choice.behind_um, 100)}` })}
    ${section({ id: "plan-way", title: say("plan.way"), inside: html`
      ${picks({ id: "plan-way_in", name: "choice.way_in", label: say("plan.brought"), value: value("way_in", choice.way_in), options: ["rope", "hose", "rods"].map((one) => ({ value: one, label: say(`plan.by_${one}`) })) })}
      <p class="entry-label">${say("plan.from_node")}</p>${pair({ legend: say("plan.from_node"), name: "choice.from_node", quiet: true, picked: value("from_node", choice.from_node), options: nodes })}
      ${picks({ id: "plan-point", name: "choice.reading_point.kind", label: say("push.read_at"), value: value("reading_point.kind", choice.reading_point.kind), options: ["pipe_mouth", "cleanout_cap"].map((one) => ({ value: one, label: say(`reading_point.${one}`) })) })}
      ${length("reading_point.offset_um", say("plan.offset_entry"), "m", choice.reading_point.offset_um, 50)}${length("rod_um", say("plan.rod"), "m", choice.rod_um, 10)}
      ${field({ id: "plan-below", name: "choice.below", label: say("plan.below"), value: value("below", choice.below) })}
      <p class="entry-label">${say("plan.on_defect")}</p>${yesNo({ legend: say("plan.on_defect"), name: "choice.marked_on_defect", picked: value("marked_on_defect", choice.marked_on_defect ? "yes" : "no"), quiet: true })}
      ${count("seam_hour", say("plan.seam"), choice.seam_hour, 1, 12)}${count("batches", say("plan.batches"), choice.batches, 1, 9)}
      <p class="entry-label">${say("plan.inspected_from")}</p>${pair({ legend: say("plan.inspected_from"), name: "choice.inspected_from", quiet: true, picked: value("inspected_from", choice.inspected_from), options: nodes })}
      <p class="entry-label">${say("plan.in_series")}</p>${yesNo({ legend: say("plan.in_series"), name: "choice.in_series", picked: value("in_series", choice.in_series ? "yes" : "no"), quiet: true })}
      ${value("in_series", choice.in_series ? "yes" : "no") === "yes" && count("series_done", say("plan.series_done"), choice.series_done, 0, 200)}` })}
    ${closure(view, choice, typed)}<p class="soft">${say("plan.documents", { contract: shelf.contracts.find(({ id: one }) => one === choice.contract)?.title ?? "", counter: choice.counter, tape: choice.tape })}</p></form>`;
}

// What ends: a lane closure, a permit, a plug. Left out until its time is there.
function closure(view, choice, typed) {
  const offset = view.now?.offset_min ?? 0;
  const [first] = choice.closures;
  const until = typed["choice.closures.0.until_ms"] ?? (first ? new Date(first.until_ms + offset * 60_000).toISOString().slice(0, 16) : "");
  return section({ id: "plan-ends", title: say("plan.ends"), inside: html`
    ${until && field({ id: "plan-what", name: "choice.closures.0.what", label: say("plan.ends_what"), value: typed["choice.closures.0.what"] ?? first?.what ?? say("plan.lane") })}
    <label class="field" for="plan-until">${say("plan.ends_until")}<input id="plan-until" name="choice.closures.0.until_ms" type="datetime-local" value="${until}" data-as="time" data-offset="${offset}"></label>` });
}
