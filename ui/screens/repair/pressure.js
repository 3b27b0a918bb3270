// The pressure left its window: what to do now, and what it means for the patch.

import { html } from "../../html.js";
import { between, figure, minutes, quantity, span, unitOf } from "../../format.js";
import { alarm } from "../../parts/alarm.js";
import { count } from "../../parts/count.js";
import { act, deck, usual } from "../../parts/deck.js";
import { doNow, note } from "../../parts/note.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { at, frame, nowOf, to, where } from "./frame.js";
import { chart } from "./hold-chart.js";

export const title = ({ trouble }) => say(trouble.low ? "trouble.low" : "trouble.high");

export function render(view) {
  const { trouble, hold } = view;
  const high = quantity("bar", hold.window.upper_pa);
  return frame(view, {
    kind: "troubled",
    top: alarm({
      ...where(view), where: [view.repair.line.street, view.repair.number, at(view, nowOf(view))].join(" · "), title: title(view),
      below: count({ figure: figure("bar", trouble.gauge_pa), lines: [say("trouble.bar", { unit: unitOf("bar") }), between("bar", hold.window.lower_pa, hold.window.upper_pa)], kind: "low" }),
      items: [{ label: say("trouble.outside_for"), value: say("trouble.up_to", { span: wholeMinutes(outside(view)) }) }, { label: say("trouble.resin_age"), value: wholeMinutes(nowOf(view) - view.clock.joined_ms) }],
    }),
    main: html`${doNow([say("trouble.low_1"), say(trouble.low ? "trouble.low_2" : "trouble.high_2", { high }), say("trouble.low_3")])}
      ${trouble.doubtful && note({ lead: say("trouble.lost_wall"), text: say("trouble.lost_wall_text", net(hold)) })}
      ${note({ lead: say("trouble.stopped", { at: at(view, stopped(hold)) }), text: say(trouble.doubtful ? "trouble.stopped_doubt" : "trouble.stopped_text", { counted: minutes(hold.counted_ms), needed: Math.ceil(hold.required_ms / 60e3) }) })}
      ${chart(view)}${way({ label: say("trouble.see_hold"), href: to(view, "hold") })}`,
    foot: deck({ more: usual({ repair: view.repair.id }), act: act({ label: say("hold.read_act"), note: say("trouble.read_note"), href: to(view, "reading") }) }),
  });
}

// From the last reading inside until now: nobody knows when it left.
const outside = (view) => Math.max(view.trouble.outside_for_ms, nowOf(view) - stopped(view.hold));
const wholeMinutes = (ms) => span(Math.ceil(ms / 60e3) * 60e3);

// The last reading inside the window: what came after it does not count.
const stopped = (hold) => (hold.readings.findLast(({ inside }) => inside) ?? hold.readings[0]).at_ms;

function net({ window, excursions }) {
  const worst = excursions.at(-1);
  return { net: quantity("bar", worst.net_pa), least: quantity("bar", window.net_least_pa) };
}
