// Shown until the core has answered for the first time.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";

export const title = () => say("app.loading");

export const render = (view) => page({ mast: mast({ title: title(view), home: false, where: say("app.name") }), main: html`<main></main>` });
