// Who taps: picked once, shown in the mast, changed there. A tap is not authenticated; a key is asked for where a name is put to something.

import { html } from "../../html.js";
import { dialog } from "../../parts/dialog.js";
import { icon } from "../../parts/icon.js";
import { say } from "../../text/say.js";

/** Returns who taps, for the mast: a short name, or the question. Nothing where there is nobody to pick. */
export const whoTaps = ({ people, person }) => {
  if (people.length === 0) return undefined;
  const picked = people.find(({ id }) => id === person);
  return picked ? { name: short(picked.name), spoken: say("who.spoken") } : { name: say("who.ask"), spoken: say("who.nobody") };
};

/** Returns a name as it is written on a sheet: the first letter and the last name. */
export const short = (name) => name.replace(/^(\p{L})[^\s.]*\s+(?=\S)/u, "$1. ");

/** Returns the dialog in which somebody says who they are. */
export const whoDialog = ({ people, person }) => people.length > 0 && dialog({
  id: "who", title: say("who.title"),
  inside: html`<form method="dialog">${people.map(({ id, name, role, organisation }) => html`<button class="way" value="${id}"><b>${name}</b><small>${[say(`role.${role}`), organisation].filter(Boolean).join(", ")}</small>${id === person && icon("tick")}</button>`)}</form>
    <p class="soft">${say("who.not_checked")}</p>`,
});
