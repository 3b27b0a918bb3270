// The second go: fresh temperatures, and whether the resin gives time enough. No go can't be waived.

import { html } from "../../html.js";
import { minSec, trim } from "../../format.js";
import { figure } from "../../drawings/svg.js";
import { tempRule } from "../../drawings/temp-rule.js";
import { form } from "../../parts/action.js";
import { act, deck, usual } from "../../parts/deck.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { say } from "../../text/say.js";
import { budgetOf } from "./budget.js";
import { attempt, frame, tell, to } from "./frame.js";
import { inTheWay } from "./gate.js";
import { onTheRule, temperatureEntries } from "./temps.js";

export const title = () => say("go.title");

const FORM = "second-go";

export function render(view) {
  const last = attempt(view)?.temperatures.at(-1)?.[1] ?? view.repair.plan.choice.temperatures;
  const { go } = view;
  return frame(view, {
    title: title(),
    main: html`<p class="lead">${say("go.ask")}</p>
      ${form({ id: FORM, does: tell(view, { command: "second_go" }), then: to(view), inside: temperatureEntries({ prefix: "command.temperatures", drafts: view.drafts?.[FORM], last }) })}
      ${note({ text: say("go.fresh", { min: view.repair.plan.contract.temperatures_age_ms.value / 60_000 }) })}
      ${go?.budget && section({ id: "budget", title: say("go.as_read"), aside: say("go.warmest", { what: say(`temperature.${go.budget.warmest}`), n: trim("celsius", go.budget.warmest_mc) }), inside: html`${budgetOf(go.budget)}${rule(last, go.budget)}` })}
      ${inTheWay(view, go?.broken ?? [])}`,
    foot: deck({ more: usual({ repair: view.repair.id }), act: act({ label: say("go.act"), note: say("go.act_note"), form: FORM }) }),
  });
}

const rule = (set, budget) => figure({
  inside: tempRule({
    id: "go", temps: onTheRule(set), limit: budget.enough_at_mc === null || budget.enough_at_mc === undefined ? undefined : budget.enough_at_mc / 1000,
    limit_says: budget.enough_at_mc && say("go.limit", { n: trim("celsius", budget.enough_at_mc) }),
    label: say("go.rule", { needed: minSec(budget.working_ms - budget.spare_ms, "up") }),
  }),
});
