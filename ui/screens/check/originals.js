// The original photos beside the record: which are there byte for byte, changed or missing, and what they say of themselves.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { conditions } from "../../parts/conditions.js";
import { file } from "../../parts/field.js";
import { moved } from "../../parts/moved.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";

/** Returns the section, or nothing for a record that names no photo. */
export function originals(view) {
  const { told, originals: found, head } = view;
  if (!told || told.originals === 0) return "";
  return section({ id: "originals", title: say("check.originals"), kind: "", inside: html`${found ? result(found) : html`<p>${say("check.originals_what", { n: told.originals })}</p>`}${moved(view, "take.bringing")}
    ${form({ id: "originals-form", kind: "stack", does: { do: "check_original", head }, inside: html`${file({ id: "original-files", name: "originals", label: say(found ? "check.originals_more" : "check.originals_files"), accept: "image/*", several: true })}<button type="submit" class="way"><b>${say("check.originals_act")}</b><small>${say("check.act_note")}</small></button>` })}` });
}

const STATES = { found: "met", missing: "open", changed: "failed" };

function result({ photos, others, unreadable }) {
  const count = (state) => photos.filter((photo) => photo.state === state).length;
  const rows = photos.map((photo) => ({ state: STATES[photo.state], text: photo.title, note: noted(photo) }));
  const strangers = others.map((name) => ({ state: "open", text: name, note: say("check.original_other") }));
  const unread = unreadable.map((text) => ({ state: "open", text, note: say("check.original_unread") }));
  return html`<p>${say("check.originals_sum", { of: photos.length, found: count("found"), changed: count("changed"), missing: count("missing") })}</p>${conditions([...rows, ...strangers, ...unread], "checks")}`;
}

// What a photo says of itself and does not fit is no proof: it is asked about.
function noted({ state, files, taken, place }) {
  const own = [taken, place].filter(Boolean).map(({ says, agrees }) => `${says}${agrees ? "" : ` (${say("check.original_ask")})`}`);
  return html`${say(`check.original_${state}`)}${files.length > 0 && html` <span class="hash">${files.join(", ")}</span>`}${own.length > 0 && html`. ${own.join("; ")}`}`;
}
