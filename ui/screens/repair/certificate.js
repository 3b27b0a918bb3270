// The certificate: its number, the PDF, and the record that anybody can check. A repair that was closed unrepaired ends here too.

import { html } from "../../html.js";
import { date } from "../../format.js";
import { form } from "../../parts/action.js";
import { act, deck, small } from "../../parts/deck.js";
import { facts } from "../../parts/facts.js";
import { field } from "../../parts/field.js";
import { note } from "../../parts/note.js";
import { keyOf, pin } from "../../parts/pin.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { at, frame, sending, to } from "./frame.js";
import { inTheWay } from "./gate.js";
import { signatures } from "./review/signs.js";
import { seal, sealing } from "./seal.js";
import { signed } from "./signed.js";

export const title = (view) => say(view.ending === "accepted" ? "done.issued" : `ending.${view.ending}`);

export function render(view) {
  const { repair } = view;
  return frame(view, {
    title: title(view), mainKind: "review",
    main: html`<div class="review-cols"><div>${repair.closed && section({ id: "closed", title: say("done.reason"), kind: "", inside: facts([{ label: repair.closed.reason, value: when(view, repair.closed.at) }]) })}${signed(view)}</div>
      <aside class="sign section"><h2>${repair.issued ? repair.issued.number : say("certificate.none")}</h2>
      ${repair.issued && facts([{ label: say("certificate.issued"), value: when(view, repair.issued.at) }])}${view.ending !== null && signatures(view)}${repair.issued && seal(view)}
      ${way({ label: say("done.record"), note: say("done.record_note"), does: { do: "record", repair: repair.id } })}
      ${sending(view)}${way({ label: say("review.again"), note: say("review.again_note"), href: to(view, "review") })}
      ${means(view)}${before(view)}
      ${repair.issued && voiding(view)}
      ${!repair.issued && inTheWay(view)}</aside></div>`,
    foot: foot(view),
  });
}

const when = (view, stamp) => `${date(stamp.moment.at_ms, view.now?.offset_min ?? 0)}, ${at(view, stamp.moment.at_ms)}`;

// A paper that takes the place of an earlier one names it, and why.
function before({ repair }) {
  const last = repair.issued_before?.at(-1);
  if (!last) return "";
  const why = repair.voided?.findLast(({ number }) => number === last.number)?.reason ?? say("certificate.went_on");
  return note({ lead: say("certificate.supersedes", { number: last.number }), text: why });
}

function voiding(view) {
  const { repair } = view;
  const me = view.people.find(({ id }) => id === view.person);
  const open = me?.role === "foreman" && html`<details><summary>${say("certificate.void")}</summary>${form({ id: "void", kind: "stack", does: { do: "void", repair: repair.id }, then: `#/repair/${repair.id}`, inside: html`<p class="soft">${say("certificate.void_note")}</p>
    ${field({ id: "void-why", name: "reason", label: say("certificate.void_why"), value: view.drafts.void?.reason ?? "", needed: true })}${!repair.rehearsal && keyOf(me) && pin("void-pin")}<button type="submit" class="way"><b>${say("certificate.void_act", { number: repair.issued.number })}</b></button>` })}</details>`;
  return html`${way({ label: say("numbers.title"), note: say("numbers.note"), href: "#/numbers" })}${open}`;
}

function means({ repair, ending }) {
  const of = repair.rehearsal ? "rehearsal" : ending === "accepted" ? "means" : "not_mended";
  return note({ lead: say(`certificate.${of}`), text: say(`certificate.${of}_text`) });
}

function foot(view) {
  const { repair, ending } = view;
  const word = ending === "accepted" ? "" : "_record";
  const bySigning = ["technician", "foreman"].every((role) => repair.signatures.some((one) => one.role === role));
  const save = { label: say(`done.pdf${word}`), note: repair.issued?.number, does: { do: "certificate", repair: repair.id } };
  const sealed = repair.issued && sealing(view);
  if (sealed) return deck({ act: sealed, more: [small({ ...save, mark: "go" })] });
  if (repair.issued) return deck({ act: act(save) });
  if (ending && bySigning) return deck({ act: act({ label: say(`done.issue${word}`), note: say("done.issue_note"), does: { do: "issue", repair: repair.id }, then: `#/repair/${repair.id}` }) });
  return deck({ act: act({ label: say("sign.back"), mark: "back", note: say("sign.back_note"), href: `#/repair/${repair.id}` }) });
}
