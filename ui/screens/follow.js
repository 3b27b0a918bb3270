// A hold on another phone, followed by its code alone: the picture of the code.

import { html } from "../html.js";
import { form } from "../parts/action.js";
import { act, deck } from "../parts/deck.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { shots } from "../parts/shots.js";
import { say } from "../text/say.js";

const FORM = "follow";

export const title = () => say("follow.title");

export function render(view) {
  const chosen = view.chosen?.form === FORM ? view.chosen : undefined;
  return page({
    mast: mast({ title: title(), where: say("app.name") }),
    main: html`<main class="stack"><p class="lead">${say("follow.text")}</p>${form({ id: FORM, does: { do: "follow" }, then: "#/follow/{repair}", inside: shots({ id: FORM, name: "photo", chosen }) })}
      ${note({ lead: say("follow.clock"), text: say("follow.clock_text") })}<p class="soft">${say("follow.before")}</p></main>`,
    deck: deck({ act: act({ label: say("follow.act"), note: say(chosen ? "follow.act_note" : "photo.act_first"), mark: "tick", form: FORM }) }),
  });
}
