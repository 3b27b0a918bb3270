// A closed gate: every rule that stands in the way, its way out, and the foreman where he may waive it.

import { html } from "../../html.js";
import { conditions } from "../../parts/conditions.js";
import { gate } from "../../parts/deck.js";
import { dialog } from "../../parts/dialog.js";
import { lines, picks } from "../../parts/field.js";
import { form } from "../../parts/action.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";
import { tell } from "./frame.js";

/** Returns the strip of the foot: what is closed, and how much stands in the way. Nothing when it is open. */
export const strip = (view, name) => {
  const shut = view.next.gate;
  if (!shut || shut.open) return "";
  return gate({ reason: say("gate.closed", { name, n: weight(shut.broken) }), note: shut.broken[0]?.says });
};

// Open tasks stand in one rule with their number; every other rule is one thing.
const weight = (broken) => broken.reduce((sum, { rule, values }) => sum + (rule === "task_open" ? values.count : 1), 0);

/** Returns the list of what stands in the way, with a button for the foreman at each that he may waive. */
export const inTheWay = (view, broken = view.next.gate?.broken ?? []) => broken.length > 0 && section({
  id: "in-the-way", title: say("gate.title"), aside: say("gate.count", { n: broken.length }),
  inside: html`${conditions(broken.map((one, i) => ({
    state: one.waived ? "waived" : "open", text: one.says,
    note: one.waived ? say("gate.waived", { by: name(view, one.waived.foreman), why: one.waived.reason }) : one.way_out,
    inside: one.waivable && !one.waived && html`<button type="button" class="way" data-opens="waive-${i}"><b>${say("gate.ask_foreman")}</b></button>`,
  })))}${broken.map((one, i) => one.waivable && !one.waived && waiver(view, one, i))}`,
});

/** Returns somebody's name by the id. */
export const name = (view, id) => view.people.find((person) => person.id === id)?.name ?? id;

/** Returns the dialog in which the foreman waives one rule; a control with `data-opens="waive-I"` opens it. */
export const waiver = (view, one, i) => dialog({
  id: `waive-${i}`, title: say("waive.title"),
  inside: html`<p>${one.says}</p>${form({
    id: `waive-form-${i}`,
    does: tell(view, { command: "waive", rule: one.rule, subject: one.subject }),
    inside: html`${picks({
      id: `waive-foreman-${i}`, name: "command.foreman", label: say("waive.foreman"), value: view.drafts?.[`waive-form-${i}`]?.["command.foreman"],
      options: view.people.filter(({ role }) => role === "foreman").map(({ id, name: label }) => ({ value: id, label })),
    })}${lines({ id: `waive-reason-${i}`, name: "command.reason", label: say("waive.reason"), value: view.drafts?.[`waive-form-${i}`]?.["command.reason"] ?? "", rows: 2 })}
    <p class="soft">${say("waive.printed")}</p><button type="submit" class="act"><b>${say("waive.act")}</b><small>${say("waive.note")}</small></button>`,
  })}`,
});
