// What a record says of its repair, to be compared with the certificate.

import { html } from "../../html.js";
import { date, inMinutes, quantity, range, time } from "../../format.js";
import { facts } from "../../parts/facts.js";
import { section } from "../../parts/section.js";
import { say, within } from "../../text/say.js";
import { told as seen } from "../repair/signed.js";

const metres = (from, to) => (from === to ? quantity("m", from) : range("m", from, to));

/** Returns the section, or nothing where the record can't be followed. */
export function told({ told: says, number: no, head, certificate }) {
  if (!says) return "";
  const { defect, hold } = says;
  return section({ id: "told", title: say("check.says"), kind: "", inside: html`${facts([
    { label: say("check.repair"), value: no },
    { label: say("planned.line"), value: [say("today.line", { from: says.upstream, to: says.downstream }), says.street].filter(Boolean).join(", "), note: says.asset },
    { label: say("planned.defect"), value: metres(defect.from_um, defect.to_um), note: defect.observations.map((one) => [one.code, seen(one)].filter(Boolean).join(" ")).join("; ") },
    ...(says.patch ? [{ label: say("planned.patch"), value: metres(says.patch.from_um, says.patch.to_um), note: say("plan.from", { node: says.upstream }) }] : []),
    { label: say("check.attempt"), value: says.outcome ? say("check.attempt_of", { n: says.attempt, how: within(say(`off.${says.outcome}`)) }) : String(says.attempt || say("check.none")) },
    { label: say("signed.departures"), value: says.departures.length > 0 ? `${says.departures.length}: ${says.departures.map((rule) => within(say(`rule.name.${rule}`))).join(", ")}` : say("check.none") },
    ...(hold ? [{ label: say("stage.hold"), value: say("signs.hold", { counted: inMinutes(hold.counted_ms), of: Math.ceil(hold.required_ms / 60e3) }), note: range("bar", hold.window.lower_pa, hold.window.upper_pa) }] : []),
    { label: say("signs.photos"), value: String(says.photos) },
    ...says.signed.map(({ role, name, at_ms: ms, offset_min: offset }) => ({ label: say(`role.${role}`), value: `${name}, ${date(ms, offset)}, ${time(ms, offset, true)}` })),
    ...(certificate ? [{ label: say("check.certificate"), value: certificate }] : []),
    { label: say("check.head"), value: html`<span class="hash">${head}</span>` },
  ])}<p class="soft small">${say("check.proves")}</p>` });
}
