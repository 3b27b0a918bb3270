// The tasks of a stage: one open at a time, the others below, and the gate to the next stage.

import { html } from "../../html.js";
import { conditions } from "../../parts/conditions.js";
import { act, deck, usual } from "../../parts/deck.js";
import { form } from "../../parts/action.js";
import { field } from "../../parts/field.js";
import { note } from "../../parts/note.js";
import { pair } from "../../parts/pair.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";
import { answered, fieldsOf } from "./fields.js";
import { frame, tell, to } from "./frame.js";
import { inTheWay, strip } from "./gate.js";

const NEXT = { staging: "test_push", test_push: "sleeve_change", sleeve_change: "wet_out", deflation: "verification" };

export const title = (view) => say(`stage.${view.stage}`);

export function render(view) {
  const shown = view.tasks.filter((task) => task.stage === view.stage || task.overdue);
  const open = shown.filter((task) => !task.answer && task.mandatory);
  const one = shown.find((task) => task.key === view.params.key) ?? open[0];
  const rest = open.filter((task) => task !== one);
  return frame(view, {
    title: title(view),
    main: html`${one && html`<h2 class="head-row">${say("tasks.title")} <small>${say("tasks.open", { n: open.length, of: shown.filter(({ mandatory }) => mandatory).length })}</small></h2>${asked(view, one)}`}
      ${rest.length > 0 && conditions(rest.map((task) => ({ state: "open", text: task.label, inside: html`<a class="way" href="${to(view, `tasks/${task.key}`)}"><b>${say("tasks.answer")}</b></a>` })))}
      ${missing(view)}
      ${!one && inTheWay(view)}
      ${section({ id: "answered", title: say("tasks.answered"), aside: say("tasks.more", { n: shown.filter(({ answer }) => answer).length }),
        inside: conditions(shown.filter((task) => task.answer).map((task) => line(view, task))) })}`,
    foot: foot(view, one, open),
  });
}

const line = (view, task) => ({
  state: { done: "met", does_not_apply: "waived", not_right: "failed" }[task.answer.kind],
  text: task.label,
  note: [answered(task), task.late && say("task.late"), task.carried_from && say("task.carried", { n: task.carried_from })].filter(Boolean).join("; "),
  inside: task.answer.kind === "not_right" && html`<a class="way" href="${to(view, `tasks/${task.key}`)}"><b>${say("tasks.again")}</b></a>`,
});

/** Returns the form of one task, with its caution. */
export function asked(view, task) {
  const id = `task-${task.key}`;
  const drafts = view.drafts?.[id] ?? {};
  const picked = drafts["command.answer.kind"] ?? "done";
  const options = [{ value: "done", label: say("task.done") }, { value: "not_right", label: say("task.not_right") },
    ...(task.may_not_apply ? [{ value: "does_not_apply", label: say("task.not_applicable") }] : [])];
  return form({
    id, does: tell(view, { command: "answer", task: task.key }), then: to(view, view.params.sub === "fill" ? "fill" : ""), kind: "task-form",
    inside: html`${conditions([{ state: "open", text: task.label, note: task.detail }])}
      ${task.caution && note({ lead: say("caution"), text: task.caution })}
      ${picked === "done" && fieldsOf({ view, task, prefix: "command.answer.values", drafts, values: task.answer?.values })}
      ${pair({ legend: task.label, name: "command.answer.kind", picked, quiet: true, options })}
      ${picked !== "done" && field({ id: `${id}-because`, name: "command.answer.because", label: say("task.because"), value: drafts["command.answer.because"] ?? "", kind: "why" })}`,
  });
}

const missing = (view) => {
  const open = view.photos.filter((photo) => !photo.taken && photo.stage === view.stage);
  return open.length > 0 && section({ id: "photos", title: say("photos.title"), aside: say("photos.open", { n: open.length }),
    inside: conditions(open.map((photo) => ({ state: "open", text: photo.label, inside: html`<a class="way" href="${to(view, `photo/${photo.key}`)}"><b>${say("photos.take")}</b></a>` }))) });
};

function foot(view, one, open) {
  const next = say(`next.${NEXT[view.stage]}`);
  const photo = view.photos.find((asks) => !asks.taken && asks.stage === view.stage);
  const closed = strip(view, next);
  if (one) return deck({ gate: open.length > 0 && closed, more: usual({ repair: view.repair.id }), act: act({ label: one.label, note: say("tasks.records"), mark: "tick", form: `task-${one.key}` }) });
  if (photo) return deck({ gate: closed, more: usual({ repair: view.repair.id }), act: act({ label: say("photos.take"), note: photo.label, mark: "photo", href: to(view, `photo/${photo.key}`) }) });
  if (!view.next.gate?.open) return deck({ gate: closed, more: usual({ repair: view.repair.id }), act: act({ label: say("gate.see"), note: say("gate.count", { n: view.next.gate?.broken.length ?? 0 }), mark: "lock", href: to(view, "tasks") }) });
  return deck({ more: usual({ repair: view.repair.id }), act: act({ label: say("tasks.go_on", { next }), note: say("tasks.go_on_note"), does: tell(view, { command: "go_on" }), then: to(view) }) });
}
