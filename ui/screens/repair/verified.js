// Verification: the full-cure clock and the patch as it was found.

import { html } from "../../html.js";
import { number, span } from "../../format.js";
import { edges } from "../../drawings/edges.js";
import { figure } from "../../drawings/svg.js";
import { section } from "../../parts/section.js";
import { ends, tape } from "../../parts/tape.js";
import { say } from "../../text/say.js";
import { at, attempt, computed } from "./frame.js";

/** Returns what stands above the tasks of the verification. */
export const verified = (view) => html`${view.cure && cure(view)}${found(view)}`;

function cure(view) {
  const { from_ms: from, until_ms: until, reached } = view.cure;
  const hours = (until - from) / 3600e3;
  const gone = Math.min(hours, ((view.now?.at_ms ?? from) - from) / 3600e3);
  return section({
    id: "cure", title: say(reached ? "verified.cured" : "verified.cure_from", { at: at(view, until) }), kind: "",
    inside: html`${tape({ n: hours, label: say("verified.cure_tape", { left: span(Math.max(0, until - (view.now?.at_ms ?? 0))) }), parts: [{ kind: "done", m: gone }] })}
      ${ends([say("verified.from", { at: at(view, from) }), reached ? say("verified.reached") : say("verified.to_go", { span: span(until - (view.now?.at_ms ?? 0)) })])}${!reached && html`<p><b>${say("cure.caution")}</b></p>`}`,
  });
}

function found(view) {
  const [patch] = computed(view).patches;
  const folds = attempt(view).answers.folds?.answer.values;
  const fold = folds?.height_um > 0 ? [{ kind: "fold", at_m: (patch.from_um + patch.to_um) / 2e6, hour: folds.hour ?? 6, says: say("verified.fold", { n: number(folds.height_um / 1000, 0) }) }] : [];
  const laterals = computed(view).covered.map((index) => view.repair.line.laterals[index])
    .map((lateral) => ({ kind: "lateral", at_m: lateral.station_um / 1e6, hour: lateral.clock, says: say("verified.lateral", { hour: lateral.clock }) }));
  return figure({
    inside: edges({ from_m: patch.from_um / 1e6, to_m: patch.to_um / 1e6, found: [...fold, ...laterals], label: say("verified.drawing") }),
    caption: say("verified.caption"),
  });
}
