// What the plan says: drawings, time, place, hold, pressure, cover, binding.

import { html } from "../../html.js";
import { minSec, number, quantity, range, trim } from "../../format.js";
import { detail } from "../../drawings/detail.js";
import { sumRule } from "../../drawings/sum-rule.js";
import { figure } from "../../drawings/svg.js";
import { sum } from "../../parts/budget.js";
import { facts } from "../../parts/facts.js";
import { note } from "../../parts/note.js";
import { readings } from "../../parts/readings.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";
import { budgetOf } from "../repair/budget.js";
import { lineOf } from "../repair/drawn.js";

const mm = (um) => Math.floor(um / 1000);

/** Returns what can be drawn of a choice that makes no plan yet: where patch and packer go. Nothing where that is open too. */
export function sketch({ proposal: { parts, choice }, shelf }) {
  const [patch, packer] = [shelf.patches.find(({ id }) => id === choice.patch), shelf.packers.find(({ id }) => id === choice.packer)];
  return parts.place && patch && packer && { choice, patch, packer, computed: parts.place };
}

/** Returns the line and the detail at the defect. */
export function pictures(view, plan) {
  const { defect } = view.repair.repair;
  const { computed, choice } = plan;
  const [patch] = computed.patches;
  const offset = (patch.from_um + patch.to_um - defect.from_um - defect.to_um) / 2;
  return html`<div class="plan-draw">${lineOf({ repair: { ...view.repair.repair, plan } })}
    ${figure({ inside: detail({
      packer_mm: mm(plan.packer.body_um), patch_mm: mm(patch.to_um - patch.from_um), defect_mm: mm(defect.to_um - defect.from_um), offset_mm: offset / 1000,
      cover_mm: [mm(computed.cover.upstream_um), mm(computed.cover.downstream_um)], hose_left: choice.from_node === "upstream",
      label: say("plan.detail", { patch: mm(patch.to_um - patch.from_um), up: mm(computed.cover.upstream_um), down: mm(computed.cover.downstream_um) }),
    }), caption: say("plan.detail_caption") })}</div>`;
}

/** Returns every figure of the plan, in the order of the work. */
export function figures(view, plan) {
  const { line } = view.repair.repair;
  const { computed, choice } = plan;
  const [patch] = computed.patches;
  const middle = (patch.from_um + patch.to_um) / 2;
  const [here, there] = choice.from_node === "upstream" ? [line.upstream.name, line.downstream.name] : [line.downstream.name, line.upstream.name];
  return html`<div class="plan-time">${section({ id: "plan-time", title: say("planned.estimate"), aside: say("go.warmest", { what: say(`temperature.${computed.budget.warmest}`), n: trim("celsius", computed.budget.warmest_mc) }), kind: "", inside: html`${budgetOf(computed.budget)}<p class="soft">${say("plan.until")}</p>` })}
    ${view.proposal.notes.map((text) => note({ text: typeof text === "string" ? text : text.says }))}</div>
    <div class="plan-where">${section({ id: "plan-where", title: say("plan.where"), inside: html`${readings([
      { label: say("plan.from", { node: line.upstream.name }), value: number(middle / 1e6, 2), unit: "m" },
      { label: say("plan.from", { node: line.downstream.name }), value: number((line.length_um - middle) / 1e6, 2), unit: "m" },
    ], "two")}${facts([
      { label: say("plan.brought"), value: say(`way_in.${choice.way_in}`, { node: there }) }, { label: say("plan.hose"), value: here },
      { label: say("plan.mark"), value: computed.mark.whole_rods > 0 ? say("plan.rods", { n: computed.mark.whole_rods, rest: quantity("mm", computed.mark.remainder_um) }) : quantity("m", computed.mark.path_um) },
      { label: say("push.read_at"), value: say(`reading_point.${choice.reading_point.kind}`), note: say("plan.offset", { m: quantity("m", choice.reading_point.offset_um), node: here }) },
      { label: say("plan.below"), value: choice.below || say("plan.nobody") },
      { label: say("plan.wrap"), value: quantity("mm", computed.wrap_um) }, { label: say("plan.batch"), value: quantity("g", computed.batch_mg) },
      { label: say("plan.sleeve"), value: quantity("mm", computed.sleeve_um), note: say("plan.bands", { n: computed.sleeve_bands_um.length }) },
      { label: say("plan.binding"), value: computed.patch_bands_um.map((um) => number(um / 1000)).join(", "), note: say("plan.binding_note") },
    ])}` })}
    ${section({ id: "plan-hold", title: say("stage.hold"), aside: say("plan.coldest", { n: trim("celsius", computed.hold_at_mc) }), inside: html`${readings([{ label: say("plan.hold"), value: String(Math.ceil(computed.hold_ms / 60e3)), unit: "min", quiet: true }])}<p class="soft">${say("plan.sheet", { name: plan.resin.name })}</p>` })}
    ${section({ id: "plan-window", title: say("plan.window"), inside: html`${facts([
      { label: say("plan.between"), value: range("bar", computed.window.lower_pa, computed.window.upper_pa), note: `${computed.window.lower_governs}; ${computed.window.upper_governs}` },
      { label: say("plan.target"), value: quantity("bar", computed.window.target_pa) }, { label: say("plan.cure"), value: minSec(computed.full_cure_ms) },
    ])}${note({ lead: say("plan.danger"), text: say("plan.thrust", { n: number(computed.thrust_n / 1000, 1) }) })}` })}</div>
    <div class="plan-pick">${cover(view, plan)}</div>`;
}

/** Returns how much the patch covers on each side, and what was taken off. */
export function cover(view, { computed, patch }) {
  const { defect } = view.repair.repair;
  const { cover: shown } = computed;
  const nominal = (computed.patches.at(-1).to_um - computed.patches[0].from_um - (defect.to_um - defect.from_um)) / 2;
  const left = Math.min(shown.upstream_um, shown.downstream_um);
  return section({ id: "plan-cover", title: say("plan.cover"), aside: say("plan.asked", { n: quantity("mm", shown.required_um) }), inside: html`
    ${figure({ inside: sumRule({ id: "cover", nominal: mm(nominal), left: mm(left), errors: shown.errors.map(({ um }) => um / 1000), asked: mm(shown.required_um), label: say("plan.cover_rule", { left: mm(left), asked: mm(shown.required_um) }) }) })}
    ${sum([
      { mark: "b0", label: say("plan.nominal", { patch: number(patch.length_um / 1000), defect: number((defect.to_um - defect.from_um) / 1000) }), value: quantity("mm", nominal) },
      ...shown.errors.map(({ what, um, source }, i) => ({ mark: ["b2", "b3", "b6"][i % 3], label: `${what}, ${source}`, value: `− ${quantity("mm", um)}` })),
      { mark: left < shown.required_um ? "over" : "b5", label: say("plan.left"), value: `${quantity("mm", shown.upstream_um)} / ${quantity("mm", shown.downstream_um)}` },
    ])}` });
}
