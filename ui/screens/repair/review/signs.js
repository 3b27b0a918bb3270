// The side of the review: who has signed, what stands behind the signature, and what signing means.

import { html } from "../../../html.js";
import { inMinutes } from "../../../format.js";
import { conditions } from "../../../parts/conditions.js";
import { facts } from "../../../parts/facts.js";
import { gate } from "../../../parts/deck.js";
import { say, within } from "../../../text/say.js";
import { at, attempt, computed } from "../frame.js";

/** The roles that sign, in their order. */
export const ROLES = ["technician", "foreman"];

/** Returns the aside. */
export function twoSign(view) {
  const { repair, review } = view;
  const by = (role) => repair.signatures.find((signature) => signature.role === role);
  const open = review.off.filter((one) => one.open);
  return html`<aside class="sign section"><h2>${say("signs.title")} <small>${say("signs.of", { n: ROLES.filter(by).length, of: ROLES.length })}</small></h2>
    ${signatures(view)}${facts(behind(view))}
    <p class="note">${say("signs.means", { n: review.off.length })}</p>${open.length > 0 && view.standing === "underway" && gate({ reason: say("review.decide", { which: open.map(({ n }) => n).join(", ") }) })}</aside>`;
}

/** Returns both signatures, drawn or not. */
export const signatures = (view) => conditions(ROLES.map((role) => {
  const signed = view.repair.signatures.find((signature) => signature.role === role);
  return signed ? { state: "met", text: say("signs.who", { name: signed.name, role: within(say(`role.${role}`)) }), note: say(signed.key ? "done.signed_pin" : "done.signed", { at: at(view, signed.at.moment.at_ms, true) }) }
    : { state: "open", text: say(`role.${role}`), note: say("done.not_signed") };
}));

/** Returns the figures that stand behind the signature. */
export function behind(view) {
  const { hold, repair } = view;
  const covered = computed(view).covered.length;
  const opened = new Set((attempt(view)?.laterals ?? []).map(({ lateral }) => lateral)).size;
  return [
    ...(hold ? [{ label: say("stage.hold"), value: say("signs.hold", { counted: inMinutes(hold.counted_ms), of: Math.ceil(hold.required_ms / 60e3) }) }] : []),
    { label: say("verify.laterals"), value: say("verify.laterals_count", { covered, opened }) },
    { label: say("signs.photos"), value: say("signs.photos_n", { n: repair.photos.length }) },
  ];
}
