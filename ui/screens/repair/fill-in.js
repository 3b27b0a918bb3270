// What was left while the resin ran, on one screen and recorded by one act. Each answer is marked late.

import { html } from "../../html.js";
import { action, form } from "../../parts/action.js";
import { act, deck, small } from "../../parts/deck.js";
import { field } from "../../parts/field.js";
import { icon } from "../../parts/icon.js";
import { note } from "../../parts/note.js";
import { pair } from "../../parts/pair.js";
import { problemOf } from "../../parts/problem-list.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";
import { at, attempt, frame, tell, to } from "./frame.js";
import { fieldsOf } from "./fields.js";
import { begun, formOf } from "./task.js";

const KIND = "command.answer.kind";
const RUNNING = ["wet_out", "placement", "inflation"];

export const title = () => say("fill.title");

export function render(view) {
  const open = view.tasks.filter((task) => !task.answer && task.mandatory && (task.overdue || RUNNING.includes(task.stage)));
  const photos = view.photos.filter((photo) => !photo.taken && (RUNNING.includes(photo.stage) || open.length === 0));
  const ready = open.filter((task) => begun(view, task));
  return frame(view, {
    title: title(), mainKind: "stage fill",
    main: html`<p class="lead-in">${lead(view, open)}</p>${open.map((task) => asked(view, task))}${photos.map((photo) => missing(view, photo))}`,
    foot: deck({ more: [small({ mark: "cross", label: say("fill.back"), href: to(view) }), small({ mark: "photo", label: say("deck.photo"), href: to(view, "photo") })], act: record(view, open, ready) }),
  });
}

function lead(view, open) {
  const target = attempt(view).target?.at.moment.at_ms;
  return say(target ? "fill.after_target" : "fill.before_target", { at: target && at(view, target), n: open.length });
}

/** One task with all that it asks; what is empty is left open. */
function asked(view, task) {
  const id = formOf(task);
  const drafts = view.drafts?.[id] ?? {};
  const picked = drafts[KIND] ?? (begun(view, task) ? "done" : undefined);
  const apart = picked !== undefined && picked !== "done";
  return section({ id: `h-${task.key}`, title: task.label, kind: "section-gap stack", inside: form({
    id, does: tell(view, { command: "answer", task: task.key, answer: { kind: "done" } }), kind: "stack",
    inside: html`${task.detail && html`<p class="soft">${task.detail}</p>`}${!apart && fieldsOf({ view, task, prefix: "command.answer.values", drafts })}
      ${pair({ legend: task.label, name: KIND, picked, quiet: true, options: answers(task) })}
      ${apart && field({ id: `${id}-because`, name: "command.answer.because", label: say("task.because"), value: drafts["command.answer.because"] ?? "", kind: "why", needed: true, problem: problemOf(view.problems, `${id}-because`) })}`,
  }) });
}

const answers = ({ may_not_apply: may }) => [{ value: "done", label: say("task.done") }, { value: "not_right", label: say("task.not_right") }, ...(may ? [{ value: "does_not_apply", label: say("task.not_applicable") }] : [])];

const missing = (view, { key, label }) => section({ id: `h-photo-${key}`, title: say("fill.photo", { label }), aside: say("fill.by_contract"),
  inside: html`${note({ text: say("fill.no_photo") })}<a class="way" href="${to(view, `photo/${key}`)}"><b>${say("photos.take")}</b></a>` });

function record(view, open, ready) {
  if (open.length === 0) return act({ label: say("fill.done"), note: say("fill.done_note"), href: to(view) });
  const forms = (ready.length > 0 ? ready : open.slice(0, 1)).map(formOf).join(" ");
  return action({ kind: "act", more: html`data-sends="${forms}"`, inside: html`<b>${say("fill.act")}</b><small>${say("fill.count", { n: ready.length, of: open.length })}</small>${icon("tick")}` });
}
