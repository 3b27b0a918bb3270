// Before the first stage: the plan, and the way into staging.

import { html } from "../../html.js";
import { quantity, range } from "../../format.js";
import { act, deck, usual } from "../../parts/deck.js";
import { facts } from "../../parts/facts.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { budgetOf } from "./budget.js";
import { lineView } from "../../drawings/line.js";
import { figure } from "../../drawings/svg.js";
import { lineOf } from "./drawn.js";
import { computed, frame, sending, tell, to } from "./frame.js";
import { defectClock } from "./places.js";
import { inTheWay, strip } from "./gate.js";
import { pace, spot } from "./worked.js";

export const title = () => say("planned.title");

// Where the defect lies, before there is a patch to draw.
const bareLine = ({ line, defect }) => {
  const middle = (defect.from_um + (defect.to_um ?? defect.from_um)) / 2;
  const label = say("planned.drawn", { at: quantity("m", middle), node: line.upstream.name });
  return figure({ caption: label, inside: lineView({
    label, length_m: line.length_um / 1e6, nodes: [line.upstream.name, line.downstream.name], laterals_m: line.laterals.map(({ station_um: um }) => um / 1e6), target_m: middle / 1e6, target_named: true, read_at: null,
  }) });
};

export function render(view) {
  const { line, defect, plan } = view.repair;
  return frame(view, {
    title: title(),
    main: html`${facts([
      { label: say("planned.line"), value: `${line.upstream.name} – ${line.downstream.name}`, note: line.asset },
      { label: say("planned.defect"), value: defect.observations[0]?.words ?? say("planned.by_hand"), note: html`<span class="nowrap">${range("m", defect.from_um, defect.to_um)}</span>` },
      ...(plan ? [{ label: say("planned.patch"), value: plan.patch.name }, { label: say("planned.packer"), value: plan.packer.name }, { label: say("planned.resin"), value: plan.resin.name }] : []),
    ])}<div class="planned-draw">${plan ? lineOf(view) : bareLine(view.repair)}${defectClock(view.repair, plan ? { seam: plan.choice.seam_hour, covered: computed(view).covered } : {})}</div>
    ${plan && section({ id: "estimate", title: say("planned.estimate"), inside: html`${budgetOf(computed(view).budget)}${pace(view.pace)}` })}${spot(view.spot)}
    ${inTheWay(view)}${plan && way({ label: say("planned.change"), href: to(view, "plan") })}${plan && way({ label: say("paper.way"), note: say("paper.way_note"), href: to(view, "paper") })}${sending(view)}`,
    foot: plan
      ? deck({ gate: strip(view, say("stage.staging")), more: usual({ repair: view.repair.id }), act: act({ label: say("planned.begin"), note: say("planned.begin_note"), does: tell(view, { command: "go_on" }), then: to(view) }) })
      : deck({ act: act({ label: say("planned.make"), note: say("planned.make_note"), href: to(view, "plan") }) }),
  });
}
