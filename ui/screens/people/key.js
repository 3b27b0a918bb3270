// The key of who is picked: made here or taken from a file, handed out, revoked.

import { html } from "../../html.js";
import { date, time } from "../../format.js";
import { form } from "../../parts/action.js";
import { facts } from "../../parts/facts.js";
import { field, file } from "../../parts/field.js";
import { keyOf } from "../../parts/pin.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";

const LEAST = 6;

/** Returns the section, or nothing while nobody is picked who signs. */
export function key(view) {
  const me = view.people.find(({ id }) => id === view.person);
  if (!me || me.role === "reader") return "";
  return section({ id: "key", title: say("key.title", { name: me.name }), inside: keyOf(me) ? kept(view, me) : none(me) });
}

const grouped = (digits) => digits.match(/.{4}/g).join(" ");

function kept(view, me) {
  const { fingerprint, made_ms: made } = keyOf(me);
  const offset = view.now?.offset_min ?? 0;
  return html`${facts([
    { label: say("key.made"), value: `${date(made, offset)}, ${time(made, offset)}` },
    { label: say("key.print"), value: html`<span class="hash">${grouped(fingerprint)}</span>`, note: say("key.print_note") },
  ])}${way({ label: say("key.hand_out"), note: say("key.hand_out_note"), does: { do: "person_certificate", person: me.id } })}
  <details><summary>${say("key.change")}</summary>${form({ id: "change-pin", key: me.id, kind: "stack", does: { do: "change_pin", person: me.id }, inside: html`${field({ id: "old-pin", name: "password", label: say("key.old_pin"), type: "password", mode: "numeric", needed: true })}${newPin("new-pin")}<button type="submit" class="way"><b>${say("key.change_act")}</b><small>${say("key.make_note")}</small></button>` })}</details>
  <details><summary>${say("key.revoke")}</summary>${form({ id: "revoke", key: me.id, kind: "stack", does: { do: "revoke_key", person: me.id, from_ms: view.now?.at_ms ?? made }, inside: html`<p class="soft">${say("key.revoke_note")}</p>
    ${field({ id: "revoke-why", name: "reason", label: say("key.revoke_why"), value: view.drafts.revoke?.reason ?? "", needed: true })}<button type="submit" class="way"><b>${say("key.revoke_act")}</b></button>` })}</details>`;
}

const newPin = (id) => field({ id, name: "pin", label: say("key.new_pin", { n: LEAST }), type: "password", mode: "numeric", needed: true });

const none = (me) => html`${note({ lead: say("key.none"), text: say("key.none_text") })}
  ${form({ id: "make-key", key: me.id, kind: "stack", does: { do: "make_key", person: me.id }, inside: html`${newPin("make-pin")}<button type="submit" class="way"><b>${say("key.make")}</b><small>${say("key.make_note")}</small></button>` })}
  <details><summary>${say("key.import")}</summary>${form({ id: "import-key", key: me.id, kind: "stack", does: { do: "import_key", person: me.id }, inside: html`${file({ id: "import-file", name: "bytes", label: say("key.file"), accept: ".p12,.pfx" })}
    ${field({ id: "import-password", name: "password", label: say("key.password"), type: "password" })}${newPin("import-pin")}<button type="submit" class="way"><b>${say("key.import_act")}</b></button>` })}</details>`;
