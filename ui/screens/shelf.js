// The shelf: contract, data sheets, method statements. Every value with its unit and the note where it was read.

import { html } from "../html.js";
import { act, deck } from "../parts/deck.js";
import { form } from "../parts/action.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { way } from "../parts/way.js";
import { say } from "../text/say.js";
import { sheetFields } from "./shelf/fields.js";

/** By kind of document: the list of the shelf that holds it. */
const LISTS = { contract: "contracts", resin: "resins", patch: "patches", packer: "packers", instrument: "instruments", method: "methods", person: "people" };

export const title = (view) => (view.params.id ? nameOf(found(view)) : say(view.params.kind ? `shelf.${view.params.kind}` : "shelf.title"));

const nameOf = (sheet) => sheet?.name ?? sheet?.title ?? "";
const found = (view) => view[LISTS[view.params.kind]]?.find(({ id }) => id === decodeURIComponent(view.params.id));

export function render(view) {
  const { kind, id } = view.params;
  const frame = (main, foot) => page({ mast: mast({ title: title(view), where: say("shelf.title") }), main: html`<main class="stack">${main}</main>`, deck: foot });
  if (id && found(view)) return sheet(view, frame, kind, found(view));
  if (kind) return frame(html`${view[LISTS[kind]].map((one) => way({ label: nameOf(one), note: one.id, href: `#/shelf/${kind}/${encodeURIComponent(one.id)}` }))}`, deck({ act: act({ label: say("shelf.back"), href: "#/shelf" }) }));
  return frame(html`${note({ lead: say("shelf.sources"), text: say("shelf.sources_text") })}
    ${Object.entries(LISTS).map(([one, list]) => way({ label: say(`shelf.${one}`), note: say("shelf.count", { n: view[list].length }), href: one === "person" ? "#/people" : `#/shelf/${one}` }))}
    ${way({ label: say("first.examples"), note: say("first.examples_note"), does: { do: "take_examples" } })}`, deck({ act: act({ label: say("done.today"), href: "#/" }) }));
}

const sheet = (view, frame, kind, one) => {
  const formId = `sheet-${kind}-${one.id}`;
  return frame(html`${form({ id: formId, then: `#/shelf/${kind}`, does: { do: "keep", document: { kind, sheet: one } }, inside: sheetFields(one, view.drafts?.[formId] ?? {}) })}
    ${section({ id: "off", title: say("shelf.off"), inside: way({ label: say("shelf.take_off"), note: say("shelf.take_off_note"), mark: "cross", does: { do: "take_off", kind, id: one.id }, then: `#/shelf/${kind}` }) })}`,
  deck({ act: act({ label: say("shelf.keep"), note: say("shelf.keep_note"), mark: "tick", form: formId }) }));
};
