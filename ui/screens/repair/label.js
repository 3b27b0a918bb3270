// Lots without typing: each container's label is photographed, and its code fills the fields of the task.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { conditions } from "../../parts/conditions.js";
import { act, deck } from "../../parts/deck.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { shots } from "../../parts/shots.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { frame, to } from "./frame.js";

/** What a lot's field is called, and the field of its last good day. */
const PARTS = [{ lot: "lot_a", expires: "expires_a" }, { lot: "lot_b", expires: "expires_b" }, { lot: "lot_patch" }, { lot: "lot_sleeve" }];

const VALUES = "command.answer.values";

const lotsOf = (view) => view.tasks.find(({ kind }) => kind === "lots");
const readOf = (view, task, lot) => view.drafts?.[`task-${task.key}`]?.[`read.${lot}`];

export const title = () => say("label.title");

export function render(view) {
  const task = lotsOf(view);
  if (!task) return frame(view, { title: title(), main: html`<p>${say("label.none")}</p>`, foot: deck({ act: act({ label: say("photo.back"), mark: "back", href: to(view) }) }) });
  const parts = PARTS.filter(({ lot }) => task.fields.some(({ key }) => key === lot));
  const one = parts.find(({ lot }) => lot === view.params.key) ?? parts.find(({ lot }) => !readOf(view, task, lot)) ?? parts[0];
  const id = `label-${one.lot}`;
  return frame(view, {
    title: title(), mainKind: "stage two-cols",
    main: html`<div>${form({ id, does: { do: "read_label", fills: fills(view, task, one) }, then: to(view, "label"), inside: html`<p class="lead">${say(`label.${one.lot}`)}</p>${shots({ id })}` })}
      ${note({ lead: say("label.how"), text: say("label.how_text") })}</div>
      ${section({ id: "labels", title: say("label.all"), kind: "", inside: conditions(parts.map(({ lot }) => ({
        state: readOf(view, task, lot) ? "met" : "open", text: say(`label.${lot}`), note: readOf(view, task, lot),
        inside: lot !== one.lot && !readOf(view, task, lot) && way({ label: say("label.this"), mark: "photo", href: to(view, `label/${lot}`) }),
      }))) })}`,
    foot: deck({ act: act({ label: say("label.back"), mark: "back", note: say("label.back_note"), href: to(view, `${view.stage === task.stage ? "tasks" : "fill"}/${task.key}`) }) }),
  });
}

// Where the words of a label go, and what its photo is called.
const fills = (view, task, { lot, expires }) => ({
  form: `task-${task.key}`, repair: view.repair.id, called: say(`label.${lot}`),
  names: { lot: `${VALUES}.${lot}`, ...(expires && { expires: `${VALUES}.${expires}` }), read: `read.${lot}` },
});

/** Returns the way to the labels, where lots are asked for. */
export const labelWay = (view, task) => task.kind === "lots" && way({
  label: say("label.title"), mark: "photo", href: to(view, "label"),
  note: PARTS.filter(({ lot }) => readOf(view, task, lot)).map(({ lot }) => say(`label.${lot}`)).join(", ") || say("label.note"),
});
