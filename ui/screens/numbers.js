// The certificate numbers of this device: each issued, superseded or voided with a reason. None is used again.

import { html } from "../html.js";
import { date, time } from "../format.js";
import { act, deck } from "../parts/deck.js";
import { facts } from "../parts/facts.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { say } from "../text/say.js";

export const title = () => say("numbers.title");

export const render = (view) => page({
  mast: mast({ title: title(), where: say("app.name") }),
  main: html`<main class="stack">${view.numbers.length === 0
    ? note({ lead: say("numbers.none"), text: say("numbers.none_text") })
    : section({ id: "numbers", title: say("numbers.all"), aside: String(view.numbers.length), kind: "", inside: facts(view.numbers.map((one) => row(view, one))) })}</main>`,
  deck: deck({ act: act({ label: say("done.today"), mark: "back", href: "#/" }) }),
});

const when = (view, ms) => `${date(ms, view.now?.offset_min ?? 0)}, ${time(ms, view.now?.offset_min ?? 0)}`;

const row = (view, one) => ({
  label: html`<a href="#/repair/${encodeURIComponent(one.repair)}">${one.number}</a>`,
  value: say(`numbers.${one.state}`, { number: one.superseded_by ?? "" }),
  note: html`${say("numbers.taken", { at: when(view, one.taken_ms) })}${one.voided && html` ${say("numbers.why", { reason: one.voided.reason, by: one.voided.by, at: when(view, one.voided.at_ms) })}`}`,
});
