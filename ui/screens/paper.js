// The job on paper: the same tasks, fields and photos as the screens, to be printed before the crew leaves and filled in by hand.

import { html } from "../html.js";
import { quantity, range, shownAs, unitOf } from "../format.js";
import { act, deck, small } from "../parts/deck.js";
import { facts } from "../parts/facts.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { STAGES } from "../parts/stages.js";
import { say } from "../text/say.js";

/** The moments of the job, by the stage in which they happen, and the rows of readings that a sheet has room for. */
const MOMENTS = { test_push: ["push_begun", "mark_reached", "packer_back"], wet_out: ["joined"], placement: ["insertion", "at_the_mark"], inflation: ["target"], deflation: ["released", "retrieved"] };
const ROWS = 16;

export const title = () => say("paper.title");

export const render = (view) => {
  const { repair } = view.repair;
  return page({
    kind: "paper", rehearsal: repair.rehearsal,
    mast: mast({ title: title(), strong: repair.number, between: " · ", where: say("paper.where", { from: repair.line.upstream.name, to: repair.line.downstream.name, street: repair.line.street }), rehearsal: repair.rehearsal }),
    main: html`<main class="on-paper"><p class="lead on-screen">${say("paper.what")}</p>${planned(repair)}${STAGES.map((stage) => stageOf(view, stage))}${signing()}<p class="soft">${say("paper.late")}</p></main>`,
    deck: deck({ more: [small({ mark: "cross", label: say("photo.back"), href: `#/repair/${repair.id}` }), small({ mark: "note", label: say("keyed.title"), href: `#/repair/${repair.id}/keyed` })], act: html`<button type="button" class="act" data-print="yes"><b>${say("paper.print")}</b><small>${say("paper.print_note")}</small></button>` }),
  });
};

function planned({ line, defect, plan }) {
  const { computed } = plan;
  const [patch] = computed.patches;
  return html`<section class="section"><h2>${say("paper.plan")}</h2>${facts([
    { label: say("planned.line"), value: `${line.upstream.name} – ${line.downstream.name}`, note: line.asset },
    { label: say("planned.defect"), value: defect.observations[0]?.words ?? say("planned.by_hand"), note: html`<span class="nowrap">${range("m", defect.from_um, defect.to_um)}</span>` },
    { label: say("planned.patch"), value: plan.patch.name, note: html`<span class="nowrap">${range("m", patch.from_um, patch.to_um)}</span>` },
    { label: say("planned.packer"), value: plan.packer.name },
    { label: say("planned.resin"), value: plan.resin.name },
    { label: say("paper.window"), value: range("bar", computed.window.lower_pa, computed.window.upper_pa) },
    { label: say("paper.hold"), value: say("paper.minutes", { n: Math.ceil(computed.hold_ms / 60_000) }) },
    { label: say("paper.work"), value: say("paper.minutes", { n: Math.floor(computed.budget.working_ms / 60_000) }), note: say("paper.work_note") },
  ])}</section>`;
}

function stageOf({ paper }, stage) {
  const tasks = paper.tasks.filter((task) => task.stage === stage);
  const photos = paper.photos.filter((photo) => photo.stage === stage);
  const moments = MOMENTS[stage] ?? [];
  if (tasks.length + photos.length + moments.length === 0 && stage !== "hold") return "";
  return html`<section class="section"><h2>${say(`stage.${stage}`)}</h2>
    ${moments.length > 0 && html`<ul class="sheet-fields">${moments.map((key) => blank(say(`paper.${key}`), say("paper.clock")))}</ul>`}
    ${tasks.map(taskOf)}${stage === "hold" && readings()}
    ${photos.length > 0 && html`<p class="sheet-photos">${say("paper.photos")} ${photos.map(({ label }) => html`<span class="box">${label}</span> `)}</p>`}</section>`;
}

const taskOf = (task) => html`<div class="sheet-task"><p><span class="box"><b>${task.label}</b></span>${!task.mandatory && html` <small>${say("verify.if_asked")}</small>`}${task.may_not_apply && html` <small>${say("paper.not_because")}</small>`}</p>
  ${task.detail && html`<p class="soft">${task.detail}</p>`}${task.caution && html`<p><b>${say("caution")}</b> ${task.caution}</p>`}
  ${task.fields.length > 0 && html`<ul class="sheet-fields">${task.fields.map(fieldOf)}</ul>`}</div>`;

function fieldOf({ label, optional, shape }) {
  const name = optional ? say("field.optional", { label }) : label;
  if (shape.kind === "choice") return html`<li class="sheet-choice">${name}: ${shape.options.map(([, words]) => html`<span class="box">${words}</span> `)}</li>`;
  return blank(name, { number: shownAs(shape.unit)?.unit ?? shape.unit, date: say("paper.date"), time: say("paper.clock") }[shape.kind] ?? "");
}

const blank = (label, unit) => html`<li><span>${label}</span><i></i><small>${unit}</small></li>`;

const UNIT_OF = { bar: "bar", pipe: "celsius", water: "celsius", upstream: "m" };
const COLUMNS = ["clock", "bar", "pipe", "water", "upstream", "who"];

const readings = () => html`<table class="sheet-table"><thead><tr>${COLUMNS.map((key) => html`<th scope="col">${say(`paper.read_${key}`, { unit: UNIT_OF[key] && unitOf(UNIT_OF[key]) })}</th>`)}</tr></thead>
  <tbody>${Array.from({ length: ROWS }, () => html`<tr>${COLUMNS.map(() => html`<td></td>`)}</tr>`)}</tbody></table>`;

const signing = () => html`<section class="section"><h2>${say("signs.title")}</h2><ul class="sheet-fields">${["technician", "foreman"].flatMap((role) => [blank(say(`role.${role}`), say("paper.date"))])}</ul></section>`;
