// Beside what asks for a distance or a clock position: the line to scale, and the clock from both sides, as it is being typed.

import { html } from "../../html.js";
import { typed as read } from "../../format.js";
import { faces } from "../../parts/faces.js";
import { say } from "../../text/say.js";
import { lineOf } from "./drawn.js";

const METRES = ["counter_um", "beyond_um", "from_um", "to_um"];
const HOURS = ["hour", "hour_to"];

/**
 * Returns the drawings that the fields of a task call for; `values` and `typed` are what was recorded and what is being typed,
 * both by the field's key.
 */
export function placesOf(view, { fields, kind }, { values = {}, typed = {} }) {
  const valueOf = (key) => {
    const { shape } = fields.find((one) => one.key === key) ?? {};
    if (!shape) return undefined;
    return typed[key] === undefined ? values[key] && values[key] / shape.per : read(typed[key]) ?? undefined;
  };
  const asks = (keys) => fields.some(({ key }) => keys.includes(key));
  const at_m = valueOf("counter_um") ?? middle(valueOf("from_um"), valueOf("to_um"));
  const beyond = valueOf("beyond_um");
  return html`${asks(METRES) && lineOf(view, { at_m, ...(beyond !== undefined && at_m === undefined && { beyond_m: beyond / 1000 }) })}
    ${asks(HOURS) && clocks(view, { kind, from: valueOf("hour"), to: valueOf("hour_to") })}`;
}

const middle = (from, to) => (from === undefined ? to : to === undefined ? from : (from + to) / 2);

const onClock = (hour) => Number.isInteger(hour) && hour >= 1 && hour <= 12;

/** Returns the clock with an hour or a range as it is typed, beside the defect and the laterals under the patch. */
export function clocks(view, { kind, from, to }) {
  const { line, plan } = view.repair;
  const covered = plan?.computed.covered ?? [];
  const laterals = line.laterals.filter((one, i) => covered.includes(i) && onClock(one.clock)).map(({ clock }) => ({ from: clock, kind: "lateral" }));
  if (kind === "seam") return faces({ marks: laterals, seam: onClock(from) ? from : undefined });
  const seen = onClock(from) ? [{ from, to: onClock(to) ? to : undefined, kind: onClock(to) && to !== from ? "defect" : "dot" }] : [];
  return faces({ marks: [...laterals, ...seen] });
}

/** Returns where on the circumference the defect and the laterals under the patch lie, and where the seam is planned. */
export function defectClock({ line, defect }, { seam, covered = [] } = {}) {
  const marks = defect.observations.map(({ around }) => AROUND[around?.kind]?.(around)).filter(Boolean);
  const laterals = covered.map((i) => line.laterals[i]).filter((one) => one && onClock(one.clock)).map(({ clock }) => ({ from: clock, kind: "lateral" }));
  if (marks.length + laterals.length === 0 && !onClock(seam)) return "";
  return html`${faces({ marks: [...laterals, ...marks], seam: onClock(seam) ? seam : undefined })}<p class="soft">${say("places.clock")}</p>`;
}

const AROUND = {
  all_round: () => ({ kind: "round" }),
  at: ({ hour }) => ({ from: hour, kind: "dot" }),
  between: ({ from, to }) => ({ from, to, kind: "defect" }),
};
