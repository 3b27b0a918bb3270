// A lateral under the patch is opened after full cure: how far, and whether the coupon is out.

import { html } from "../../html.js";
import { quantity } from "../../format.js";
import { form } from "../../parts/action.js";
import { act, deck } from "../../parts/deck.js";
import { entry } from "../../parts/entry.js";
import { note } from "../../parts/note.js";
import { faces } from "../../parts/faces.js";
import { yesNo } from "../../parts/pair.js";
import { say } from "../../text/say.js";
import { lineOf } from "./drawn.js";
import { frame, tell, to, upTo } from "./frame.js";

export const title = () => say("lateral.title");

export function render(view) {
  const index = Number(view.params.key ?? view.next.key ?? 0);
  const lateral = view.repair.line.laterals[index];
  const typed = view.drafts?.lateral ?? {};
  const { contract } = view.repair.plan;
  const early = view.cure && !view.cure.reached;
  return frame(view, {
    title: title(), mainKind: "stage stack",
    main: html`<p class="lead">${say("lateral.which", { at: quantity("m", lateral.station_um), node: view.repair.line.upstream.name, hour: lateral.clock })}</p>
      ${lineOf(view, { at_m: lateral.station_um / 1e6 })}${lateral.clock >= 1 && lateral.clock <= 12 && faces({ marks: [{ from: lateral.clock, kind: "lateral" }] })}
      ${early && note({ lead: say("cure.caution"), text: say("lateral.early", { at: upTo(view, view.cure.until_ms) }) })}
      ${form({ id: "lateral", then: to(view), does: tell(view, { command: "report", happening: { what: "lateral_opened", lateral: index } }), inside: html`
        ${entry({ id: "open", name: "command.happening.open_pct", label: say("lateral.open"), aside: say("lateral.asked", { least: contract.lateral_open_least_pct.value, most: contract.lateral_open_most_pct.value }), unit: "%", step: 1, min: 0, max: 150, value: typed["command.happening.open_pct"] ?? "100" })}
        <p class="entry-label">${say("lateral.coupon")}</p>${yesNo({ legend: say("lateral.coupon"), name: "command.happening.coupon", picked: typed["command.happening.coupon"], quiet: true })}` })}
      ${note({ lead: say("caution"), text: say("lateral.caution") })}`,
    foot: deck({ act: act({ label: say("lateral.record"), note: say("tasks.records"), mark: "tick", form: "lateral" }) }),
  });
}
