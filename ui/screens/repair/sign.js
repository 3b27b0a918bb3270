// Two sign: what is signed stands first, then the statement, then the line that is drawn.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { act, deck } from "../../parts/deck.js";
import { note } from "../../parts/note.js";
import { keyOf, pin } from "../../parts/pin.js";
import { section } from "../../parts/section.js";
import { say, within } from "../../text/say.js";
import { frame, sending, tell, to } from "./frame.js";
import { inTheWay } from "./gate.js";
import { ROLES, signatures } from "./review/signs.js";
import { signed } from "./signed.js";

export const title = () => say("done.sign");

export function render(view) {
  const me = view.people.find(({ id }) => id === view.person);
  const drawn = (role) => view.repair.signatures.some((signature) => signature.role === role);
  const role = ROLES.includes(me?.role) && !drawn(me.role) ? me.role : undefined;
  const next = ROLES.find((one) => !drawn(one));
  const open = view.ending !== null && !view.repair.issued;
  return frame(view, {
    title: title(), mainKind: "review",
    main: html`<div class="review-cols"><div>${signed(view)}</div><aside class="sign section"><h2>${say("signs.title")} <small>${say("signs.of", { n: ROLES.filter(drawn).length, of: ROLES.length })}</small></h2>
      ${signatures(view)}${open && role && pad(view, role, me)}${open && !role && next && note({ lead: say("sign.next", { role: within(say(`role.${next}`)) }), text: say("sign.next_text"), accent: true })}
      ${open ? note({ lead: say("sign.honest"), text: say("sign.honest_text") }) : html`<p>${say(view.repair.issued ? "sign.issued" : "sign.not_yet")}</p>`}${open && sending(view)}${open && inTheWay(view)}</aside></div>`,
    foot: foot(view, { open, role, next, me }),
  });
}

// The strokes are drawn again from what is kept, so that nobody signs a line that is not seen.
function pad(view, role, me) {
  const id = `sign-${role}`;
  const kept = view.drafts?.[id]?.["command.strokes"] ?? "[]";
  return section({ id: "pad", title: say("done.draw", { role: say(`role.${role}`) }), inside: html`<p class="lead">${statement(view, role)}</p><p class="soft">${say("done.as", { name: me.name, role: within(say(`role.${role}`)) })}</p>
    ${form({ id, then: to(view), does: tell(view, { command: "sign", name: me.name, statement: statement(view, role) }), inside: html`<div class="pad-box"><canvas class="pad" data-key="pad-${role}" data-pad="command.strokes" width="900" height="300" tabindex="0" role="application" aria-label="${say("done.pad")}"></canvas><span class="pad-pen"></span>${ink(JSON.parse(kept))}</div>
      <input type="hidden" name="command.strokes" data-as="json" value="${kept}"><button type="button" class="way" data-pad-clear><b>${say("done.again")}</b></button>${!view.repair.rehearsal && keyOf(me) && pin("sign-pin")}` })}
    <p class="soft">${say("pad.keys")} ${say("pad.typed")}</p>` });
}

// The foreman says what was found: accepted, rejected, or not mended.
const statement = (view, role) => say(role === "foreman" && view.ending !== "accepted" ? `statement.foreman_${view.ending}` : `statement.${role}`);

/** Returns drawn strokes, in thousandths of the field. */
export const ink = (strokes) => html`<svg class="pad-ink" viewBox="0 0 1000 1000" preserveAspectRatio="none" aria-hidden="true">${strokes.map((stroke) => html`<polyline points="${stroke.map((point) => point.join(",")).join(" ")}"/>`)}</svg>`;

function foot(view, { open, role, next, me }) {
  if (!open) return deck({ act: act({ label: say(view.repair.issued ? "done.issued" : "sign.back"), note: view.repair.issued?.number ?? say("sign.back_note"), href: to(view, view.repair.issued ? "certificate" : "") }) });
  if (role) return deck({ act: act({ label: say("done.sign_act"), note: say("done.as", { name: me.name, role: within(say(`role.${role}`)) }), mark: "tick", form: `sign-${role}` }) });
  if (next) return deck({ act: act({ label: say("sign.pick", { role: within(say(`role.${next}`)) }), note: me ? say("sign.now", { name: me.name }) : say("people.nobody"), href: "#/people" }) });
  return deck({ act: act({ label: say("sign.to_certificate"), note: say("done.issue_note"), href: to(view, "certificate") }) });
}
