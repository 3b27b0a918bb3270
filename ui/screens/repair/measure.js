// Measure all three just before joining. No go can't be waived; its way out is said with it.

import { html } from "../../html.js";
import { inRecorded, minSec, short } from "../../format.js";
import { figure } from "../../drawings/svg.js";
import { tempRule } from "../../drawings/temp-rule.js";
import { form } from "../../parts/action.js";
import { act, deck, usual } from "../../parts/deck.js";
import { note } from "../../parts/note.js";
import { say } from "../../text/say.js";
import { attempt, frame, tell, to } from "./frame.js";
import { inTheWay } from "./gate.js";
import { onTheRule, temperatureEntries } from "./temps.js";
import { pace, storing, worked } from "./worked.js";

export const title = () => say("go.title");

const FORM = "second-go";
const PREFIX = "command.temperatures";

export function render(view) {
  const last = attempt(view)?.temperatures.at(-1)?.[1] ?? view.repair.plan.choice.temperatures;
  const broken = view.refusal?.broken ?? [];
  const noTime = broken.find(({ rule }) => rule === "no_time");
  return frame(view, {
    title: title(), refusal: false,
    main: html`${noTime && noGo(view, noTime)}${inTheWay(view, broken.filter((one) => one !== noTime), "refused")}
      <p class="lead-in">${say("go.ask")}</p>
      ${form({ id: FORM, kind: "stack section-gap", does: tell(view, { command: "second_go" }), then: to(view, "go"), inside: temperatureEntries({ prefix: PREFIX, drafts: view.drafts?.[FORM], last, fresh: true, problems: view.problems }) })}
      ${note({ text: say("go.fresh", { min: view.repair.plan.contract.temperatures_age_ms.value / 60_000 }) })}${pace(view.pace)}${storing(view.go?.storing)}${worked(view, "go")}`,
    foot: deck({ more: usual({ repair: view.repair.id }), act: act({ label: say("go.act"), note: say("go.act_note"), form: FORM }) }),
  });
}

function noGo(view, { values, way_out: out }) {
  const typed = view.drafts?.[FORM] ?? {};
  const set = Object.fromEntries(["resin_mc", "air_mc", "pipe_mc"].map((key) => [key, (inRecorded("celsius", typed[`${PREFIX}.${key}`] ?? "") ?? NaN) * 1000]));
  const limit = view.go?.budget?.enough_at_mc;
  return html`<section class="note problems" aria-labelledby="no-go" tabindex="-1" data-focus><h2 id="no-go">${say("go.no", { short: minSec(values.short_ms, "up") })}</h2>
    ${Object.values(set).every(Number.isFinite) && limit && figure({ flush: true, inside: tempRule({ id: "no-go-rule", temps: onTheRule(set), limit: limit / 1000, limit_says: say("go.limit", { n: short("celsius", limit) }), label: say("go.rule") }) })}
    <p><b>${say("refusal.way_out")}</b> ${out}</p><p class="soft">${say("go.never")}</p></section>`;
}
