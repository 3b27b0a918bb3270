// The first start: something that every job needs is not there yet.

import { html } from "../../html.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";

/** Returns where to begin, or to go on: five questions, or the invented examples to look round. */
export const first = (view) => {
  const begun = Boolean(view.set_up);
  return html`${section({ id: "h-first", title: say("first.title"), kind: "", inside: html`<p class="lead">${say("first.text")}</p>
  ${way({ label: say(begun ? "setup.again" : "setup.title"), note: begun ? say("setup.again_note", { what: view.lacks.map((kind) => say(`shelf.${kind}`)).join(", ") }) : say("setup.note"), href: "#/setup" })}
  ${way({ label: say("first.examples"), note: say("first.examples_note"), does: { do: "take_examples" }, then: "#/people" })}` })}
  ${section({ id: "h-then", title: say("first.then"), kind: "", inside: way({ label: say("first.inspection"), note: say("first.inspection_note"), href: "#/intake" }) })}`;
};
