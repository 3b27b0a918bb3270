// The tasks of a method statement: wording, order, and whether they must be answered.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { act, deck } from "../../parts/deck.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { STAGES } from "./fields/shared.js";
import { TASK } from "./fields/method.js";
import { sheetForm } from "./form.js";

const path = (method, key) => `#/shelf/method/${encodeURIComponent(method.id)}${key === undefined ? "" : `/${encodeURIComponent(key)}`}`;
const keep = (sheet) => ({ do: "keep", document: { kind: "method", sheet } });

/** Returns the tasks stage by stage, in the order of the work. */
export const tasks = (method) => STAGES.map((stage) => {
  const own = method.tasks.filter((one) => one.stage === stage);
  return own.length > 0 && section({ id: `tasks-${stage}`, title: say(`stage.${stage}`), aside: String(own.length), inside: own.map((one) =>
    way({ label: one.label, note: [say(one.mandatory ? "shelf.must" : "shelf.may"), one.may_not_apply && say("shelf.may_not_apply"), one.detail].filter(Boolean).join(" · "), href: path(method, one.key) })) });
});

/** Returns the screen of one task. Its place among the tasks of its stage is changed at once. */
export function task(view, method, frame) {
  const at = method.tasks.findIndex(({ key }) => key === view.params.task);
  const one = method.tasks[at];
  const id = `task-of-${method.id}-${one?.key}`;
  if (!one) return frame(view, html`<p>${say("shelf.none")}</p>`, deck({ act: act({ label: say("shelf.back"), mark: "back", href: path(method) }) }));
  return frame(view, html`${form({ id, kind: "sheet", then: path(method), tidy: true, does: keep(method), inside: sheetForm(TASK, `document.sheet.tasks.#${at}`, one, view.drafts?.[id] ?? {}) })}
    ${section({ id: "order", title: say("shelf.order"), inside: html`${move(method, at, -1, "shelf.earlier")}${move(method, at, 1, "shelf.later")}
      ${way({ label: say("shelf.remove"), note: say("shelf.remove_note"), mark: "cross", does: keep({ ...method, tasks: method.tasks.filter((other) => other !== one) }), then: path(method) })}` })}
    ${way({ label: say("shelf.back"), mark: "back", note: method.title, href: path(method) })}`,
  deck({ act: act({ label: say("shelf.keep"), note: method.title, mark: "tick", form: id }) }));
}

// It changes places with its neighbour of the same stage.
function move(method, at, by, label) {
  const { stage } = method.tasks[at];
  const own = method.tasks.map((one, i) => ({ one, i })).filter(({ one }) => one.stage === stage).map(({ i }) => i);
  const other = own[own.indexOf(at) + by];
  if (other === undefined) return "";
  const moved = [...method.tasks];
  [moved[at], moved[other]] = [moved[other], moved[at]];
  return way({ label: say(label), note: method.tasks[other].label, does: keep({ ...method, tasks: moved }), then: path(method, method.tasks[at].key) });
}
