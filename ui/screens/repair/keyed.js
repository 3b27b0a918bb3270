// Keying in from paper: the day and the time on the sheet, set once and changed from entry to entry.

import { html } from "../../html.js";
import { onPaper } from "../../on-paper.js";
import { form } from "../../parts/action.js";
import { act, deck, small } from "../../parts/deck.js";
import { field } from "../../parts/field.js";
import { note } from "../../parts/note.js";
import { yesNo } from "../../parts/pair.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { frame, to } from "./frame.js";

const FORM = "paper";

const typedOf = (view) => view.drafts?.[FORM] ?? {};

export const title = () => say("keyed.title");

export function render(view) {
  const on = typedOf(view).on === "yes";
  return frame(view, {
    title: title(), mainKind: "stage stack",
    main: html`<p class="lead-in">${say("keyed.lead")}</p>${setting(view, html`<p class="entry-label">${say("keyed.on")}</p>${yesNo({ legend: say("keyed.on"), name: "on", quiet: true, picked: typedOf(view).on ?? "no" })}`)}${note({ lead: say("keyed.rule"), text: say("keyed.rule_text") })}`,
    foot: deck({ more: [small({ mark: "note", label: say("paper.title"), href: to(view, "paper") })], act: act({ label: say("keyed.act"), note: say(on ? "keyed.act_on" : "keyed.act_off"), href: to(view) }) }),
  });
}

// The core is asked again at each change, so that the clocks on the screen show what they showed then.
const setting = (view, more = "") => form({ id: FORM, live: true, does: {}, kind: "keyed-when", inside: html`${more}
  ${field({ id: "paper-day", name: "day", type: "date", label: say("keyed.day"), value: typedOf(view).day ?? "" })}${field({ id: "paper-time", name: "time", type: "time", label: say("keyed.time"), value: typedOf(view).time ?? "" })}` });

/** Returns what stands on every screen of the repair while something is keyed in from paper. */
export const keying = (view) => typedOf(view).on === "yes" && view.params?.sub !== "keyed" && section({ id: "from-paper", title: say("keyed.strip"), kind: "practice", inside: html`
  ${setting(view)}${onPaper(typedOf(view)) === undefined && note({ text: say("keyed.wants"), accent: true })}${way({ label: say("keyed.end"), href: to(view, "keyed") })}` });
