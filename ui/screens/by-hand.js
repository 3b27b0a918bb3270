// A defect entered by hand, where there is no inspection file. Stations count from the upstream node.

import { html } from "../html.js";
import { form } from "../parts/action.js";
import { act, deck } from "../parts/deck.js";
import { entry } from "../parts/entry.js";
import { field, picks } from "../parts/field.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { yesNo } from "../parts/pair.js";
import { section } from "../parts/section.js";
import { say } from "../text/say.js";

export const title = () => say("hand.title");

const FORM = "by-hand";

export function render(view) {
  const typed = view.drafts?.[FORM] ?? {};
  const text = (id, name) => field({ id, name, label: say(`hand.${id}`), value: typed[name] ?? "" });
  const metres = (id, name) => entry({ id, name, label: say(`hand.${id}`), unit: "m", digits: 2, steps: 1_000_000, step: 0.01, min: 0, max: 5000, value: typed[name] ?? "" });
  const seen = "defect.observations.0";
  return page({
    mast: mast({ title: title(), where: say("intake.title") }),
    main: html`<main class="stack">${form({ id: FORM, then: "#/repair/{repair}/plan", does: { do: "open_by_hand", defect: { origin: { kind: "by_hand" }, observations: [{ code: "" }] } }, inside: html`
      ${section({ id: "hand-line", title: say("hand.line"), inside: html`${text("asset", "line.asset")}${text("upstream", "line.upstream.name")}${text("downstream", "line.downstream.name")}${text("street", "line.street")}
        ${metres("length", "line.length_um")}${entry({ id: "dn", name: "line.height_um", label: say("hand.dn"), unit: "mm", steps: 1000, step: 25, min: 50, max: 3000, value: typed["line.height_um"] ?? "" })}${text("material", "line.material")}${text("carries", "line.carries")}` })}
      ${section({ id: "hand-defect", title: say("hand.defect"), inside: html`${text("words", `${seen}.words`)}${metres("from", "defect.from_um")}${metres("to", "defect.to_um")}<p class="soft">${say("hand.stations")}</p>` })}
      ${section({ id: "hand-repair", title: say("line.repair"), inside: html`
        ${picks({ id: "contract", label: say("hand.contract"), value: typed.contract, options: view.contracts.map(({ id, title: label }) => ({ value: id, label })) })}
        ${field({ id: "number", label: say("line.number"), value: typed.number ?? "" })}<p class="entry-label">${say("line.rehearsal")}</p>${yesNo({ legend: say("line.rehearsal"), name: "rehearsal", picked: typed.rehearsal ?? "no", quiet: true })}` })}` })}</main>`,
    deck: deck({ act: act({ label: say("hand.act"), note: say("hand.act_note"), form: FORM }) }),
  });
}
