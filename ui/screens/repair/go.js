// The second go: how much time is to spare, and which temperature decided.

import { html } from "../../html.js";
import { minSec, short } from "../../format.js";
import { figure } from "../../drawings/svg.js";
import { tempRule } from "../../drawings/temp-rule.js";
import { conditions } from "../../parts/conditions.js";
import { count } from "../../parts/count.js";
import { act, deck, usual } from "../../parts/deck.js";
import { ends, tape } from "../../parts/tape.js";
import { say } from "../../text/say.js";
import { at, attempt, frame, to, upTo } from "./frame.js";
import * as measure from "./measure.js";
import { onTheRule } from "./temps.js";
import { pace, storing } from "./worked.js";

export const title = () => say("go.title");

/** The go that was given; where there is none that is good, all three are measured. */
export function render(view) {
  const given = attempt(view)?.second_go;
  if (!given || view.next.act !== "join") return measure.render(view);
  const { budget } = given;
  const needed = budget.working_ms - budget.spare_ms;
  return frame(view, {
    title: title(), mainKind: "stage go-page",
    main: html`<p class="clock-what">${say("go.yes")}</p>
      ${count({ figure: minSec(budget.spare_ms), lines: [say("go.to_spare"), say("go.of", { all: minSec(budget.working_ms) })], kind: "go-count" })}
      ${tape({ n: budget.working_ms / 60e3, label: say("go.tape", { needed: minSec(needed, "up"), spare: minSec(budget.spare_ms), all: minSec(budget.working_ms) }), parts: [{ kind: "full", m: needed / 60e3 }, { kind: "now", m: budget.spare_ms / 60e3 }] })}
      ${ends([say("go.needed", { needed: minSec(needed, "up") }), { strong: say("go.spare", { spare: minSec(budget.spare_ms) }) }])}${rule(given)}
      <p class="soft">${say("go.good", { read: at(view, given.at.moment.at_ms), until: at(view, view.go.good_until_ms), what: say(`temperature.${budget.warmest}`), n: short("celsius", budget.warmest_mc) })}</p>
      ${closures(view)}${pace(view.pace)}${storing(view.go.storing)}`,
    foot: deck({ more: usual({ repair: view.repair.id }), act: act({ label: say("go.ready"), note: say("go.ready_note"), href: to(view) }) }),
  });
}

function rule({ temperatures, budget }) {
  const enough = budget.enough_at_mc;
  const known = enough !== null && enough !== undefined;
  return figure({ flush: true, inside: tempRule({
    id: "go", temps: onTheRule(temperatures), label: say("go.rule"),
    ...(known && { limit: enough / 1000, limit_says: say("go.limit", { n: short("celsius", enough) }) }),
  }) });
}

// What is closed for the crew, and until when; the core has looked that each outlasts the hold.
const closures = (view) => view.repair.plan.choice.closures.length > 0 && conditions(view.repair.plan.choice.closures.map(({ what, until_ms: until }) => ({ state: "met", text: what, note: say("go.until", { at: upTo(view, until) }) })));
