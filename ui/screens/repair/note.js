// A note in words, kept with the time, the place and who wrote it.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { act, deck, small } from "../../parts/deck.js";
import { lines } from "../../parts/field.js";
import { problemOf } from "../../parts/problem-list.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { frame, tell, to } from "./frame.js";

export const title = () => say("note.title");

export const render = (view) => frame(view, {
  title: title(),
  main: html`${form({ id: "note", then: to(view), does: tell(view, { command: "note" }), inside: lines({ id: "note-text", name: "command.text", label: say("note.label"), value: view.drafts?.note?.["command.text"] ?? "", needed: true, problem: problemOf(view.problems, "note-text") }) })}${way({ label: say("keyed.title"), note: say("keyed.about"), href: to(view, "keyed") })}`,
  foot: deck({ more: [small({ mark: "cross", label: say("stop.back"), href: to(view) }), small({ mark: "photo", label: say("deck.photo"), href: to(view, "photo") })], act: act({ label: say("note.act"), note: say("tasks.records"), mark: "tick", form: "note" }) }),
});
