// The set-up of a new device: one question a screen, back from each, left and taken up where it was.

import { html } from "../html.js";
import { form } from "../parts/action.js";
import { choice } from "../parts/choice.js";
import { act, deck, small } from "../parts/deck.js";
import { field, file } from "../parts/field.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { pair } from "../parts/pair.js";
import { section } from "../parts/section.js";
import { way } from "../parts/way.js";
import { language, LANGUAGES, say } from "../text/say.js";
import { KINDS, nameOf } from "./shelf/kinds.js";

/** The questions in their order. */
export const STEPS = ["language", "units", "crew", "contract", "sheets"];

/** What a crew needs beside the contract. Instruments can be named when they are used. */
const SHEETS = ["resin", "patch", "packer", "method"];

/** What no repair can be planned without and is not there. */
const missing = (view) => ["contract", ...SHEETS].filter((kind) => view[KINDS[kind].list].length === 0);

const stepOf = (view) => (STEPS.includes(view.params.step) ? view.params.step : STEPS.includes(view.set_up) ? view.set_up : STEPS[0]);
const to = (i) => (i < 0 || i >= STEPS.length ? "#/" : `#/setup/${STEPS[i]}`);

export const title = (view) => say(`setup.${stepOf(view)}`);

export function render(view) {
  const step = stepOf(view);
  const i = STEPS.indexOf(step);
  const last = i === STEPS.length - 1;
  const { inside, foot } = QUESTIONS[step](view);
  const open = last && missing(view).length > 0;
  return page({
    mast: mast({ title: title(view), home: false, where: say("setup.step", { n: i + 1, of: STEPS.length }), side: [html`<a href="#/">${say("setup.leave")}</a>`] }),
    main: html`<main class="stack">${open && note({ lead: say("setup.missing", { what: missing(view).map((kind) => say(`shelf.${kind}`)).join(", ") }), text: say("setup.missing_text"), accent: true })}${inside}</main>`,
    deck: deck({
      more: i > 0 ? [small({ mark: "back", label: say("setup.back"), href: to(i - 1) })] : [],
      act: foot ?? act({ label: say(open ? "setup.without" : last ? "done.today" : "setup.on"), note: say(open ? "setup.without_note" : last ? "setup.end_note" : "setup.on_note"), href: to(i + 1) }),
    }),
  });
}

const QUESTIONS = {
  language: () => ({ inside: choice({ legend: say("language.label"), name: "language", picked: language(), options: Object.entries(LANGUAGES).map(([value, strong]) => ({ value, strong })) }) }),
  units: (view) => ({ inside: choice({ legend: say("units.label"), name: "units", picked: view.units, options: ["si", "us"].map((one) => ({ value: one, strong: say(`units.${one}`), note: say(`units.${one}_note`) })) }) }),
  crew,
  contract: (view) => ({ inside: html`${here("contract", view)}${bring(view)}` }),
  sheets: (view) => ({ inside: html`${section({ id: "h-sheets", title: say("setup.needed"), kind: "", inside: SHEETS.map((kind) => sheet(kind, view)) })}${bring(view)}` }),
};

// The first person is typed; where there are people already, one is picked, and somebody new is one tap more.
function crew(view) {
  const typed = view.drafts?.["setup-person"] ?? {};
  const fresh = form({ id: "setup-person", kind: "stack", then: "#/setup/contract", does: { do: "keep", document: { kind: "person", sheet: { id: idOf(typed["document.sheet.name"] ?? "", view.people) } } }, inside: html`
    ${field({ id: "setup-name", name: "document.sheet.name", label: say("setup.name"), value: typed["document.sheet.name"] ?? "", needed: true })}
    ${pair({ legend: say("setup.role"), name: "document.sheet.role", picked: typed["document.sheet.role"] ?? "technician", options: ["technician", "foreman"].map((value) => ({ value, label: say(`role.${value}`) })) })}` });
  const nobody = view.people.length === 0;
  return {
    inside: nobody ? html`${fresh}${note({ lead: say("people.not_checked"), text: say("people.not_checked_text") })}` : html`${choice({
      legend: say("people.pick"), name: "person", picked: view.person, options: view.people.map(({ id, name, role }) => ({ value: id, strong: name, note: say(`role.${role}`) })),
    })}${way({ label: say("people.new"), note: say("people.new_note"), href: "#/shelf/person/new" })}`,
    foot: nobody && act({ label: say("setup.keep"), note: say("setup.on_note"), form: "setup-person" }),
  };
}

/** Returns an id for a name: its letters, and a number where another has it. */
export function idOf(name, people) {
  const plain = name.normalize("NFKD").replace(/[\u0300-\u036f]/g, "").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "") || "person";
  let id = plain;
  for (let n = 2; people.some((one) => one.id === id); n += 1) id = `${plain}-${n}`;
  return id;
}

const here = (kind, view) => {
  const all = view[KINDS[kind].list];
  return all.length > 0 && section({ id: `h-${kind}`, title: say("setup.here"), kind: "", inside: all.map((one) => way({ label: nameOf(one), note: one.id, mark: "tick", href: `#/shelf/${kind}/${encodeURIComponent(one.id)}` })) });
};

const sheet = (kind, view) => {
  const n = view[KINDS[kind].list].length;
  return way({ label: say(`shelf.${kind}`), note: n > 0 ? say("shelf.count", { n }) : say("setup.lacks"), mark: n > 0 ? "tick" : "plus", href: n > 0 ? `#/shelf/${kind}` : `#/shelf/${kind}/new` });
};

// Three ways to the same papers, the shortest first.
const bring = (view) => html`${section({ id: "h-office", title: say("setup.office"), kind: "section-gap", inside: html`<p class="soft">${say("setup.office_text")}</p>${sheetsForm(`#/setup/${stepOf(view)}`)}` })}
  ${way({ label: say("first.own"), note: say("setup.own_note"), href: view.params.step === "contract" ? "#/shelf/contract/new" : "#/shelf" })}
  ${way({ label: say("first.examples"), note: say("first.examples_note"), does: { do: "take_examples" }, then: "#/setup/sheets" })}`;

/** Returns the form that takes a file of sheets in, and then goes on. */
export const sheetsForm = (then) => form({ id: "take-sheets", then, does: { do: "take_sheets" }, inside: html`
  ${file({ id: "sheets-file", name: "bytes", label: say("setup.file"), accept: ".json,application/json", named: true })}<button type="submit" class="way"><b>${say("setup.take")}</b><small>${say("setup.take_note")}</small></button>` });
