// One task of the method statement: done with its values, not right, or does not apply, because.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { field } from "../../parts/field.js";
import { note } from "../../parts/note.js";
import { pair } from "../../parts/pair.js";
import { problemOf } from "../../parts/problem-list.js";
import { say } from "../../text/say.js";
import { tell, to } from "./about.js";
import { answered, fieldsOf } from "./fields.js";
import { labelWay } from "./label.js";

const KIND = "command.answer.kind";
const STATES = { done: "met", does_not_apply: "waived", not_right: "failed" };

/** Returns the id of a task's form. */
export const formOf = (task) => `task-${task.key}`;

/** Returns whether somebody has begun to answer the task. */
export const begun = (view, task) => Object.values(view.drafts?.[formOf(task)] ?? {}).some((value) => value !== "");

/** Returns the task as an open condition, `wide` with its caution and its fields. */
export const openTask = (view, task, wide, then) => ({ state: "open", text: task.label, note: task.detail, inside: asked(view, task, wide, then) });

/** Returns the form of one task. `then` is where the screen goes when it was recorded. */
export function asked(view, task, wide = true, then = to(view)) {
  const id = formOf(task);
  const drafts = view.drafts?.[id] ?? {};
  const picked = drafts[KIND] ?? (wide || begun(view, task) ? "done" : undefined);
  return form({
    id, does: tell(view, { command: "answer", task: task.key }), then, kind: "task-form",
    inside: html`${wide && task.caution && note({ lead: say("caution"), text: task.caution })}
      ${picked === "done" && labelWay(view, task)}${picked === "done" && fieldsOf({ view, task, prefix: "command.answer.values", drafts, values: task.answer?.values })}
      ${pair({ legend: task.label, name: KIND, picked, quiet: true, options: answersTo(task) })}
      ${picked !== undefined && picked !== "done" && field({ id: `${id}-because`, name: "command.answer.because", label: say("task.because"), value: drafts["command.answer.because"] ?? "", kind: "why", needed: true, problem: problemOf(view.problems, `${id}-because`) })}`,
  });
}

const answersTo = ({ may_not_apply: may }) => [
  { value: "done", label: say("task.done") }, { value: "not_right", label: say("task.not_right") },
  ...(may ? [{ value: "does_not_apply", label: say("task.not_applicable") }] : []),
];

/** Returns an answered task as a condition, with what was answered. */
export const answeredTask = (view, task) => ({
  state: STATES[task.answer.kind], text: task.label,
  note: [answered(view, task), task.late && say("task.late"), task.paper && say("keyed.mark"), task.carried_from && say("task.carried", { n: task.carried_from })].filter(Boolean).join("; "),
  inside: task.answer.kind === "not_right" && html`<a class="way" href="${to(view, `tasks/${task.key}`)}"><b>${say("tasks.again")}</b></a>`,
});
