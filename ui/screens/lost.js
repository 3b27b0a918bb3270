// An address that no screen stands behind.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { way } from "../parts/way.js";

export const title = () => say("lost.title");

export const render = (view) => page({
  mast: mast({ title: title(view), where: say("app.name") }),
  main: html`<main class="stack"><p>${say("lost.text", view.params)}</p>${way({ label: say("lost.back"), mark: "back", href: "#/" })}</main>`,
});
