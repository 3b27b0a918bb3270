// The full-cure clock, and the patch as it was found.

import { html } from "../../../html.js";
import { inRecorded, quantity, short, span } from "../../../format.js";
import { edges } from "../../../drawings/edges.js";
import { figure } from "../../../drawings/svg.js";
import { ends, tape } from "../../../parts/tape.js";
import { say } from "../../../text/say.js";
import { at, attempt, computed, upTo } from "../frame.js";

/** Returns how much of the full cure is over, and that nothing is cut or tested before. */
export function cureCard(view) {
  if (!view.cure) return "";
  const { from_ms: from, until_ms: until, reached } = view.cure;
  const now = view.now?.at_ms ?? from;
  const hours = (until - from) / 3600e3;
  return html`<section class="cure-card"><p class="clock-what">${say(reached ? "verified.cured" : "verified.cure_from", { at: upTo(view, until) })}</p>
    ${tape({ n: hours, label: say("verified.cure_tape", { gone: span(Math.max(0, Math.min(until, now) - from)), all: span(until - from) }), parts: [{ kind: "done", m: Math.max(0, Math.min(hours, (now - from) / 3600e3)) }] })}
    ${ends([say(`verified.${view.repair.plan.resin.cure_counts_from?.value ?? view.repair.plan.resin.counts_from.value}`, { at: at(view, from) }), reached ? say("verified.reached") : say("verified.to_go", { span: span(until - now) })])}
    ${!reached && html`<p><b>${say("cure.caution")}</b></p>`}</section>`;
}

/** Returns the patch between its edges with what was found, as recorded or as it is being typed. */
export function found(view) {
  const [patch] = computed(view).patches;
  const [from, to] = [patch.from_um / 1e6, patch.to_um / 1e6];
  return figure({ flush: true, caption: say("verified.caption"), inside: edges({
    from_m: from, to_m: to, label: say("verified.drawing", { from: quantity("m", patch.from_um), to: quantity("m", patch.to_um) }),
    found: [...lifts(view, from, to), ...folds(view, (from + to) / 2), ...laterals(view)],
  }) });
}

/** Returns a value of the first task of a kind, as it is recorded: what is typed wins over what was recorded. */
export function valueOf(view, kind, field) {
  const task = view.tasks.find((one) => one.kind === kind);
  const typed = view.drafts?.[`task-${task?.key}`]?.[`command.answer.values.${field}`];
  const recorded = task?.answer?.values?.[field];
  const { shape } = task?.fields.find(({ key }) => key === field) ?? {};
  if (typed === undefined || shape?.kind !== "number") return typed ?? recorded;
  const read = inRecorded({ unit: shape.unit, steps: shape.per }, typed);
  return read === null ? undefined : read * shape.per;
}

const lifts = (view, from, to) => [["upstream", from], ["downstream", to]].filter(([edge]) => valueOf(view, "edges", edge) === "lifted")
  .map(([, at_m]) => ({ kind: "lift", at_m, hour: 12, says: say("verified.lift") }));

function folds(view, middle) {
  const height = valueOf(view, "folds", "height_um");
  const hour = valueOf(view, "folds", "hour");
  if (!(height > 0)) return [];
  return [{ kind: "fold", at_m: middle, hour: hour || 6, says: hour ? say("verified.fold_at", { n: short("mm", height), hour }) : say("verified.fold", { n: short("mm", height) }) }];
}

const laterals = (view) => computed(view).covered.map((index) => {
  const lateral = view.repair.line.laterals[index];
  const opened = attempt(view).laterals.some((one) => one.lateral === index);
  return { kind: "lateral", at_m: lateral.station_um / 1e6, hour: lateral.clock, says: say(opened ? "verified.lateral_open" : "verified.lateral", { hour: lateral.clock }) };
});
