// Way: a row that leads on.

import { html } from "../html.js";
import { action } from "./action.js";
import { icon } from "./icon.js";

/** Returns the row: what it leads to, and what is to know of it before. */
export const way = ({ label, note, mark = "go", kind = "", ...rest }) =>
  action({ ...rest, kind: `way ${kind}`, inside: html`<b>${label}</b>${note && html`<small>${note}</small>`}${icon(mark)}` });
