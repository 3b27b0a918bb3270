// A closed gate: every rule that stands in the way, its way out, and the foreman where he may waive it.

import { html } from "../../html.js";
import { conditions } from "../../parts/conditions.js";
import { gate } from "../../parts/deck.js";
import { dialog } from "../../parts/dialog.js";
import { lines, picks } from "../../parts/field.js";
import { form } from "../../parts/action.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { keyOf, pin } from "../../parts/pin.js";
import { say } from "../../text/say.js";
import { tell } from "./about.js";

/** Returns the strip of the foot: what is closed, and how much stands in the way. Nothing when it is open. `beside` as for a gate. */
export const strip = (view, name, beside) => {
  const shut = view.next.gate;
  if (!shut || shut.open) return "";
  const open = openIn(view, shut.broken);
  if (open === 0) return gate({ reason: say("gate.shut", { name }), note: shut.broken[0]?.says, beside });
  return beside ? gate({ reason: say("gate.shut", { name }), note: say("gate.open", { n: open }), beside }) : gate({ reason: say("gate.closed", { name, n: open }) });
};

// Tasks and photos are counted one by one: each has its place on the screen. What else is in the way is said in words.
const openIn = (view, broken) => broken.reduce((sum, { rule, values, waived }) => sum + (rule === "task_open" ? values.count : rule === "photo_missing" && !waived ? 1 : 0), 0);

/** Returns the rules in the way that no open task and no missing photo stands for. */
export const withoutTasks = (broken) => broken.filter(({ rule }) => rule !== "task_open" && rule !== "photo_missing");

/** Returns the list of what stands in the way, with a button for the foreman at each that he may waive. `id` keeps two lists apart. */
export const inTheWay = (view, broken = view.next.gate?.broken ?? [], id = "in-the-way") => broken.length > 0 && section({
  id, title: say("gate.title"), aside: say("gate.count", { n: broken.length }), inside: breaks(view, broken, id),
});

const breaks = (view, broken, id) => html`${conditions(broken.map((one) => ({
  state: one.waived ? "waived" : "open", text: one.says,
  note: one.waived ? say("gate.waived", { by: name(view, one.waived.foreman), why: one.waived.reason }) : one.way_out,
  inside: one.waivable && !one.waived && html`<button type="button" class="way" data-opens="waive-${key(one, id)}"><b>${say("gate.ask_foreman")}</b><small>${say("gate.ask_note")}</small></button>`,
})))}${broken.map((one) => one.waivable && !one.waived && waiver(view, one, key(one, id)))}`;

// By what it is about, so that a dialog never stays open on the next rule of the list.
const key = ({ rule, subject }, id) => `${id}-${rule}-${subject.replace(/[^\w]+/g, "-")}`;

/** Returns what was just refused: the rule, the way out, and the foreman where he may waive it. Nothing when nothing was. */
export const refused = (view) => view.refusal?.broken.length > 0 && html`<section class="note problems" aria-labelledby="refused" tabindex="-1" data-focus><h2 id="refused">${say("refusal.title")}</h2>${breaks(view, view.refusal.broken, "refused")}</section>`;

/** Returns somebody's name by the id. */
export const name = (view, id) => view.people.find((person) => person.id === id)?.name ?? id;

const nobody = () => html`${note({ text: say("waive.nobody"), accent: true })}${way({ label: say("people.title"), note: say("people.note"), href: "#/people" })}`;

/** Returns the dialog in which the foreman waives one rule; a control with `data-opens="waive-I"` opens it. */
export const waiver = (view, one, i) => {
  const typed = view.drafts?.[`waive-form-${i}`] ?? {};
  const foremen = view.people.filter(({ role }) => role === "foreman");
  return dialog({
    id: `waive-${i}`, title: say("waive.title"),
    inside: foremen.length === 0 ? html`<p class="lead">${one.says}</p>${nobody()}` : html`<p class="lead">${one.says}</p>${form({
      id: `waive-form-${i}`, kind: "stack",
      does: tell(view, { command: "waive", rule: one.rule, subject: one.subject }),
      inside: html`${picks({
        id: `waive-foreman-${i}`, name: "command.foreman", label: say("waive.foreman"), value: typed["command.foreman"],
        options: foremen.map(({ id, name: label }) => ({ value: id, label })),
      })}${lines({ id: `waive-reason-${i}`, name: "command.reason", label: say("waive.reason"), value: typed["command.reason"] ?? "", rows: 2, needed: true })}
      ${!view.repair.rehearsal && foremen.some(keyOf) && pin(`waive-pin-${i}`, say("key.pin_foreman"))}<p class="soft">${say("waive.printed")}</p><button type="submit" class="act"><b>${say("waive.act")}</b><small>${say("waive.note")}</small></button>`,
    })}`,
  });
};
