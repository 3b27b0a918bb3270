// What a repair is opened with, beside its line and defect: contract, number, video, rehearsal, and what a clock position means.

import { html } from "../html.js";
import { field, picks } from "../parts/field.js";
import { note } from "../parts/note.js";
import { pair, yesNo } from "../parts/pair.js";
import { section } from "../parts/section.js";
import { way } from "../parts/way.js";
import { say } from "../text/say.js";

/** Returns the section. `contracts` are { id, title }; `typed` what was typed into the form. */
export const opened = (contracts, typed) => section({ id: "repair", title: say("line.repair"), inside: html`
  ${contracts.length === 0 ? html`${note({ lead: say("line.no_contract"), text: say("line.no_contract_text"), accent: true })}${way({ label: say("shelf.title"), note: say("shelf.note"), href: "#/shelf" })}`
    : picks({ id: "contract", label: say("hand.contract"), value: typed.contract ?? contracts[0].id, options: contracts.map(({ id, title: label }) => ({ value: id, label })) })}
  ${field({ id: "number", label: say("line.number"), value: typed.number ?? "" })}${field({ id: "video_before", label: say("line.video"), value: typed.video_before ?? "" })}
  <p class="entry-label">${say("line.rehearsal")}</p>${yesNo({ legend: say("line.rehearsal"), name: "rehearsal", picked: typed.rehearsal ?? "no", quiet: true })}<p class="soft">${say("line.rehearsal_note")}</p>` });

/** Returns the question what "from an hour to the same hour" means, once the core has asked it. `name` is its field. */
export const sameHour = (view, typed, name = "same_hour") => (view.error?.code === "same_hour" || typed[name]) && html`<section class="section note is-accent" tabindex="-1" data-focus aria-labelledby="same-hour"><h2 id="same-hour">${say("line.same_hour")}</h2>
  <p>${view.error?.code === "same_hour" && view.error.says}</p>${pair({ legend: say("line.same_hour"), name, quiet: true, picked: typed[name], options: [{ value: "all_round", label: say("line.all_round") }, { value: "one_spot", label: say("line.one_spot") }] })}</section>`;
