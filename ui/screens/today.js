// The first screen: what holds, what cures, what comes next, what waits for a signature.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";

export const title = () => say("today.title");

export const render = (view) => page({
  mast: mast({ title: title(view), where: say("app.name") }),
  main: html`<main class="today"><p>${say("today.none")}</p></main>`,
});
