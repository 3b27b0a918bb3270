// A screen that could not be drawn, by a fault of the program, or that did not come (`away`). What is recorded is safe, and the
// other screens are there.

import { html } from "../html.js";
import { act, deck } from "../parts/deck.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { say } from "../text/say.js";

export const title = () => say("broken.title");

export const render = ({ away = false } = {}) => page({
  mast: mast({ title: title(), where: say("app.name") }),
  main: html`<main class="stack"><p>${say(away ? "broken.away" : "broken.text")}</p><p><a href="#/">${say("lost.back")}</a></p></main>`,
  deck: away && deck({ act: act({ label: say("broken.again"), more: html`data-again="yes"` }) }),
});
