// A correction: what was recorded, what it should have been, and why. The old value stays on record.

import { grouped } from "../../group.js";
import { html } from "../../html.js";
import { shaped } from "../../format.js";
import { form } from "../../parts/action.js";
import { act, deck } from "../../parts/deck.js";
import { facts } from "../../parts/facts.js";
import { lines } from "../../parts/field.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { fieldsOf, shown } from "./fields.js";
import { at, attempt, frame, tell, to } from "./frame.js";

/** The values of a reading that can be corrected. */
const READING = {
  gauge_pa: { key: "gauge_pa", label: "correct.gauge", shape: { kind: "number", unit: "bar", per: 100_000, decimals: 2, least: 0, most: 2_000_000, step: 1_000 } },
  pipe_mc: { key: "pipe_mc", label: "correct.pipe", shape: { kind: "number", unit: "°C", per: 1_000, decimals: 1, least: -40_000, most: 80_000, step: 500 } },
  water_mc: { key: "water_mc", label: "correct.water", shape: { kind: "number", unit: "°C", per: 1_000, decimals: 1, least: -40_000, most: 80_000, step: 500 } },
};

export const title = () => say("correct.title");

export function render(view) {
  const one = view.params.key && all(view).find(({ key }) => key === view.params.key);
  return one ? asked(view, one) : list(view);
}

/** Returns every recorded value: { key, of, label, field, value, when }. */
function all(view) {
  const tasks = view.tasks.filter(({ answer }) => answer?.kind === "done").flatMap((task) => task.fields.filter(({ key }) => task.answer.values?.[key] !== undefined)
    .map((field) => ({ key: `${task.key}:${field.key}`, of: { kind: "task", task: task.key, field: field.key }, label: task.label, field, value: task.answer.values[field.key], when: task.answered_ms })));
  const readings = attempt(view)?.readings.flatMap((reading, index) => Object.values(READING).filter(({ key }) => reading[key] !== null)
    .map((field) => ({ key: `${index}:${field.key}`, of: { kind: "reading", index, field: field.key }, label: say("correct.reading", { n: index + 1 }), field: { ...field, label: say(field.label) }, value: reading[field.key], when: reading.at.moment.at_ms }))) ?? [];
  return [...tasks, ...readings];
}

const list = (view) => frame(view, {
  title: title(), mainKind: "stack spread",
  main: html`${note({ lead: say("correct.kept"), text: say("correct.kept_text") })}${grouped(all(view), ({ label }) => label).map(([label, values], i) => section({ id: `values-${i}`, title: label, aside: at(view, values[0].when), inside: values.map((one) =>
    way({ label: one.field.label, note: text(view, one), href: to(view, `correct/${encodeURIComponent(one.key)}`) })) }))}`,
  foot: deck({ act: act({ label: say("review.back"), mark: "back", note: say("correct.nothing"), href: to(view) }) }),
});

const text = (view, { field, value }) => shown(view, { ...field, label: "" }, value) || String(value);

function asked(view, one) {
  const id = `correct-${one.key}`;
  const drafts = view.drafts?.[id] ?? {};
  return frame(view, {
    title: title(), mainKind: "stack",
    main: html`${facts([{ label: one.label, value: text(view, one), note: at(view, one.when) }])}
      ${form({ id, then: to(view, "correct"), does: tell(view, { command: "correct", of: one.of }), inside: html`${fieldsOf({ view, task: { key: "corrected", fields: [{ ...one.field, key: "value", optional: false }] }, prefix: "command", drafts, aside: figure(one) })}
        ${lines({ id: "correct-why", name: "command.reason", label: say("correct.why"), value: drafts["command.reason"] ?? "", rows: 2, needed: true })}` })}
      ${note({ lead: say("correct.kept"), text: say("correct.kept_text") })}`,
    foot: deck({ act: act({ label: say("correct.act"), note: say("review.both_printed"), mark: "tick", form: id }) }),
  });
}

const figure = ({ field: { shape }, value }) => (shape.kind === "number" ? say("correct.was", { n: shaped(shape, value) }) : undefined);
