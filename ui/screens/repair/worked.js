// The calculations that belong to a stage: what was worked out, and the way to work it out.

import { section } from "../../parts/section.js";
import { html } from "../../html.js";
import { facts } from "../../parts/facts.js";
import { note } from "../../parts/note.js";
import { way } from "../../parts/way.js";
import { number, quantity, span } from "../../format.js";
import { say } from "../../text/say.js";

/** Which calculations stand at which stage. */
const AT = {
  plan: ["wall-thickness", "resin-laminate", "resin-wall", "time-to-surcharge", "station-position"],
  staging: ["atmosphere", "time-to-surcharge", "partial-flow"],
  go: ["time-to-surcharge"],
  hold: ["pressure-decay", "packer-pressure", "net-pressure", "equivalent-age"],
  verification: ["air-test-en1610", "air-test-f1417", "water-test-en1610", "end-thrust"],
};

/** Returns the rows of a stage of what the core shows of a repair. */
export const worked = ({ repair, worked: kept }, stage) => section({ id: `worked-${stage}`, title: say("worked.title"), inside: html`${AT[stage].map((name) => way({
  label: say(`worked.name.${name}`), note: kept[name] ?? say(`worked.what.${name}`), href: `#/repair/${repair.id}/checks/${name}`,
}))}${way({ label: say("worked.all"), href: `#/repair/${repair.id}/checks` })}` });

/** Returns how long this crew takes, or nothing where the core does not say. */
export function pace(shown) {
  if (!shown) return "";
  const told = ({ median_ms: median, ninetieth_ms: ninetieth, source }) => (source.from === "estimate"
    ? say("pace.estimate", { median: span(median, "up") })
    : say("pace.both", { median: span(median, "up"), ninetieth: span(ninetieth, "up") }));
  return html`<p class="soft">${say("pace.crew", { crew: shown.crew, wet: told(shown.wet_out), n_wet: shown.wet_out.source.recorded, push: told(shown.push), n_push: shown.push.source.recorded })}
    ${shown.chance_pct === null ? say("pace.no_chance") : html`<b>${say("pace.chance", { n: shown.chance_pct })}</b>`}</p>`;
}

/** Returns how long the line above stores the inflow against what is needed, where that was worked out. */
export const storing = (shown) => (shown ? note({ lead: say("storing.lead"), text: shown.lasts_ms === null ? say("storing.dry") : say("storing.enough", { lasts: span(shown.lasts_ms), needed: span(shown.needed_ms, "up") }) }) : "");

/** Returns where the patch lies on the map, and how far from there the phone stands. */
export function spot(shown) {
  if (!shown) return "";
  const metres = (mm) => quantity("m", mm * 1000, 1);
  const said = { true: "spot.plausible", false: "spot.far" }[shown.plausible] ?? "spot.unknown";
  return section({ id: "spot", title: say("spot.title"), inside: facts([
    { label: say("spot.place"), value: `${number(shown.lat_e7 / 1e7, 6)}, ${number(shown.lon_e7 / 1e7, 6)}` },
    ...(shown.phone_to_node_mm === null ? [{ label: say("spot.phone"), value: say("spot.no_phone") }] : [
      { label: say("spot.phone"), value: metres(shown.phone_to_patch_mm) },
      { label: say("spot.node"), value: metres(shown.phone_to_node_mm), note: say(said) }]),
    { label: say("spot.longer"), value: metres(shown.longer_than_map_mm) },
  ]) });
}
