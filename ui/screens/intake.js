// Inspection files: take one in, and pick a line of it.

import { html } from "../html.js";
import { isoDate, quantity } from "../format.js";
import { form } from "../parts/action.js";
import { act, deck } from "../parts/deck.js";
import { field, file } from "../parts/field.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { way } from "../parts/way.js";
import { say } from "../text/say.js";

export const title = () => say("intake.title");

export function render(view) {
  const typed = view.drafts?.["intake-search"]?.text ?? "";
  return page({
    mast: mast({ title: title(), where: say("app.name") }),
    main: html`<main class="intake"><div class="intake-list">${view.files.length === 0 ? html`<section class="section"><p class="lead">${say("intake.none")}</p></section>` : html`
      ${form({ id: "intake-search", does: { do: "inspections" }, live: true, inside: field({ id: "intake-text", name: "text", label: say("intake.search"), value: typed }) })}${view.files.map((one, i) => listedFile(one, i, typed))}`}</div>
      <div class="intake-side">${section({ id: "take-in", title: say("intake.new"), kind: "", inside: form({ id: "take-in-form", does: { do: "import_inspection" }, then: "#/intake", inside: html`
        ${file({ id: "inspection-file", name: "bytes", label: say("intake.file"), accept: ".txt,.xml,text/plain,text/xml", named: true })}<p class="soft">${say("intake.form")}</p>
        ${view.files.length > 0 && html`<button type="submit" class="way"><b>${say("intake.act")}</b><small>${say("intake.act_note")}</small></button>`}` }) })}
      ${way({ label: say("intake.by_hand"), note: say("intake.by_hand_note"), href: "#/by-hand" })}</div></main>`,
    deck: deck({ act: view.files.length === 0
      ? act({ label: say("intake.act"), note: say("intake.act_note"), form: "take-in-form" })
      : act({ label: say("intake.pick"), note: say("intake.pick_note"), href: "#intake-text", more: html`data-jump="intake-text"` }) }),
  });
}

function listedFile({ file: sha256, name, notices, inspections }, i, typed) {
  const found = inspections.filter((line) => matches(line, typed));
  return section({ id: `file-${i}`, title: name, aside: typed.trim() ? say("intake.found", { n: found.length, of: inspections.length }) : say("intake.lines", { n: inspections.length }), inside: html`
    ${notices.length > 0 && html`<details><summary>${say("intake.notices", { n: notices.length })}</summary>${notices.map(({ line, text }) => note({ lead: say("intake.notice", { line }), text }))}</details>`}
    ${found.map((line) => way({ href: `#/intake/${sha256}/${line.index}`, label: say("today.line", { from: line.upstream || "?", to: line.downstream || "?" }), note: about(line) }))}` });
}

/** Says whether every word stands somewhere in the line's key, street or nodes. */
export function matches({ line, street, upstream, downstream }, typed) {
  const text = [line, street, upstream, downstream].join(" ").toLowerCase();
  return typed.toLowerCase().split(/\s+/).every((word) => text.includes(word));
}

const about = (line) => [line.street, line.line, [line.height_um && `DN ${line.height_um / 1000}`, line.material, line.length_um && quantity("m", line.length_um)].filter(Boolean).join(", "), isoDate(line.date),
  say("intake.patchable", { n: line.patchable, of: line.observations })].filter(Boolean).join(" · ");
