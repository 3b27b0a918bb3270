// A hold that another phone handed over: taken over by a photo of its code, by its clock, or without it.

import { html } from "../../html.js";
import { minutes, time } from "../../format.js";
import { form } from "../../parts/action.js";
import { act, deck, usual } from "../../parts/deck.js";
import { field } from "../../parts/field.js";
import { note } from "../../parts/note.js";
import { problemOf } from "../../parts/problem-list.js";
import { section } from "../../parts/section.js";
import { shots } from "../../parts/shots.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { at, frame, to } from "./frame.js";
import { short } from "./hand-over.js";

export const title = () => say("offer.title");

const request = (view) => ({ do: "take_over", repair: view.repair.id });

export function render(view) {
  const { handed, hold } = view;
  const chosen = view.chosen?.form === "by-code" ? view.chosen : undefined;
  return frame(view, {
    title: title(), mainKind: "stage two-cols",
    main: html`<div><p class="lead">${say("offer.from", { phone: short(handed.from), at: time(handed.at_ms, handed.offset_min) })}</p>
      ${hold && html`<p>${say("offer.counted", { n: minutes(hold.counted_ms), of: Math.max(1, Math.ceil(hold.required_ms / 60e3)) })}</p>`}
      ${section({ id: "offer-code", title: say("offer.code"), kind: "", inside: html`<p>${say("offer.code_text")}</p>${form({ id: "by-code", does: request(view), then: to(view), inside: shots({ id: "by-code", name: "photo", chosen }) })}` })}</div>
      <div>${section({ id: "offer-clock", title: say("offer.clock"), kind: "", inside: html`${form({ id: "by-clock", does: request(view), then: to(view), inside: field({ id: "its-clock", name: "clock", label: say("offer.clock_field"), value: view.drafts?.["by-clock"]?.clock ?? "", needed: true, max: 8, problem: problemOf(view.problems, "its-clock") }) })}
        ${way({ label: say("offer.clock_act"), note: say("offer.clock_note"), form: "by-clock" })}` })}
      ${section({ id: "offer-without", title: say("offer.without"), inside: html`${note({ text: say("offer.without_text") })}${way({ label: say("offer.without_act"), note: say("offer.without_note"), does: request(view), then: to(view) })}
        ${way({ label: say("given.look"), note: say("given.look_note"), href: to(view, "hold") })}` })}</div>`,
    foot: deck({ more: usual({ repair: view.repair.id }), act: handed.tied_ms && !chosen ? tied(view) : act({ label: say("offer.act"), note: say(chosen ? "offer.act_note" : "photo.act_first"), mark: "tick", form: "by-code" }) }),
  });
}

// The code that the hold was followed by ties both clocks: the other phone need not be here.
const tied = (view) => act({ label: say("offer.act"), note: say("offer.act_tied", { at: at(view, view.handed.tied_ms) }), mark: "tick", does: { ...request(view), followed: true }, then: to(view) });
