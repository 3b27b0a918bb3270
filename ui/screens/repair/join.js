// Join A and B: the working time starts here and can't be stopped. One button, held.

import { html } from "../../html.js";
import { clock } from "../../parts/clock.js";
import { conditions } from "../../parts/conditions.js";
import { deck, usual } from "../../parts/deck.js";
import { hold } from "../../parts/hold.js";
import { note } from "../../parts/note.js";
import { tape } from "../../parts/tape.js";
import { minSec, short } from "../../format.js";
import { say } from "../../text/say.js";
import { lineOf } from "./drawn.js";
import { agoLink, agoOf, at, attempt, frame, nowOf, report, to } from "./frame.js";

export const title = () => say("stage.wet_out");

export function render(view) {
  const { budget } = attempt(view).second_go;
  const left = leftOf(view);
  return frame(view, {
    title: title(),
    main: html`<h2 class="clock-what">${say("join.title")}</h2><p class="lead-in">${say("join.text")}</p>
      ${clock({ ms: left, count: true, note: say("join.at", { n: short("celsius", budget.warmest_mc) }) })}${used(view)}
      ${conditions([
        { state: "met", text: say("join.good", { at: at(view, view.go.good_until_ms) }) },
        ...lots(view),
      ])}${note({ lead: say("caution"), text: say("join.caution") })}
      <p class="answered"><a href="${to(view, "measure")}">${say("join.measure_again")}</a></p>${lineOf(view, { kind: "only-tall" })}`,
    foot: deck({ more: usual({ repair: view.repair.id, ago: agoLink(view, "joined") }), act: joinAct(view) }),
  });
}

const leftOf = (view) => attempt(view).second_go.budget.working_ms - agoOf(view, "joined");

/** Returns the working time as a tape, less what is gone if the parts were joined some minutes ago. */
export function used(view) {
  const { working_ms: working } = attempt(view).second_go.budget;
  const left = Math.max(0, leftOf(view));
  return tape({ n: working / 60e3, label: say("join.tape", { left: minSec(left) }), parts: [{ kind: "full", m: left / 60e3 }, ...(left < working ? [{ kind: "gone", m: (working - left) / 60e3 }] : [])] });
}

/** Returns the held button that starts the clock. */
export function joinAct(view) {
  const ago = agoOf(view, "joined");
  return hold({
    label: ago > 0 ? say("join.act_at", { at: at(view, nowOf(view) - ago) }) : say("join.act"),
    note: ago > 0 ? say("join.act_left", { left: minSec(leftOf(view)) }) : say("join.act_note"),
    holding: say("join.holding"), does: report(view, { what: "joined" }), then: to(view),
  });
}

function lots(view) {
  const values = Object.values(attempt(view).answers).find(({ kind }) => kind === "lots")?.answer.values;
  return values ? [{ state: "met", text: say("join.lots", { a: values.lot_a, b: values.lot_b }) }] : [];
}
