// What the camera shows: edges, folds, water, surface. Each section is a form of its own and shows what was recorded.

import { html } from "../../../html.js";
import { number } from "../../../format.js";
import { scale } from "../../../drawings/scale.js";
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
  return say("verify.edge", { edge: label, at: number((key === "upstream" ? patch.from_um : patch.to_um) / 1e6, 2) });
}

const limit = (view, { key }) => (key === "height_um" ? say("verify.limit", { n: number(view.fold_limit_um / 1000, view.fold_limit_um % 1000 ? 1 : 0) }) : undefined);

function folds(view) {
  const most = view.fold_limit_um / 1000;
  const value = valueOf(view, "folds", "height_um");
  const to_mm = Math.max(10, Math.ceil((most * 1.6) / 5) * 5);
  const says = Number.isFinite(value) ? say(value > most ? "verify.too_high" : "verify.inside") : say("verify.no_value");
  return html`${scale({ from: 0, to: to_mm, every: to_mm > 40 ? 5 : 1, long: to_mm > 40 ? 25 : 5, limit: most, value, label: say("verify.scale", { value: Number.isFinite(value) ? number(value) : "–", most: number(most, 0) }), left: "0", right: say("unit.mm", { n: to_mm }), says })}
    <p class="soft">${say("verify.limit_from", { source: view.repair.contract.fold_limit.source })}</p>`;
}
