// Join A and B: the working time starts here and can't be stopped. One button, held.

import { html } from "../../html.js";
import { clock } from "../../parts/clock.js";
import { conditions } from "../../parts/conditions.js";
import { deck, usual } from "../../parts/deck.js";
import { hold } from "../../parts/hold.js";
import { note } from "../../parts/note.js";
import { tape } from "../../parts/tape.js";
import { minSec, trim } from "../../format.js";
import { say } from "../../text/say.js";
import { agoLink, agoOf, at, attempt, frame, report, to } from "./frame.js";

export const title = () => say("stage.wet_out");

export function render(view) {
  const { budget } = attempt(view).second_go;
  const ago = agoOf(view);
  const left = budget.working_ms - ago;
  return frame(view, {
    title: title(),
    main: html`<h2 class="lead-head">${say("join.title")}</h2><p class="lead">${say("join.text")}</p>
      ${clock({ ms: left, note: say("join.at", { n: trim("celsius", budget.warmest_mc) }) })}
      ${tape({ n: budget.working_ms / 60e3, label: say("join.tape", { left: minSec(left) }), parts: [{ kind: "full", m: left / 60e3 }, { kind: "gone", m: ago / 60e3 }] })}
      ${conditions([
        { state: "met", text: say("join.good", { at: at(view, view.go.good_until_ms) }) },
        { state: "met", text: say("join.lots") },
        { state: "met", text: say("join.warmest", { what: say(`temperature.${budget.warmest}`), n: trim("celsius", budget.warmest_mc) }) },
        { state: "met", text: say("join.spare", { spare: minSec(budget.spare_ms) }) },
      ])}${note({ lead: say("caution"), text: say("join.caution") })}
      <p><a href="${to(view, "go")}">${say("join.measure_again")}</a></p>`,
    foot: deck({ more: usual({ repair: view.repair.id, ago: agoLink(view) }), act: hold({ label: ago > 0 ? say("join.act_at", { at: at(view, (view.now?.at_ms ?? 0) - ago) }) : say("join.act"), note: say("join.act_note"), does: report(view, { what: "joined" }), then: to(view) }) }),
  });
}
