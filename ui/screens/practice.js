// Begin a rehearsal that is played: what is to go wrong, and how fast the clock runs.

import { html } from "../html.js";
import { form } from "../parts/action.js";
import { choice } from "../parts/choice.js";
import { act, deck } from "../parts/deck.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { yesNo } from "../parts/pair.js";
import { say } from "../text/say.js";

const FORM = "practice";

/** What can go wrong, in the order in which the job meets it. */
const MISHAPS = ["hot_day", "late_crew", "packer_stuck", "leaking_packer", "wrong_clock", "lateral_under_patch"];

/** How many times as fast the clock runs. */
export const PACES = [1, 10, 60];

export const title = () => say("practice.title");

export function render(view) {
  const typed = view.drafts?.[FORM] ?? {};
  return page({
    rehearsal: true,
    mast: mast({ title: title(), where: say("app.name"), rehearsal: true }),
    main: html`<main class="stack"><p class="lead">${say("practice.lead")}</p>${note({ lead: say("practice.never"), text: say("practice.never_text") })}
      ${form({ id: FORM, does: { do: "practise", mishaps: [] }, then: "#/repair/{repair}", inside: html`
        ${choice({ legend: say("practice.what"), aside: say("practice.what_note"), name: "mishaps", several: true, picked: typed.mishaps ?? [], options: MISHAPS.map((one) => ({ value: one, strong: say(`mishap.${one}`), note: say(`mishap.${one}_note`) })) })}
        <p class="entry-label">${say("practice.surprise")}</p>${yesNo({ legend: say("practice.surprise"), name: "surprise", picked: typed.surprise ?? "no", quiet: true })}<p class="soft">${say("practice.surprise_note")}</p>
        ${choice({ legend: say("practice.pace"), name: "pace", as: "number", picked: String(typed.pace ?? 10), options: PACES.map((n) => ({ value: String(n), strong: say("practice.times", { n }), note: say(`practice.pace_${n}`) })) })}` })}</main>`,
    deck: deck({ act: act({ label: say("practice.act"), note: say("practice.act_note"), form: FORM }) }),
  });
}
