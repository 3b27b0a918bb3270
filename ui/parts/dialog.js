// Dialog: one question that must be answered before anything else, such as a foreman's waiver.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { icon } from "./icon.js";

/** Returns the dialog. A control with `data-opens` and its id opens it; it closes by its own button, or by Escape. */
export const dialog = ({ id, title, inside }) => html`<dialog id="${id}" aria-labelledby="${id}-title"><div class="dialog-head"><h2 id="${id}-title" tabindex="-1" autofocus>${title}</h2>
  <form method="dialog"><button class="dialog-close" value="close">${icon("cross")}${say("dialog.close")}</button></form></div>${inside}</dialog>`;
