// Who taps. People are picked from the list; nobody is authenticated until people have keys.

import { html } from "../html.js";
import { form } from "../parts/action.js";
import { choice } from "../parts/choice.js";
import { act, deck } from "../parts/deck.js";
import { field, picks } from "../parts/field.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { say } from "../text/say.js";

export const title = () => say("people.who");

export function render(view) {
  const typed = view.drafts?.person ?? {};
  const back = view.came ?? "#/";
  return page({
    mast: mast({ title: title(), where: say("people.title") }),
    main: html`<main class="stack">${view.people.length > 0 && choice({
      legend: say("people.pick"), name: "person", picked: view.person,
      options: view.people.map(({ id, name, role, organisation }) => ({ value: id, strong: name, note: [say(`role.${role}`), organisation].filter(Boolean).join(", ") })),
    })}${note({ lead: say("people.not_checked"), text: say("people.not_checked_text") })}
    ${section({ id: "new", title: say("people.new"), inside: form({ id: "person", does: { do: "keep", document: { kind: "person" } }, inside: html`
      ${field({ id: "person-id", name: "document.sheet.id", label: say("people.id"), value: typed["document.sheet.id"] ?? "" })}
      ${field({ id: "person-name", name: "document.sheet.name", label: say("people.name"), value: typed["document.sheet.name"] ?? "" })}
      ${picks({ id: "person-role", name: "document.sheet.role", label: say("people.role"), value: typed["document.sheet.role"] ?? "technician", options: ["technician", "foreman", "reader"].map((value) => ({ value, label: say(`role.${value}`) })) })}
      ${field({ id: "person-org", name: "document.sheet.organisation", label: say("people.organisation"), value: typed["document.sheet.organisation"] ?? "" })}
      <button type="submit" class="way"><b>${say("people.keep")}</b></button>` }) })}</main>`,
    deck: deck({ act: act({ label: say(back === "#/" ? "done.today" : "people.back"), note: view.people.find(({ id }) => id === view.person)?.name ?? say("people.nobody"), href: back }) }),
  });
}
