// The shelf: contract, data sheets, method statements. Every value with its unit and the note where it was read.

import { html } from "../html.js";
import { form } from "../parts/action.js";
import { act, deck } from "../parts/deck.js";
import { field } from "../parts/field.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { keyOf, pin } from "../parts/pin.js";
import { section } from "../parts/section.js";
import { way } from "../parts/way.js";
import { say } from "../text/say.js";
import { KINDS, invented, nameOf } from "./shelf/kinds.js";
import { sheetsForm } from "./setup.js";
import { sheetForm } from "./shelf/form.js";
import { task, tasks } from "./shelf/tasks.js";

/** The last part of the address of a document that is not there yet. */
const NEW = "new";

const found = ({ params: { kind, id }, ...view }) => view[KINDS[kind]?.list]?.find((one) => one.id === id);

export function title(view) {
  const { kind, id, task: key } = view.params;
  if (!KINDS[kind]) return say("shelf.title");
  const one = found(view);
  if (key) return one?.tasks?.find((each) => each.key === key)?.label ?? say(`shelf.${kind}`);
  return one ? nameOf(one) : id === NEW ? say(`shelf.new_${kind}`) : say(`shelf.${kind}`);
}

export function render(view) {
  const { kind, id, task: key } = view.params;
  const one = found(view);
  if (!KINDS[kind]) return home(view);
  if (key && one?.tasks) return task(view, one, frame);
  if (one || id === NEW) return sheet(view, kind, one);
  return list(view, kind);
}

const frame = (view, main, foot) => page({ mast: mast({ title: title(view), where: say("shelf.title") }), main: html`<main class="stack wide">${main}</main>`, deck: foot });

const home = (view) => frame(view, html`${note({ lead: say("shelf.sources"), text: say("shelf.sources_text") })}
  <div class="ways">${Object.entries(KINDS).map(([kind, { list: name }]) => way({ label: say(`shelf.${kind}`), note: say("shelf.count", { n: view[name].length }), href: `#/shelf/${kind}` }))}</div>
  ${way({ label: say("sheets.hand_out"), note: say("sheets.hand_out_note"), does: { do: "hand_out_sheets" } })}
  ${section({ id: "h-office", title: say("setup.office"), inside: sheetsForm("#/shelf") })}
  ${way({ label: say("first.examples"), note: say("first.examples_note"), does: { do: "take_examples" } })}`, deck({ act: act({ label: say("done.today"), mark: "back", href: "#/" }) }));

/** From how many on a list is searched. */
const LONG = 8;

function list(view, kind) {
  const all = view[KINDS[kind].list];
  const text = view.drafts?.["shelf-search"]?.text ?? "";
  const shown = all.filter((one) => `${nameOf(one)} ${one.id}`.toLowerCase().includes(text.trim().toLowerCase()));
  return frame(view, html`${all.length > LONG && form({ id: "shelf-search", does: { do: "shelf" }, live: true, inside: field({ id: "shelf-text", name: "text", label: say("shelf.search"), value: text }) })}
    ${shown.length > 0 ? html`<div class="ways">${shown.map((one) => way({ label: nameOf(one), note: about(kind, one), href: `#/shelf/${kind}/${encodeURIComponent(one.id)}` }))}</div>` : html`<p>${say("shelf.none")}</p>`}
    ${way({ label: say("shelf.back"), mark: "back", note: say("shelf.title"), href: "#/shelf" })}`, deck({ act: act({ label: say(`shelf.new_${kind}`), note: say("shelf.new_note"), mark: "plus", href: `#/shelf/${kind}/${NEW}` }) }));
}

const about = (kind, one) => [one.id, kind === "person" && say(`role.${one.role}`), kind === "instrument" && one.calibrated_to && say("shelf.calibrated", { to: one.calibrated_to }), invented(one) && say("shelf.invented")].filter(Boolean).join(" · ");

function sheet(view, kind, one) {
  const id = `sheet-${kind}-${one?.id ?? NEW}`;
  const typed = view.drafts?.[id] ?? {};
  // A method statement keeps its tasks beside what is typed here; every other document is what its fields say.
  const rest = kind === "method" ? { tasks: one?.tasks ?? view.methods[0]?.tasks ?? [] } : KINDS[kind].base ?? {};
  return frame(view, html`${one && invented(one) && note({ lead: say("shelf.invented_lead"), text: say("shelf.invented_text") })}
    ${form({ id, kind: "sheet", then: `#/shelf/${kind}`, tidy: true, does: { do: "keep", document: { kind, sheet: rest } }, inside: html`${sheetForm(KINDS[kind].table, "document.sheet", one, typed)}${asksPin(view, kind, [one?.role, typed["document.sheet.role"]]) && pin("sheet-pin", say("key.pin_foreman"))}` })}
    ${kind === "method" && (one ? tasks(one) : note({ text: say("shelf.method_copies") }))}
    ${one && section({ id: "off", title: say("shelf.off"), inside: takeOff(view, kind, one) })}
    ${way({ label: say("shelf.back"), mark: "back", note: say(`shelf.${kind}`), href: `#/shelf/${kind}` })}`,
  deck({ act: act({ label: say("shelf.keep"), note: say("shelf.keep_note"), mark: "tick", form: id }) }));
}

// Who is a foreman is changed with the PIN of one.
const asksPin = (view, kind, roles) => kind === "person" && roles.includes("foreman") && view.people.some((one) => one.role === "foreman" && keyOf(one));

function takeOff(view, kind, one) {
  const goes = { does: { do: "take_off", kind, id: one.id }, then: `#/shelf/${kind}` };
  if (!asksPin(view, kind, [one.role])) return way({ label: say("shelf.take_off"), note: say("shelf.take_off_note"), mark: "cross", ...goes });
  return form({ id: "take-off", kind: "stack", ...goes, inside: html`${pin("off-pin", say("key.pin_foreman"))}<button type="submit" class="way"><b>${say("shelf.take_off")}</b><small>${say("shelf.take_off_note")}</small></button>` });
}
