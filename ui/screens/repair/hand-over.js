// A live hold goes to another phone. This one: ask, then the file and the code that the other one needs, then a way back.

import { html } from "../../html.js";
import { time } from "../../format.js";
import { form } from "../../parts/action.js";
import { act, deck, small, usual } from "../../parts/deck.js";
import { field } from "../../parts/field.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { frame, sending, tell, to } from "./frame.js";

const FORM = "hand-over";

/** Before it is handed over. */
export const ask = {
  title: () => say("handing.title"),
  render: (view) => frame(view, {
    title: say("handing.title"),
    main: html`<p class="lead-in">${say("handing.text")}</p>${form({ id: FORM, does: tell(view, { command: "hand_over" }), then: to(view), inside: field({ id: "hand-to", name: "command.to", label: say("handing.to"), value: view.drafts?.[FORM]?.["command.to"] ?? "", max: 60 }) })}${note({ text: say("handing.together") })}`,
    foot: deck({ more: [small({ mark: "cross", label: say("stop.back"), href: to(view) })], act: act({ label: say("handing.act"), note: say("handing.act_note"), form: FORM }) }),
  }),
};

/** Another phone has it, or is about to. */
export const given = {
  title: () => say("given.title"),
  render: (view) => frame(view, {
    title: say("given.title"), mainKind: "stage two-cols",
    main: view.handed.given ? handing(view) : taken(view),
    foot: deck({ more: usual({ repair: view.repair.id }), act: act({ label: say("done.today"), mark: "back", href: "#/" }) }),
  }),
};

const handing = (view) => html`<div><p class="lead">${when(view)}</p>
  ${section({ id: "given-file", title: say("given.file"), kind: "", inside: html`<p>${say("given.file_text")}</p>${sending(view)}` })}</div>
  <div>${section({ id: "given-code", title: say("given.code"), kind: "", inside: view.handed.code ? shown(view) : note({ text: say("given.restarted"), accent: true }) })}
  ${section({ id: "given-after", title: say("given.then"), inside: html`${note({ text: say("given.watch") })}${back(view)}${look(view)}` })}</div>`;

// A code is dark on light in every light, or no camera reads it.
const shown = (view) => html`<p>${say("given.code_text")}</p>
  <svg class="code" viewBox="0 0 ${view.handed.code.modules} ${view.handed.code.modules}" role="img" aria-label="${say("given.code_label")}" shape-rendering="crispEdges"><path d="${view.handed.code.path}"/></svg>
  <p>${say("given.clock", { at: time(view.now.at_ms, view.now.offset_min, true) })}</p>`;

const taken = (view) => html`<div>${note({ lead: say("given.taken", { phone: short(view.handed.taken_by) }), text: say("given.taken_text"), accent: true })}${look(view)}</div>`;

const back = (view) => way({ label: say("given.back"), note: say("given.back_note"), mark: "ago", does: { do: "take_over", repair: view.repair.id }, then: to(view) });
const look = (view) => way({ label: say("given.look"), note: say("given.look_note"), href: to(view, "hold") });

function when({ handed }) {
  const at = time(handed.at_ms, handed.offset_min);
  return handed.to ? say("given.to", { at, to: handed.to }) : say("given.at", { at });
}

/** Returns the first letters of a phone's name, as bundles show it. */
export const short = (device) => device.slice(0, 8);
