// The first start: nothing is on the shelf, and nobody is picked.

import { html } from "../../html.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";

/** Returns where to begin: look round with the invented examples, or put one's own documents on the shelf. */
export const first = () => html`${section({ id: "h-first", title: say("first.title"), kind: "", inside: html`<p class="lead">${say("first.text")}</p>
  ${way({ label: say("first.examples"), note: say("first.examples_note"), does: { do: "take_examples" }, then: "#/people" })}
  ${way({ label: say("first.own"), note: say("first.own_note"), href: "#/shelf" })}` })}
  ${section({ id: "h-then", title: say("first.then"), kind: "", inside: html`${way({ label: say("people.who"), note: say("people.note"), href: "#/people" })}
  ${way({ label: say("first.inspection"), note: say("first.inspection_note"), href: "#/intake" })}` })}`;
