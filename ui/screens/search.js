// All repairs, found by number, line, node, street, lot or certificate.

import { html } from "../html.js";
import { act, deck } from "../parts/deck.js";
import { field } from "../parts/field.js";
import { form } from "../parts/action.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { say } from "../text/say.js";
import { row } from "./today/row.js";

export const title = () => say("search.title");

export const render = (view) => page({
  mast: mast({ title: title(), where: say("app.name") }),
  main: html`<main class="stack wide">${form({ id: "search", does: { do: "list" }, live: true, inside: field({ id: "text", label: say("search.words"), value: view.drafts?.search?.text ?? "" }) })}
    ${section({ id: "found", title: say("search.found"), aside: String(view.repairs.length), inside: view.repairs.length > 0 ? html`<div class="ways">${view.repairs.map(row)}</div>` : html`<p>${say("search.none")}</p>` })}</main>`,
  deck: deck({ act: act({ label: say("search.act"), form: "search" }) }),
});
