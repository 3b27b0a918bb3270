// The keys under the issued certificate: who has signed, and whose turn it is. A rehearsal is signed by keys made on the spot.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { act } from "../../parts/deck.js";
import { conditions } from "../../parts/conditions.js";
import { note } from "../../parts/note.js";
import { keyOf, pin } from "../../parts/pin.js";
import { section } from "../../parts/section.js";
import { say, within } from "../../text/say.js";
import { at } from "./frame.js";
import { ROLES } from "./review/signs.js";

const drawn = ({ repair }, role) => repair.signatures.find((signature) => signature.role === role);

/** Returns who comes next: { role, name, mine, key }, or nothing when both keys have signed. */
export function next(view) {
  const role = ROLES.find((one) => !view.repair.seals.some((seal) => seal.role === one));
  if (!role) return undefined;
  const id = drawn(view, role)?.at.person;
  return { role, name: drawn(view, role)?.name, mine: view.repair.rehearsal || id === view.person, key: keyOf(view.people.find((person) => person.id === id)) };
}

/** Returns the section of an issued certificate. */
export function seal(view) {
  const { repair } = view;
  const turn = next(view);
  return section({ id: "seal", title: say("seal.title"), inside: html`${conditions(ROLES.map((role) => {
    const sealed = repair.seals.find((one) => one.role === role);
    const named = say("signs.who", { name: sealed?.name ?? drawn(view, role)?.name ?? "", role: within(say(`role.${role}`)) });
    return sealed ? { state: "met", text: named, note: say("seal.signed", { at: at(view, sealed.at.moment.at_ms, true) }) } : { state: "open", text: named, note: say("seal.open") };
  }))}${turn ? asked(view, turn) : note({ lead: say("seal.done"), text: say("seal.done_text") })}` });
}

function asked({ repair }, { name, mine, key }) {
  const does = { do: "seal", repair: repair.id };
  if (repair.rehearsal) return form({ id: "seal-form", does, inside: html`<p class="soft">${say("seal.rehearsal")}</p>` });
  if (!mine) return note({ lead: say("seal.turn", { name }), text: say("seal.turn_text"), accent: true });
  if (!key) return note({ lead: say("seal.no_key", { name }), text: html`<a href="#/people">${say("seal.no_key_text")}</a>` });
  return form({ id: "seal-form", does, inside: pin("seal-pin") });
}

/** Returns the act that signs, where it is the turn of who is there. */
export function sealing(view) {
  const turn = next(view);
  if (!turn?.mine || !(turn.key || view.repair.rehearsal)) return undefined;
  return act({ label: say(view.repair.rehearsal ? "seal.act_rehearsal" : "seal.act"), note: view.repair.issued.number, mark: "tick", form: "seal-form" });
}
