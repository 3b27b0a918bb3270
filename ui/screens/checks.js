// The calculations: the list, or one with its fields, its result and its source. For a repair it can be kept.

import { html } from "../html.js";
import { form } from "../parts/action.js";
import { act, deck, gate } from "../parts/deck.js";
import { facts } from "../parts/facts.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { way } from "../parts/way.js";
import { known, say } from "../text/say.js";
import { formOf } from "./worked/asks.js";
import { fields } from "./worked/fields.js";

export const title = (view) => (view.params.name ? say(`worked.name.${view.params.name}`) : say("worked.title"));

export function render(view) {
  const one = view.checks.find(({ name }) => name === view.params.name);
  return page({
    rehearsal: view.rehearsal,
    mast: mast({ title: title(view), rehearsal: view.rehearsal, where: view.repair ? say("worked.of", { number: view.number }) : say("worked.alone"), side: back(view) }),
    main: html`<main class="stack worked">${one ? single(view, one) : list(view)}</main>`,
    deck: one && foot(view, one),
  });
}

// Beside the way to the first screen: from one check to all of them, from those of a repair to the repair.
function back({ repair, params }) {
  const href = repair ? `#/repair/${repair}` : params.name && "#/checks";
  return href ? [html`<a href="${href}">${say("worked.back")}</a>`] : [];
}

/** Returns the address of a check. */
export const at = (repair, name) => `${repair ? `#/repair/${repair}` : "#"}/checks${name ? `/${name}` : ""}`;

const list = (view) => html`<p class="lead">${say("worked.list")}</p>${view.checks.map(({ name }) => way({
  label: say(`worked.name.${name}`), note: view.worked[name] ?? say(`worked.what.${name}`), href: at(view.repair, name),
}))}`;

function single(view, one) {
  const { tried } = view;
  const caution = `worked.caution.${one.name}`;
  return html`<p class="lead">${say(`worked.what.${one.name}`)}</p>${known(caution) && note({ lead: say("caution"), text: say(caution) })}
    ${section({ id: "worked-result", title: say("worked.result"), kind: "", inside: html`<div aria-live="polite">${outcome(one, tried)}</div>` })}
    ${form({ id: formOf(view.repair, one.name), live: true, does: { do: "checks" }, inside: section({ id: "worked-enter", title: say("worked.enter"), inside: html`${fields(view, one)}<p class="soft">${say("worked.units")}</p>` }) })}
    ${facts([{ label: say("worked.formula"), value: one.formula }, { label: say("worked.source"), value: tried?.output?.source ?? one.source }])}
    ${way({ label: say("worked.all"), href: at(view.repair) })}`;
}

function outcome(one, tried) {
  if (tried?.output) return facts(tried.said.map(({ name, value }) => ({ label: name, value })));
  const problem = tried?.problem;
  if (problem?.rule === "missing") return html`<p>${say("worked.waits", { what: label(problem.field) })}</p>`;
  return problem ? note({ lead: label(problem.field), text: `${problem.message}.` }) : "";
}

const label = (field) => (field ? say(`worked.field.${field}`) : "");

function foot(view, one) {
  if (!view.repair) return deck({ act: act({ label: say("worked.all"), href: at() }) });
  if (!view.tried?.output || view.problems?.length > 0) return deck({ gate: gate({ reason: say("worked.closed") }), act: act({ label: say("worked.back"), mark: "back", href: `#/repair/${view.repair}` }) });
  return deck({ act: act({
    label: say("worked.keep"), note: say("worked.keep_note"), mark: "tick", then: at(view.repair),
    does: { do: "work_out", repair: view.repair, name: one.name, input: view.tried.given },
  }) });
}
