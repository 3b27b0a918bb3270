// How long ago something happened: both times are kept. The report itself is the act, with the time that was set.

import { html } from "../../html.js";
import { minSec } from "../../format.js";
import { form } from "../../parts/action.js";
import { act, deck, usual } from "../../parts/deck.js";
import { entry } from "../../parts/entry.js";
import { note } from "../../parts/note.js";
import { readings } from "../../parts/readings.js";
import { ends } from "../../parts/tape.js";
import { say } from "../../text/say.js";
import { agoOf, at, attempt, frame, nowOf, report, to } from "./frame.js";
import { joinAct, used } from "./join.js";
import { PUSH_ACTS } from "./push.js";
import { pressure, targetAct } from "./runs.js";

/** The longest that a report may have happened ago on this screen, in minutes. */
const MOST = 240;

/** The screen that a report is made on, where it is not the one of the stage. */
const BACK = { reading: "reading", sample_felt: "sample", stop: "stop" };

const ACTS = {
  ...PUSH_ACTS, joined: joinAct, target_reached: targetAct,
  ...Object.fromEntries(["insertion_begun", "at_the_mark", "air_joined"].map((what) => [what, (view) => act({ label: say(`report.${what}`), note: say("ago.at", { at: at(view, nowOf(view) - agoOf(view, what)) }), mark: "tick", does: report(view, { what }), then: to(view) })])),
};

export const title = (view) => say(`report.${view.params.key ?? "stop"}`);

export function render(view) {
  const key = view.params.key ?? "stop";
  const id = `ago-${key}`;
  const ms = agoOf(view, key);
  return frame(view, {
    title: title(view), mainKind: "stage stack",
    main: html`${form({ id, does: {}, inside: entry({ id: "min", label: say("ago.was"), aside: say("ago.zero"), unit: say("ago.unit"), step: 1, min: 0, max: MOST, value: view.drafts?.[id]?.min ?? "0" }) })}
      ${readings([{ label: say(key === "joined" ? "ago.joined" : "ago.happened"), value: at(view, nowOf(view) - ms) }, { label: say("ago.tapped"), value: at(view, nowOf(view)) }], "two")}
      ${key === "joined" && attempt(view)?.second_go && html`${used(view)}${ends([say("ago.left", { left: minSec(attempt(view).second_go.budget.working_ms - ms) }), say("ago.gone", { n: ms / 60_000 })])}`}
      ${key === "target_reached" && pressure(view)}${note({ lead: say("ago.both"), text: say("ago.rule") })}`,
    foot: deck({ more: usual({ repair: view.repair.id, ago: { min: ms / 60_000, href: to(view, BACK[key]) } }), act: ACTS[key]?.(view) ?? act({ label: say("ago.back", { n: ms / 60_000 }), note: say("ago.back_note"), href: to(view, BACK[key]) }) }),
  });
}
