// Who taps, and the key of who signs. A name is picked from the list; a key says by its PIN that it is really them.

import { html } from "../html.js";
import { choice } from "../parts/choice.js";
import { act, deck } from "../parts/deck.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { way } from "../parts/way.js";
import { language, LANGUAGES, say } from "../text/say.js";
import { key } from "./people/key.js";

export const title = () => say("people.who");

export function render(view) {
  const back = view.came ?? "#/";
  return page({
    mast: mast({ title: title(), where: say("people.title") }),
    main: html`<main class="stack two-cols"><div>${view.people.length > 0 && choice({
      legend: say("people.pick"), name: "person", picked: view.person,
      options: view.people.map(({ id, name, role, organisation }) => ({ value: id, strong: name, note: [say(`role.${role}`), organisation].filter(Boolean).join(", ") })),
    })}</div><div>${key(view)}${note({ lead: say("people.not_checked"), text: say("people.not_checked_text") })}
    ${view.person && choice({ legend: say("units.label"), name: "units", picked: view.units, options: ["si", "us"].map((one) => ({ value: one, strong: say(`units.${one}`), note: say(`units.${one}_note`) })) })}
    ${choice({ legend: say("language.label"), name: "language", picked: language(), options: Object.entries(LANGUAGES).map(([value, strong]) => ({ value, strong })) })}
    ${way({ label: say("people.new"), note: say("people.new_note"), href: "#/shelf/person/new" })}${way({ label: say("people.edit"), note: say("shelf.count", { n: view.people.length }), href: "#/shelf/person" })}</div></main>`,
    deck: deck({ act: act({ label: say(back === "#/" ? "done.today" : "people.back"), mark: back === "#/" ? "back" : "go", note: view.people.find(({ id }) => id === view.person)?.name ?? say("people.nobody"), href: back }) }),
  });
}
