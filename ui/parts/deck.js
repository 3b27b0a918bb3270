// Deck: the foot of the screen. The reason why a step is closed, the small actions, and the one act.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { action } from "./action.js";
import { icon } from "./icon.js";

/**
 * Returns the foot. `gate` why the next step is closed, `more` a row of small actions, `act` the one action. `spare` leaves the
 * row out where the screen is low.
 */
export const deck = ({ gate: closed, more = [], act: one, spare = false }) => html`<footer class="deck">${closed}
  ${more.length > 0 && html`<div class="deck-more ${rowKind(more.length)} ${spare && "only-tall-grid"}">${more}</div>`}${one}</footer>`;

const rowKind = (n) => ({ 1: "one", 2: "two", 3: "" })[n] ?? "four";

/** Returns the one act: what it does, what that brings, and where to. */
export const act = ({ label, note, mark = "go", ...rest }) =>
  action({ ...rest, kind: "act", inside: html`<b>${label}</b>${note && html`<small>${note}</small>`}${icon(mark)}` });

/** Returns the closed gate: the reason, and when or how it opens. `beside` is one small action at its end, where the screen is low. */
export const gate = ({ reason, note, beside }) => html`<div class="gate">${icon("lock")}<p><b>${reason}</b>${note && html`<small>${note}</small>`}</p>${beside && html`<div class="gate-beside only-low">${beside}</div>`}</div>`;

/** Returns one small action of the row. */
export const small = ({ mark, label, ...rest }) => action({ ...rest, inside: html`${icon(mark)}${label}` });

/** Returns Stop, Photo and Note, which stand in every stage, and with `ago` the minutes since a report happened. */
export const usual = ({ repair, ago }) => [
  small({ mark: "stop", label: say("deck.stop"), href: `#/repair/${repair}/stop` }),
  small({ mark: "photo", label: say("deck.photo"), href: `#/repair/${repair}/photo` }),
  small({ mark: "note", label: say("deck.note"), href: `#/repair/${repair}/note` }),
  ...(ago ? [small({ mark: "ago", label: say("deck.ago", { n: ago.min }), href: ago.href })] : []),
];
