// What is picked: on the clock face, in words, and from both nodes.

import { html } from "../../html.js";
import { faces } from "../../parts/faces.js";
import { facts } from "../../parts/facts.js";
import { say } from "../../text/say.js";
import { clock, placed, stations } from "./seen.js";

/** Returns the face with what is picked and the laterals of the line, and both stations of the whole. */
export function pickedSide({ listed }, shown, picked) {
  const chosen = shown.filter((one) => picked.includes(one.index));
  const laterals = shown.filter((one) => one.lateral && one.clock_from && !chosen.includes(one));
  return html`${faces({ marks: [...chosen.filter((one) => one.clock_from).map(mark), ...laterals.map(mark)] })}
    <p class="face-say">${chosen.length > 0 ? chosen.map((one) => html`${[one.words, clock(one)].filter(Boolean).join(", ")}.<br>`) : say("line.none_picked")}
    ${laterals.length > 0 && html`<span class="soft">${say("line.elsewhere", { hours: [...new Set(laterals.map((one) => one.clock_from))].join(", ") })}</span>`}</p>
    ${chosen.length > 0 && facts(["upstream", "downstream"].map((end) => ({ label: say("plan.from", { node: listed[end] }), value: extent(chosen, `${end}_um`) })))}`;
}

const mark = (one) => ({ from: one.clock_from, to: one.clock_to ?? undefined, kind: one.lateral ? "lateral" : one.clock_to && one.clock_to !== one.clock_from ? "defect" : "dot" });

/** Returns `18.46 – 18.68 m` over everything chosen, or that the file does not say it. */
export function extent(chosen, key) {
  const all = chosen.map((one) => stations(one, key));
  if (all.includes(undefined)) return say("line.not_said");
  return placed([Math.min(...all.flat()), Math.max(...all.flat())]);
}
