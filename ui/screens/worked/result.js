// What came of a calculation: each value with its unit, the verdict in words.

import { number } from "../../format.js";
import { facts } from "../../parts/facts.js";
import { known, say } from "../../text/say.js";

/** What stands first on a list and at a stage, by the calculation. */
const FIRST = {
  "ovality-factor": "factor", "wall-thickness": "required_mm", "air-test-f1417": "time_s", "air-test-en1610": "time_rounded_min", "water-test-en1610": "allowed_l", "resin-wall": "mass_kg", "resin-laminate": "mass_kg",
  "working-time": "minutes", "equivalent-age": "minutes", "packer-pressure": "gauge_bar", "net-pressure": "net_kpa", "end-thrust": "force_n", geodesic: "distance_m", "station-position": "lat", atmosphere: "acceptable",
  "partial-flow": "flow_l_s", "time-to-surcharge": "minutes", "pressure-decay": "verdict",
};

/** Returns all values of a result. */
export const result = (one, output) => facts(one.out.filter(({ name }) => output[name] !== undefined && name !== "caution").map((each) => ({ label: say(`worked.out.${each.name}`), value: value(each, output[each.name]) })));

/** Returns the value that matters most, in a few words. */
export function summary(one, output) {
  const each = one?.out.find(({ name }) => name === FIRST[one.name]);
  if (!each) return "";
  const also = one.name === "station-position" ? `, ${value(one.out[1], output.lon)}` : "";
  return `${say(`worked.out.${each.name}`)}: ${value(each, output[each.name])}${also}`;
}

function value({ name, unit }, found) {
  if (found === null) return "–";
  if (Array.isArray(found)) return found.length === 0 ? "–" : found.map((field) => say(`worked.field.${field}`)).join(", ");
  if (typeof found !== "number") return known(`worked.word.${found}`) ? say(`worked.word.${found}`) : String(found);
  const short = unit.split(/[,;] | of | in | at /)[0];
  return `${figure(name, found)}${short ? `\u00a0${short}` : ""}`;
}

// Seven decimals of a degree are a centimetre; of anything else four digits are enough to act on.
const figure = (name, found) => (["lat", "lon"].includes(name) ? number(found, 7) : number(found, Math.max(0, Math.min(6, 3 - Math.floor(Math.log10(Math.abs(found) || 1))))));
