// Trouble floods the screen: the working time is over, or the pressure left its window. Each answer has its do-now.

import { html } from "../../html.js";
import { minSec, number, range } from "../../format.js";
import { places } from "../../drawings/places.js";
import { alarm } from "../../parts/alarm.js";
import { clock } from "../../parts/clock.js";
import { act, deck, small, usual } from "../../parts/deck.js";
import { hold } from "../../parts/hold.js";
import { doNow, note } from "../../parts/note.js";
import { say } from "../../text/say.js";
import { agoLink, at, frame, report, tell, to, where } from "./frame.js";
import { TARGET_FORM, pressure } from "./runs.js";

const CORE = { table: "on_table", in_pipe: "in_pipe", at_wall: "touching_wall", stuck: "stuck" };

export const title = ({ trouble }) => (trouble?.kind === "pressure" ? say(trouble.low ? "trouble.low" : "trouble.high") : say("trouble.where"));

export const render = (view) => (view.trouble?.kind === "pressure" ? pressureLeft(view) : timeOver(view, view.trouble?.place));

/** The question again, where the first answer was wrong. */
export const place = { title, render: (view) => timeOver(view, null) };

function timeOver(view, said) {
  const over = Math.max(0, (view.now?.at_ms ?? 0) - (view.clock?.deadline_ms ?? 0));
  const top = alarm({
    ...where(view), where: `${view.repair.line.street} · ${view.repair.number}`,
    what: said ? say("trouble.over_by", { by: minSec(over, "up") }) : say("trouble.over"),
    title: said ? say(`trouble.${said}`) : say("trouble.where"),
    below: !said && clock({ ms: over, rising: true, count: true, note: say("trouble.since", { at: at(view, view.clock?.deadline_ms ?? 0) }) }),
  });
  const more = usual({ repair: view.repair.id, ago: agoLink(view) });
  if (!said) {
    return frame(view, {
      top, kind: "troubled",
      main: html`${places((one) => ({ does: report(view, { what: "patch_is", place: CORE[one] }), then: to(view) }))}<p class="soft">${say("trouble.doubtful", { at: at(view, view.clock?.deadline_ms ?? 0) })}</p>`,
      foot: deck({ more }),
    });
  }
  return frame(view, {
    top, kind: "troubled",
    main: html`${doNow(["1", "2", "3"].map((n) => say(`trouble.${said}_${n}`)))}${note({ text: say(`trouble.${said}_note`) })}
      ${said === "touching_wall" && pressure(view)}<p><a href="${to(view, "place")}">${say("trouble.elsewhere")}</a></p>`,
    foot: deck({ more, act: answers[said](view) }),
  });
}

const ended = (view, outcome, label, reason) => hold({
  label, note: say("trouble.ends", { n: view.attempt }), then: to(view),
  does: tell(view, { command: "end_attempt", outcome, reasons: [reason], in_pipe: outcome === "discarded" ? say("trouble.nothing_left") : say("trouble.still_there") }),
});

const answers = {
  on_table: (view) => ended(view, "discarded", say("trouble.discarded"), say("trouble.reason_table")),
  in_pipe: (view) => ended(view, "discarded", say("trouble.discarded"), say("trouble.reason_pipe")),
  touching_wall: () => hold({ label: say("runs.target"), note: say("trouble.late_kept"), form: TARGET_FORM }),
  stuck: (view) => ended(view, "left_in_pipe", say("trouble.left"), say("trouble.reason_stuck")),
};

function pressureLeft(view) {
  const { trouble, hold: shown } = view;
  const window = range("bar", shown.window.lower_pa, shown.window.upper_pa);
  return frame(view, {
    kind: "troubled",
    top: alarm({
      ...where(view), where: `${view.repair.line.street} · ${view.repair.number}`, title: title(view),
      below: html`<p class="count"><b>${number(trouble.gauge_pa / 1e5, 2)}</b> <span>${say("trouble.window", { range: window })}</span></p>`,
      items: [{ label: say("trouble.outside_for"), value: say("trouble.up_to", { span: minSec(trouble.outside_for_ms, "up") }) }, { label: say("trouble.resin_age"), value: minSec(trouble.resin_age_ms, "up") }],
    }),
    main: html`${doNow([say("trouble.low_1"), say(trouble.low ? "trouble.low_2" : "trouble.high_2", { high: number(shown.window.upper_pa / 1e5, 2) }), say("trouble.low_3")])}
      ${trouble.doubtful && note({ lead: say("trouble.in_doubt"), text: say("trouble.in_doubt_text") })}<p><a href="${to(view, "hold")}">${say("trouble.see_hold")}</a></p>`,
    foot: deck({ more: [...usual({ repair: view.repair.id }), small({ mark: "ago", label: say("trouble.see"), href: to(view, "hold") })], act: act({ label: say("hold.read_act"), note: say("trouble.read_note"), href: to(view, "reading") }) }),
  });
}
