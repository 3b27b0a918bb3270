// What the crew measures and chooses for the plan. The form asks the core again at every change.

import { html } from "../../html.js";
import { likely, number } from "../../format.js";
import { entry } from "../../parts/entry.js";
import { field, picks } from "../../parts/field.js";
import { pair, yesNo } from "../../parts/pair.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";
import { temperatureEntries } from "../repair/temps.js";

/** Returns what decides the time: the temperatures, and what ends today. */
export const measured = (view) => { const on = controls(view); return html`${temperatures(view, on.typed)}${closure(view, on)}`; };

/** Returns the other sections of the form, filled with what the proposal was made from. */
export function entries(view) {
  const on = controls(view);
  const { line } = view.repair.repair;
  const nodes = [["upstream", line.upstream.name], ["downstream", line.downstream.name]];
  return html`<div class="plan-enter">${section({ id: "plan-pipe", title: say("plan.pipe"), inside: html`${on.mm("diameter_least_um", "least", 3000)}${on.mm("diameter_most_um", "most", 3000)}${on.yes("diameter_measured", "measured")}
      ${on.metres("head_um", "head", 100)}${on.metres("behind_um", "behind", 100)}` })}</div>
    <div class="plan-enter">${section({ id: "plan-patch", title: say("plan.patch"), inside: html`${on.metres("centre_um", "centre", 5000)}${on.count("seam_hour", "seam", say("unit.hour"), 12)}${on.yes("marked_on_defect", "on_defect")}
      ${on.yes("in_series", "in_series")}${on.value("in_series") === "yes" && on.count("series_done", "series_done", "", 20)}${on.count("batches", "batches", "", 10)}` })}</div>
    <div class="plan-enter">${section({ id: "plan-way", title: say("plan.way"), inside: html`${on.pick("way_in", "brought", ["rope", "hose", "rods"].map((one) => [one, say(`plan.by_${one}`)]))}
      ${on.pair("from_node", "from_node", nodes)}${on.pick("reading_point.kind", "read_at", ["pipe_mouth", "cleanout_cap"].map((one) => [one, say(`reading_point.${one}`)]))}
      ${on.metres("reading_point.offset_um", "offset", 50)}${on.value("reading_point.kind") === "cleanout_cap" && html`${on.metres("reading_point.riser_um", "riser", 20)}${on.metres("reading_point.bends_um", "bends_length", 20)}${on.count("reading_point.bends", "bends", "", 10)}`}
      ${on.value("way_in") === "rods" && on.metres("rod_um", "rod", 10)}${on.text("below", "below")}` })}
      ${documents(view, on, nodes)}</div>`;
}

const temperatures = ({ proposal: { choice } }, typed) => section({ id: "plan-temps", title: say("plan.temperatures"), inside: html`
  ${temperatureEntries({ prefix: "choice.temperatures", drafts: typed, last: given(choice.temperatures) ? choice.temperatures : {} })}<p class="soft">${say("plan.temps_whole")}</p>` });

// A set of nothing but zeros is none: nobody has measured yet.
const given = ({ resin_mc: resin, air_mc: air, pipe_mc: pipe, water_mc: water }) => resin !== 0 || air !== 0 || pipe !== 0 || water !== null;

function documents({ shelf }, on, nodes) {
  const of = (list, name) => list.map((one) => [one.id, one[name]]);
  const kind = (wanted) => of(shelf.instruments.filter((one) => one.kind === wanted), "name");
  return section({ id: "plan-documents", title: say("plan.documents"), inside: html`${on.pick("contract", "contract", of(shelf.contracts, "title"))}${on.pick("method", "method", of(shelf.methods, "title"))}
    ${on.pick("counter", "counter", kind("camera_counter"))}${on.pair("inspected_from", "inspected_from", nodes)}${on.pick("tape", "tape", kind("tape"))}` });
}

// What ends today: a lane closure, a permit, a plug. Its time closes nothing; the plan says when the hold would be later.
function closure({ now, proposal: { choice } }, on) {
  const offset = now?.offset_min ?? 0;
  const filled = choice.closures.length;
  const rows = Array.from({ length: Math.min(4, filled + 1) }, (_, i) => i);
  const local = (ms) => (ms === undefined ? "" : new Date(ms + offset * 60_000).toISOString().slice(0, 16));
  return section({ id: "plan-ends", title: say("plan.ends"), inside: rows.map((i) => html`
    ${field({ id: `plan-what-${i}`, name: `choice.closures.${i}.what`, label: say("plan.ends_what"), value: on.typed[`choice.closures.${i}.what`] ?? choice.closures[i]?.what ?? "" })}
    <label class="field" for="plan-until-${i}">${say("plan.ends_until")}<input id="plan-until-${i}" name="choice.closures.${i}.until_ms" type="datetime-local" value="${on.typed[`choice.closures.${i}.until_ms`] ?? local(choice.closures[i]?.until_ms)}" data-as="time" data-offset="${offset}"></label>`) });
}

/** Returns what draws a control of the choice by its path, with what was typed or else what was recorded. */
function controls({ proposal: { choice }, repair: { repair }, drafts }) {
  const typed = drafts?.[`plan-${repair.id}`] ?? {};
  const recorded = (path) => path.split(".").reduce((inner, key) => inner?.[key], choice);
  const words = { true: "yes", false: "no" };
  const value = (path) => { const kept = recorded(path); return typed[`choice.${path}`] ?? words[kept] ?? kept ?? ""; };
  const id = (path) => `plan-${path.split(".").at(-1)}`;
  const at = (path, label) => ({ id: id(path), name: `choice.${path}`, label: say(`plan.${label}_entry`) });
  const figure = (path, per, digits) => { const kept = recorded(path); return typed[`choice.${path}`] ?? (kept === null || kept === undefined || kept === 0 ? "" : number(kept / per, digits)); };
  return {
    typed, value,
    metres: (path, label, most) => entry({ ...at(path, label), unit: "m", digits: 2, steps: 1e6, step: 0.05, min: 0, max: most, value: figure(path, 1e6, 2) }),
    mm: (path, label, most) => entry({ ...at(path, label), unit: "mm", digits: 1, steps: 1e3, step: 0.5, min: 0, max: most, likely: repair.line.height_um ? likely(repair.line.height_um) : undefined, value: figure(path, 1e3, 1) }),
    count: (path, label, unit, most) => entry({ ...at(path, label), unit, step: 1, min: 0, max: most, value: figure(path, 1, 0) }),
    text: (path, label) => field({ ...at(path, label), value: value(path) }),
    pick: (path, label, options) => picks({ ...at(path, label), value: value(path), options: options.map(([key, words_]) => ({ value: key, label: words_ })) }),
    pair: (path, label, options) => html`<p class="entry-label">${say(`plan.${label}_entry`)}</p>${pair({ legend: say(`plan.${label}_entry`), name: `choice.${path}`, quiet: true, picked: value(path), options: options.map(([key, words_]) => ({ value: key, label: words_ })) })}`,
    yes: (path, label) => html`<p class="entry-label">${say(`plan.${label}_entry`)}</p>${yesNo({ legend: say(`plan.${label}_entry`), name: `choice.${path}`, picked: value(path), quiet: true })}`,
  };
}
