// Three temperatures to enter, from what was read last.

import { html } from "../../html.js";
import { number } from "../../format.js";
import { entry } from "../../parts/entry.js";
import { say } from "../../text/say.js";

const PLACES = ["resin_mc", "air_mc", "pipe_mc", "water_mc"];

/** Returns the entries. `prefix` is the path in the request, `drafts` what was typed, `last` the set read last. */
export const temperatureEntries = ({ prefix, drafts = {}, last = {} }) => html`${PLACES.map((key) => entry({
  id: key, name: `${prefix}.${key}`, label: say(`temperature.${key}`), unit: "°C", digits: 1, steps: 1000, step: 0.5, min: -30, max: 80,
  aside: last[key] === undefined || last[key] === null ? undefined : say("temperature.last", { n: number(last[key] / 1000, 1) }),
  value: drafts[`${prefix}.${key}`] ?? (last[key] === undefined || last[key] === null ? "" : number(last[key] / 1000, 1)),
}))}`;

/** Returns the three that bear on the working time, for the rule. */
export const onTheRule = (set) => [["resin", set.resin_mc], ["air", set.air_mc], ["pipe", set.pipe_mc]].map(([name, mc]) => ({ name: say(`temperature.${name}`), celsius: mc / 1000 }));
