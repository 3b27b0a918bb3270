// A screen that could not be drawn: a fault of the program. What is recorded is safe, and the other screens are there.

import { html } from "../html.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { say } from "../text/say.js";

export const title = () => say("broken.title");

export const render = () => page({
  mast: mast({ title: title(), where: say("app.name") }),
  main: html`<main class="stack"><p>${say("broken.text")}</p><p><a href="#/">${say("lost.back")}</a></p></main>`,
});
