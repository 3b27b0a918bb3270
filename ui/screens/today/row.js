// The row of one repair, in the lists of the first screen and in the search.

import { quantity } from "../../format.js";
import { html } from "../../html.js";
import { way } from "../../parts/way.js";
import { say, within } from "../../text/say.js";

/** Returns the row: its line, where, which, and what is to be done with it. */
export const row = (one) => way({
  href: `#/repair/${one.repair}`,
  label: one.upstream || one.downstream ? say("today.line", { from: one.upstream, to: one.downstream }) : one.number,
  note: html`${one.rehearsal && html`<b>${say("rehearsal.word")}</b> · `}${[one.street, one.number, state(one)].filter(Boolean).join(" · ")}`,
});

function state(one) {
  const what = one.defect ? say("today.defect", { dn: one.dn_um / 1000, what: one.defect, at: quantity("m", one.station_um) }) : `DN ${one.dn_um / 1000}.`;
  switch (one.status) {
    case "review": return offPlan(one);
    case "underway": return say("today.underway_at", { n: one.attempt, stage: within(say(`stage.${one.stage}`)) });
    case "between": return say("today.between", { n: one.attempt });
    case "issued": return say("today.issued", { number: one.certificate });
    case "damaged": return say("status.damaged");
    default: return `${what} ${say(`status.${one.status}`)}`;
  }
}

function offPlan({ off_plan: n, asks }) {
  if (n === 0) return say("today.on_plan");
  const off = say("today.off", { n });
  return asks.length === 0 ? off : say("today.off_asks", { off, n: asks.length, first: within(say(`rule.name.${asks[0]}`)) });
}
