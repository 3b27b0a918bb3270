// The attempt is over without an accepted patch: what became of it, why, and whether anything is in the pipe.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { choice } from "../../parts/choice.js";
import { deck, small } from "../../parts/deck.js";
import { lines } from "../../parts/field.js";
import { hold } from "../../parts/hold.js";
import { note } from "../../parts/note.js";
import { pair } from "../../parts/pair.js";
import { problemOf } from "../../parts/problem-list.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";
import { attempt, frame, tell, to } from "./frame.js";

const FORM = "ended";
const OUTCOME = "command.outcome";
const IN_PIPE = "command.in_pipe";

/** What somebody who looked may say; the sentence itself is recorded. */
const LOOKED = ["nothing", "not_looked", "something"];

export const title = () => say("ended.title");

export function render(view) {
  const typed = view.drafts?.[FORM] ?? {};
  const mixed = Boolean(attempt(view)?.joined);
  const options = mixed ? ["discarded", "left_in_pipe"] : ["abandoned"];
  const picked = typed[OUTCOME] ?? (options.length === 1 ? options[0] : undefined);
  return frame(view, {
    title: title(), mastKind: "stop-mast",
    main: form({
      id: FORM, then: to(view), does: tell(view, { command: "end_attempt", in_pipe: say("ended.says_nobody"), ...(options.length === 1 && { outcome: options[0] }) }), kind: "stack",
      inside: html`${options.length > 1
        ? choice({ legend: say("ended.how"), name: OUTCOME, picked, kind: "", needed: true, options: options.map((value) => ({ value, strong: say(`outcome.${value}`), note: say(`outcome.${value}_note`) })) })
        : html`<p class="lead-in">${say("outcome.abandoned_note")}</p>`}
        ${lines({ id: "ended-why", name: "command.reasons", as: "list", label: say("ended.why"), value: typed["command.reasons"] ?? "", rows: 2, needed: true, problem: problemOf(view.problems, "ended-why") })}
        ${section({ id: "in-pipe", title: say("ended.in_pipe"), kind: "", inside: inPipe(view, typed) })}
        ${picked === "left_in_pipe" && note({ lead: say("caution"), text: say("ended.left_caution") })}`,
    }),
    foot: deck({ more: [small({ mark: "stop", label: say("stop.title"), href: to(view, "stop") }), small({ mark: "photo", label: say("deck.photo"), href: to(view, "photo") })],
      act: hold({ label: picked ? say(`ended.act_${picked}`) : say("ended.act"), note: say("ended.act_note", { n: view.attempt }), form: FORM }) }),
  });
}

/** Returns the question whether anything of it is in the pipe. */
export const inPipe = (view, typed) => pair({
  legend: say("ended.in_pipe"), name: IN_PIPE, quiet: true, picked: typed[IN_PIPE],
  options: LOOKED.map((what) => ({ value: say(`ended.says_${what}`), label: say(`ended.is_${what}`) })),
});
