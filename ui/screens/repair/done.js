// Accepted: the signatures, the number, the certificate. A closed repair ends here too.

import { html } from "../../html.js";
import { conditions } from "../../parts/conditions.js";
import { act, deck } from "../../parts/deck.js";
import { facts } from "../../parts/facts.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { form } from "../../parts/action.js";
import { say } from "../../text/say.js";
import { at, frame, tell, to } from "./frame.js";
import { inTheWay } from "./gate.js";

export const title = (view) => say(view.repair.issued ? "done.issued" : view.standing === "unrepaired" ? "done.closed" : "done.sign");

const ROLES = ["technician", "foreman"];

export function render(view) {
  const { repair } = view;
  const by = (role) => repair.signatures.find((signature) => signature.role === role);
  const next = ROLES.find((role) => !by(role));
  const me = view.people.find(({ id }) => id === view.person);
  return frame(view, {
    title: title(view),
    main: html`${repair.closed && facts([{ label: say("done.reason"), value: repair.closed.reason, note: at(view, repair.closed.at.moment.at_ms) }])}
      ${view.standing === "complete" && conditions(ROLES.map((role) => (by(role)
        ? { state: "met", text: say(`role.${role}`), note: say("done.signed", { name: by(role).name, at: at(view, by(role).at.moment.at_ms) }) }
        : { state: "open", text: say(`role.${role}`), note: say("done.not_signed") })))}
      ${view.standing === "complete" && next && pad(view, next, me)}
      ${inTheWay(view)}
      ${view.standing === "complete" && section({ id: "files", title: say("done.files"), inside: html`
        ${repair.issued && way({ label: say("done.pdf"), note: repair.issued.number, does: { do: "certificate", repair: repair.id } })}
        ${way({ label: say("done.record"), note: say("done.record_note"), does: { do: "record", repair: repair.id } })}` })}
      ${note({ lead: say("done.honest"), text: say("done.honest_text") })}`,
    foot: foot(view, next, me),
  });
}

// What is signed stands above the line that is drawn.
const pad = (view, role, me) => section({
  id: "pad", title: say("done.draw", { role: say(`role.${role}`) }),
  inside: html`<p class="lead">${say(`statement.${role}`)}</p><p class="soft">${me ? say("done.as", { name: me.name, role: say(`role.${me.role}`) }) : say("done.nobody")}</p>
    ${form({ id: `sign-${role}`, then: to(view), does: tell(view, { command: "sign", name: me?.name ?? "", statement: say(`statement.${me?.role ?? role}`) }), inside: html`<canvas class="pad" data-key="pad-${role}" data-pad="command.strokes" width="900" height="300" aria-label="${say("done.pad")}"></canvas>
      <input type="hidden" name="command.strokes" data-as="json" value="${view.drafts?.[`sign-${role}`]?.["command.strokes"] ?? "[]"}"><button type="button" class="way" data-pad-clear><b>${say("done.again")}</b></button>` })}
    <p class="soft">${say("done.pad_note")}</p>`,
});

function foot(view, next, me) {
  if (view.standing !== "complete") return deck({ act: act({ label: say("done.today"), href: "#/" }) });
  if (next) return deck({ act: act({ label: say("done.sign_act"), note: me ? say("done.as", { name: me.name, role: say(`role.${me.role}`) }) : say("done.nobody"), mark: "tick", form: `sign-${next}` }) });
  if (!view.repair.issued) return deck({ act: act({ label: say("done.issue"), note: say("done.issue_note"), does: { do: "issue", repair: view.repair.id }, then: to(view) }) });
  return deck({ act: act({ label: say("done.pdf"), note: view.repair.issued.number, does: { do: "certificate", repair: view.repair.id } }) });
}
