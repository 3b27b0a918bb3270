// The keys that signed a certificate: whose, when by their own clock, whether they hold and are known here.

import { html } from "../../html.js";
import { date, time } from "../../format.js";
import { facts } from "../../parts/facts.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";

/** Returns the section, or nothing for a record that no key signed. */
export function keys({ signatures = [], superseded_by: later }) {
  if (signatures.length === 0 && !later) return "";
  return section({ id: "keys", title: say("check.keys"), kind: "", inside: html`${later && note({ lead: say("check.superseded", { number: later }), text: say("check.superseded_text"), accent: true })}${facts(signatures.map((one) => ({
    label: say(`role.${one.role}`),
    value: [one.name, one.organisation].filter(Boolean).join(", "),
    note: html`${one.at_ms === null ? "" : `${date(one.at_ms, one.offset_min)}, ${time(one.at_ms, one.offset_min, true)}. `}${say(one.intact ? "check.holds" : "check.broken")} ${say(`check.trust_${one.trust}`)} ${one.revoked_ms !== null && say("check.revoked", { at: date(one.revoked_ms, one.offset_min) })} <span class="hash">${one.fingerprint.match(/.{4}/g).slice(0, 8).join(" ")}</span>`,
  })))}` });
}
