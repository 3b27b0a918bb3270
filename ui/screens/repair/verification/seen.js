// What the camera shows: edges, folds, water, surface. Each section is a form of its own and shows what was recorded.

import { html } from "../../../html.js";
import { amount, number, quantity, short, unitOf } from "../../../format.js";
import { scale } from "../../../drawings/scale.js";
import { roundStep } from "../../../drawings/svg.js";
import { form } from "../../../parts/action.js";
import { pair } from "../../../parts/pair.js";
import { section } from "../../../parts/section.js";
import { say } from "../../../text/say.js";
import { fieldsOf, typedOf } from "../fields.js";
import { computed, tell, to } from "../frame.js";
import { placesOf } from "../places.js";
import { valueOf } from "./found.js";

/** The kinds of task that have a section of their own, in the order of the screen. */
export const SEEN = ["edges", "folds", "infiltration", "surface"];

/** As many answers stand side by side; more of them are a list to pick from. */
const ABREAST = 3;

/** Returns the section of one task. */
export function seen(view, task) {
  const id = `task-${task.key}`;
  const drafts = view.drafts?.[id] ?? {};
  const values = task.answer?.values ?? {};
  const shown = task.fields.filter((one) => !one.optional || wanted(view, task, one));
  return section({ id: `h-${task.key}`, title: task.label, aside: say(task.answer ? "verify.recorded" : "verify.open"), kind: "section-gap stack", inside: form({
    id, does: tell(view, { command: "answer", task: task.key, answer: { kind: "done" } }), then: to(view), kind: "stack",
    inside: html`${shown.map((one) => abreast(one, { task, view, drafts, values }) ?? html`${fieldsOf({ view, task: { ...task, fields: [one] }, prefix: "command.answer.values", drafts, values, aside: limit(view, one), places: false })}${one.key === "height_um" && folds(view)}`)}${placesOf(view, { ...task, fields: shown }, { values, typed: typedOf(task, "command.answer.values", drafts) })}
      ${task.detail && html`<p class="soft">${task.detail}</p>`}`,
  }) });
}

// Where it stands off, and where a fold lies, is asked once there is something.
const wanted = (view, { kind }, { key }) => (kind === "edges" ? ["upstream", "downstream"].some((edge) => valueOf(view, kind, edge) === "lifted") : kind === "folds" ? valueOf(view, kind, "height_um") > 0 : true) && Boolean(key);

function abreast({ key, label, shape }, { task, view, drafts, values }) {
  if (shape.kind !== "choice" || shape.options.length > ABREAST) return undefined;
  const name = `command.answer.values.${key}`;
  return pair({ legend: place(view, task, key, label), name, picked: drafts[name] ?? values[key], options: shape.options.map(([value, words]) => ({ value, label: words })) });
}

// An edge is named with its station.
function place(view, { kind }, key, label) {
  if (kind !== "edges") return label;
  const [patch] = computed(view).patches;
  return say("verify.edge", { edge: label, at: quantity("m", key === "upstream" ? patch.from_um : patch.to_um) });
}

const limit = (view, { key }) => (key === "height_um" ? say("verify.limit", { n: short("mm", view.fold_limit_um) }) : undefined);

function folds(view) {
  const height = valueOf(view, "folds", "height_um");
  const [most, value] = [view.fold_limit_um, height].map((um) => (um === undefined ? NaN : amount("mm", um)));
  const long = roundStep(most * 0.8);
  const to = Math.ceil((most * 1.6) / long) * long;
  const says = Number.isFinite(value) ? say(value > most ? "verify.too_high" : "verify.inside") : say("verify.no_value");
  return html`${scale({ from: 0, to, every: long / 5, long, limit: most, value, label: say("verify.scale", { value: Number.isFinite(value) ? short("mm", height) : "–", most: short("mm", view.fold_limit_um) }), left: "0", right: `${number(to, to < 1 ? 1 : 0)}\u00a0${unitOf("mm")}`, says })}
    <p class="soft">${say("verify.limit_from", { source: view.repair.contract.fold_limit.source })}</p>`;
}
