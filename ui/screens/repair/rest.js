// Where the patch came to rest: said when it stood at the mark, or filled in later.

import { html } from "../../html.js";
import { form } from "../../parts/action.js";
import { act, deck } from "../../parts/deck.js";
import { inRecorded } from "../../format.js";
import { entry } from "../../parts/entry.js";
import { say } from "../../text/say.js";
import { lineOf } from "./drawn.js";
import { frame, tell, to } from "./frame.js";

export const title = () => say("rest.title");

export function render(view) {
  const typed = view.drafts?.rest ?? {};
  const entryOf = (key, label, unit, steps, digits, step, value) => entry({ id: key, name: `command.happening.${key}`, label, unit, steps, digits, step, value: typed[`command.happening.${key}`] ?? value });
  const past = inRecorded("mm", typed["command.happening.beyond_um"] ?? "0") ?? 0;
  const counted = inRecorded("m", typed["command.happening.counter_um"] ?? "");
  return frame(view, {
    title: title(), mainKind: "stage stack",
    main: html`<p class="lead">${say("rest.text")}</p>${lineOf(view, { beyond_m: past / 1000, ...(counted !== null && { at_m: counted }) })}${form({ id: "rest", then: to(view), does: tell(view, { command: "report", happening: { what: "at_the_mark" } }), inside: html`
      ${entryOf("beyond_um", say("rest.beyond"), "mm", 1000, 0, 1, "0")}${entryOf("counter_um", say("rest.counter"), "m", 1_000_000, 2, 0.01, "")}` })}`,
    foot: deck({ act: act({ label: say("rest.act"), note: say("tasks.records"), mark: "tick", form: "rest" }) }),
  });
}
