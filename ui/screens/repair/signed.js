// What is signed: the pipe, the defect, the patch, the hold, every departure with its reason. The certificate says the same.

import { html } from "../../html.js";
import { hours, quantity, range } from "../../format.js";
import { conditions } from "../../parts/conditions.js";
import { facts } from "../../parts/facts.js";
import { section } from "../../parts/section.js";
import { say, within } from "../../text/say.js";
import { computed } from "./frame.js";
import { name } from "./gate.js";
import { behind } from "./review/signs.js";

/** Returns the sections. */
export function signed(view) {
  const { repair } = view;
  if (!repair.plan) return "";
  const { line, defect, plan } = repair;
  const [patch] = computed(view).patches;
  const waived = view.review.broken.filter((one) => one.waived);
  return html`${section({ id: "signed", title: say("signed.title"), kind: "", inside: facts([
    { label: say("check.repair"), value: repair.number, note: say("between.attempt", { n: view.attempt }) },
    { label: say("planned.line"), value: say("today.line", { from: line.upstream.name, to: line.downstream.name }), note: [line.street, line.asset].filter(Boolean).join(", ") },
    { label: say("planned.defect"), value: range("m", defect.from_um, defect.to_um), note: defect.observations.map(told).join("; ") },
    { label: say("planned.patch"), value: range("m", patch.from_um, patch.to_um), note: plan.patch.name },
    { label: say("plan.window"), value: range("bar", computed(view).window.lower_pa, computed(view).window.upper_pa) },
    ...behind(view),
  ]) })}
  ${section({ id: "departures", title: say("signed.departures"), aside: String(waived.length), inside: waived.length > 0
    ? conditions(waived.map((one) => ({ state: "waived", text: say(`rule.name.${one.rule}`), note: `${one.says} ${say("gate.waived", { by: name(view, one.waived.foreman), why: one.waived.reason })}` })))
    : html`<p>${say("signed.no_departure")}</p>` })}
  <p class="soft">${say("signed.all", { n: repair.entries })}</p>`;
}

/** Returns an observation in words with its place on the clock. */
export const told = ({ words, around: seen }) => [words, seen.kind === "all_round" ? within(say("line.all_round")) : seen.kind === "at" ? hours(seen.hour) : seen.kind === "between" ? hours(seen.from, seen.to) : ""].filter(Boolean).join(", ");
