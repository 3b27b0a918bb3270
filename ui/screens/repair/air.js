// The air below: what was read last, by when it is read again, and the limits that the contract names.

import { html } from "../../html.js";
import { number } from "../../format.js";
import { readings } from "../../parts/readings.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { at, attempt, to, where } from "./about.js";

/** Returns the air as it was read last; nothing before the first reading. */
export function air(view) {
  const task = view.tasks.find(({ kind, answer }) => kind === "air" && answer?.kind === "done");
  if (!task) return "";
  const answered = attempt(view).answers[task.key];
  const { contract } = view.repair.plan;
  const read = at(view, task.answered_ms);
  const below = attempt(view).answers.permit?.answer.values?.entry === "entry";
  return section({
    id: "air", title: say("air.title", { node: where(view).strong }),
    aside: below ? say("air.next", { read, next: at(view, task.answered_ms + contract.air_interval_ms.value) }) : say("air.last", { read }),
    inside: html`${readings(task.fields.filter(({ shape }) => shape.kind === "number").map(({ key, label, shape }) => ({ label, value: number(task.answer.values[key] / shape.per, shape.decimals), unit: shape.unit })), "air")}
      <p class="soft">${answered.before.length > 0 && say("air.before", { times: answered.before.map(([stamp]) => at(view, stamp.moment.at_ms)).join(", ") })} ${say("air.limits", { source: contract.air_limits.source })}</p>
      ${way({ label: say("air.again"), note: say("air.again_note"), href: to(view, `tasks/${task.key}`) })}`,
  });
}
