// Check a record that somebody brings. Nothing leaves this device.

import { html } from "../html.js";
import { form } from "../parts/action.js";
import { act, deck } from "../parts/deck.js";
import { facts } from "../parts/facts.js";
import { file } from "../parts/field.js";
import { icon } from "../parts/icon.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { say } from "../text/say.js";

export const title = (view) => (view.finding ? view.name : say("check.title"));

const MARKS = { valid: "tick", changed: "cross", unreadable: "cross", rehearsal: "rehearsal" };

export const render = (view) => page({
  kind: view.finding ? `check-${view.finding}` : "",
  mast: mast({ title: title(view), where: say("check.title"), side: [say("check.stays")] }),
  main: html`<main class="check">${view.finding && verdict(view)}
    ${form({ id: "check", does: { do: "check_record" }, inside: html`${file({ id: "record", name: "bytes", label: say("check.file"), accept: ".json,application/json", named: true })}<p class="soft">${say("check.what")}</p>` })}</main>`,
  deck: deck({ act: act({ label: say("check.act"), note: say("check.act_note"), form: "check" }) }),
});

const verdict = (view) => html`<section class="verdict" aria-live="polite"><div class="verdict-mark">${icon(MARKS[view.finding])}</div><h2>${say(`check.${view.finding}`)}</h2><p class="verdict-lead">${view.says}</p></section>
  ${view.head && section({ id: "says", title: say("check.says"), inside: facts([
    { label: say("check.repair"), value: view.number }, { label: say("check.entries"), value: String(view.entries) },
    { label: say("check.head"), value: view.head }, ...(view.certificate ? [{ label: say("check.certificate"), value: view.certificate }] : []),
  ]) })}`;
