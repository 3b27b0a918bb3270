// One reading: pressure, pipe wall, water, entered in gloves.

import { html } from "../../html.js";
import { number, range } from "../../format.js";
import { form } from "../../parts/action.js";
import { act, deck } from "../../parts/deck.js";
import { entry } from "../../parts/entry.js";
import { field } from "../../parts/field.js";
import { note } from "../../parts/note.js";
import { say } from "../../text/say.js";
import { at, attempt, frame, tell, to } from "./frame.js";

export const title = () => say("reading.title");

const FORM = "reading";
const NAME = "command.happening";

export function render(view) {
  const { hold } = view;
  const last = hold.readings.at(-1);
  const typed = view.drafts?.[FORM] ?? {};
  const gauge = attempt(view).answers.instruments?.answer.values?.gauge ?? "";
  const measured = (key, label, unit, per, digits, step, value) => entry({
    id: key, name: `${NAME}.${key}`, label, unit, digits, steps: per, step, start: value,
    aside: value === undefined ? undefined : say("reading.last", { n: value, at: at(view, last.at_ms) }), value: typed[`${NAME}.${key}`] ?? value ?? "",
  });
  const shown = (value, per, digits) => (value === null || value === undefined ? undefined : number(value / per, digits));
  return frame(view, {
    title: title(),
    main: form({
      id: FORM, then: to(view), does: tell(view, { command: "report", happening: { what: "reading", by: "hand", gauge } }),
      inside: html`${measured("gauge_pa", say("reading.pressure"), "bar", 100_000, 2, 0.01, number(last.gauge_pa / 1e5, 2))}
        ${inside(view, typed)}
        ${measured("pipe_mc", say("reading.pipe"), "°C", 1000, 1, 0.5, shown(lastOf(hold, "pipe_mc"), 1000, 1))}
        ${measured("upstream_um", say("reading.water"), "m", 1_000_000, 2, 0.01, shown(hold.upstream_um, 1e6, 2))}
        ${field({ id: "why", name: `${NAME}.why`, label: say("reading.why"), value: typed[`${NAME}.why`] ?? "" })}`,
    }),
    foot: deck({ act: act({ label: say("reading.act"), note: say("reading.act_note", { gauge: gauge || say("reading.no_gauge") }), mark: "tick", form: FORM }) }),
  });
}

const lastOf = (hold, key) => [...hold.readings].reverse().find((reading) => reading[key] !== null)?.[key];

// Says before it is sent whether the pressure lies in the window; it is recorded either way.
function inside(view, typed) {
  const { window } = view.hold;
  const bar = Number((typed[`${NAME}.gauge_pa`] ?? "").replace(",", "."));
  const out = bar > 0 && (bar < window.lower_pa / 1e5 || bar > window.upper_pa / 1e5);
  const says = range("bar", window.lower_pa, window.upper_pa);
  return out ? note({ lead: say("reading.outside"), text: say("reading.outside_text", { range: says }) }) : html`<p class="soft">${say("reading.inside", { range: says })}</p>`;
}
