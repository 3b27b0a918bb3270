// Inspection files: take one in, and pick a line of it.

import { html } from "../html.js";
import { quantity } from "../format.js";
import { form } from "../parts/action.js";
import { act, deck } from "../parts/deck.js";
import { file } from "../parts/field.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { way } from "../parts/way.js";
import { say } from "../text/say.js";

export const title = () => say("intake.title");

export const render = (view) => page({
  mast: mast({ title: title(), where: say("app.name") }),
  main: html`<main class="stack">${view.files.length === 0 && html`<p class="lead">${say("intake.none")}</p>`}
    ${view.files.map((one, i) => section({ id: `file-${i}`, title: one.name, aside: say("intake.lines", { n: one.inspections.length }), inside: html`
      ${one.notices.map(({ line, text }) => note({ lead: say("intake.notice", { line }), text }))}
      ${one.inspections.map((line) => way({ href: `#/intake/${one.file}/${line.index}`, label: say("today.line", { from: line.upstream || "?", to: line.downstream || "?" }), note: about(line) }))}` }))}
    ${section({ id: "take-in", title: say("intake.new"), inside: form({ id: "take-in-form", does: { do: "import_inspection" }, then: "#/intake", inside: html`
      ${file({ id: "inspection-file", name: "bytes", label: say("intake.file"), accept: ".txt,.xml,text/plain,text/xml", named: true })}<p class="soft">${say("intake.form")}</p>` }) })}
    ${way({ label: say("intake.by_hand"), note: say("intake.by_hand_note"), href: "#/by-hand" })}</main>`,
  deck: deck({ act: act({ label: say("intake.act"), note: say("intake.act_note"), form: "take-in-form" }) }),
});

const about = (line) => [line.line, line.street, line.height_um && `DN ${line.height_um / 1000}`, line.material, line.length_um && quantity("m", line.length_um), line.date,
  say("intake.patchable", { n: line.patchable, of: line.observations })].filter(Boolean).join(" · ");
