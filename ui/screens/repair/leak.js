// Whether the packer leaks: the core's verdict from the readings, how fast, and how long the pressure lasts.

import { html } from "../../html.js";
import { figure, minSec, quantity } from "../../format.js";
import { conditions } from "../../parts/conditions.js";
import { readings } from "../../parts/readings.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { at, nowOf, to } from "./frame.js";

const STATES = { outside_missing: "open", too_few_readings: "open", steady: "met", cooling_only: "met", leaking: "failed" };

/** Returns the section of the hold that says whether the packer leaks. */
export function leak(view) {
  const { leak: found, released_ms: released } = view.hold;
  const { verdict } = found;
  return html`<section class="section hold-leak"><h2>${say("leak.title")} <small>${found.since_ms !== null && say("leak.of", { n: found.readings, at: at(view, found.since_ms) })}</small></h2>
    ${conditions([{ state: STATES[verdict], text: say(`leak.${verdict}`), note: say(`leak.${verdict}_note`, { n: found.missing }) }])}
    ${found.per_hour_pa !== null && readings([lost(found), ...(found.limit_ms === null ? [] : [limit(view, found)])], "two")}
    ${verdict === "outside_missing" && !released && way({ label: say("leak.enter"), note: say("leak.enter_note"), href: to(view, "reading") })}</section>`;
}

const bar = (pa) => quantity("bar", pa, 3);

function lost({ per_hour_pa: pa, low_pa: low, high_pa: high }) {
  const [value, unit] = bar(pa).split("\u00a0");
  return { label: say("leak.per_hour"), value, unit, then: say("leak.between", { low: figure("bar", low, 3), high: bar(high) }) };
}

function limit(view, { limit_ms: ms }) {
  const left = ms - nowOf(view);
  return { label: say("leak.limit"), value: left > 0 ? minSec(left) : say("leak.limit_now"), late: left <= 0, then: say(ms > view.hold.earliest_release_ms ? "leak.limit_after" : "leak.limit_at", { at: at(view, ms) }) };
}
