// The cover as a sum: what the patch gives on paper, less each error with its source, against what the contract asks.

import { html } from "../../html.js";
import { down, figure as figureOf, quantity, unitOf } from "../../format.js";
import { sumRule } from "../../drawings/sum-rule.js";
import { figure } from "../../drawings/svg.js";
import { sum } from "../../parts/budget.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";

const mm = (um) => Math.floor(um / 1000);
const downed = (um) => `${down("mm", um)}\u00a0${unitOf("mm")}`;
const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** Returns the section. In a series all patches together cover the defect. */
export function cover({ repair: { repair: { defect } } }, { patches, cover: shown, offset_um: offset, in_series: series }) {
  const whole = patches.at(-1).to_um - patches[0].from_um;
  const long = defect.to_um - defect.from_um;
  const nominal = (whole - long) / 2 - Math.abs(offset);
  const left = Math.min(shown.upstream_um, shown.downstream_um);
  const even = down("mm", shown.upstream_um) === down("mm", shown.downstream_um);
  return section({ id: "plan-cover", title: say("plan.cover"), aside: say("plan.asked", { n: quantity("mm", shown.required_um) }), inside: html`
    ${figure({ flush: true, inside: sumRule({ id: "cover", nominal: mm(nominal), left: mm(left), errors: shown.errors.map(({ um }) => um / 1000), asked: mm(shown.required_um), label: say("plan.cover_rule", { nominal: quantity("mm", nominal), left: downed(left), asked: quantity("mm", shown.required_um) }) }) })}
    ${sum([
      ...(series > 1 ? [] : [{ mark: "b0", label: say("plan.nominal", { patch: figureOf("mm", whole), defect: figureOf("mm", long), offset: figureOf("mm", Math.abs(offset)) }), value: quantity("mm", nominal) }]),
      ...shown.errors.map(({ what, um, source }, i) => ({ mark: ["b2", "b3", "b6"][i % 3], label: html`${capital(what)}<br><small class="soft">${source}</small>`, value: `\u2212\u00a0${quantity("mm", um)}` })),
      { mark: left < shown.required_um ? "over" : "b5", label: say(even ? "plan.left" : "plan.left_both"), value: even ? downed(left) : `${down("mm", shown.upstream_um)} / ${downed(shown.downstream_um)}` },
    ])}` });
}
