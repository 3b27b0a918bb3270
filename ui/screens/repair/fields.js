// The fields of a task, drawn by their shape: numbers between − and +, words, choices, dates, times, instruments.

import { html } from "../../html.js";
import { isoDate, number, shaped } from "../../format.js";
import { choice } from "../../parts/choice.js";
import { entry } from "../../parts/entry.js";
import { field, picks } from "../../parts/field.js";
import { pair } from "../../parts/pair.js";
import { problemOf } from "../../parts/problem-list.js";
import { say, within } from "../../text/say.js";
import { at } from "./about.js";
import { asksOf } from "./asks.js";
import { placesOf } from "./places.js";

/**
 * Returns the fields. `prefix` is the path of the values in the request, `drafts` what was typed, `values` what was recorded,
 * `aside` stands at the end of a number's label, instead of what the documents ask. `places` false leaves out the drawings of
 * what asks for a distance or a clock position.
 */
export const fieldsOf = ({ view, task, prefix, drafts = {}, values = {}, aside, places = true }) => html`${fields({ view, task, prefix, drafts, values, aside })}${places && placesOf(view, task, { values, typed: typedOf(task, prefix, drafts) })}`;

/** Returns what is typed into the fields of a task, by the field's key. */
export const typedOf = ({ fields: all }, prefix, drafts) => Object.fromEntries(all.map(({ key }) => [key, drafts[`${prefix}.${key}`]]).filter(([, typed]) => typed !== undefined));

const fields = ({ view, task, prefix, drafts, values, aside }) => task.fields.map((one) => {
  const name = `${prefix}.${one.key}`;
  const id = `${task.key}-${one.key}`;
  const label = one.optional ? say("field.optional", { label: one.label }) : one.label;
  const asked = asksOf(view, task.kind, one);
  return drawn({ one, id, name, label, view, aside: aside ?? asked.aside, start: asked.start, likely: asked.likely, typed: drafts[name], recorded: values[one.key], problem: problemOf(view.problems, id) });
});

function drawn({ one: { shape }, id, name, label, view, aside, start, likely, typed, recorded, problem }) {
  switch (shape.kind) {
    case "number": return numberField({ shape, id, name, label, aside, start, likely, typed, recorded, problem });
    case "choice": return choiceField({ shape, id, name, label, picked: typed ?? recorded });
    case "instrument": return picks({ id, name, label, value: typed ?? recorded, options: instruments(view, shape.of) });
    case "time": return timeField({ id, name, label, view, typed, recorded });
    case "date": return field({ id, name, label, type: "date", value: typed ?? recorded ?? "", problem });
    default: return field({ id, name, label, value: typed ?? recorded ?? "", problem });
  }
}

const numberField = ({ shape: { unit, per, decimals, least, most, step }, id, name, label, aside, start, likely, typed, recorded, problem }) => entry({
  id, name, label, aside, start, likely, problem, unit, digits: decimals, steps: per, step: step / per, min: least / per, max: most / per,
  value: typed ?? (recorded === undefined ? "" : number(recorded / per, decimals)),
});

/** As many letters as stand side by side in a pair, and as many answers as stand in rows; more of them are a list. */
const BESIDE = 14;
const ROWS = 3;

function choiceField({ shape: { options }, id, name, label, picked }) {
  if (options.length > ROWS) return picks({ id, name, label, value: picked, options: [{ value: "", label: say("field.choose") }, ...options.map(([value, words]) => ({ value, label: words }))] });
  if (options.some(([, words]) => words.length > BESIDE)) return choice({ legend: label, name, picked, kind: "", options: options.map(([value, words]) => ({ value, strong: words })) });
  return html`<p class="entry-label">${label}</p>${pair({ legend: label, name, picked, quiet: true, options: options.map(([value, words]) => ({ value, label: words })) })}`;
}

const instruments = (view, of) => [{ value: "", label: say("field.choose") }, ...view.repair.plan.instruments
  .filter(({ kind }) => kind === of).map(({ id, name }) => ({ value: id, label: name }))];

// A local time of the place where the device is; the form turns it into a moment.
function timeField({ id, name, label, view, typed, recorded }) {
  const offset = view.now?.offset_min ?? 0;
  const local = (ms) => new Date(ms + offset * 60_000).toISOString().slice(0, 16);
  const value = typed ?? (recorded === undefined ? local(view.now?.at_ms ?? 0) : local(recorded));
  return html`<label class="field" for="${id}">${label}<input id="${id}" name="${name}" type="datetime-local" value="${value}" data-as="time" data-offset="${offset}"></label>`;
}

/** Returns an answer in a few words, for the list of what is answered. */
export function answered(view, task) {
  const { answer } = task;
  if (answer.kind === "does_not_apply") return say("task.not_because", { because: answer.because });
  if (answer.kind === "not_right") return say("task.wrong_because", { because: answer.because });
  return task.fields.map((one) => shown(view, one, answer.values?.[one.key])).filter(Boolean).join(", ") || task.detail;
}

// A label within a sentence begins small, unless it is a sign such as H₂S.
const small = (label) => (/^[A-Z][a-z]/.test(label) ? within(label) : label);

/** Returns a value of a field in a few words, with its unit. */
export function shown(view, { label, shape }, value) {
  if (value === undefined || value === "") return "";
  switch (shape.kind) {
    case "number": return `${small(label)} ${shaped(shape, value)}`.trim();
    case "choice": return shape.options.find(([key]) => key === value)?.[1] ?? value;
    case "time": return `${small(label)} ${at(view, value)}`;
    case "date": return `${small(label)} ${isoDate(value)}`;
    case "instrument": return view.repair.plan.instruments.find(({ id }) => id === value)?.id ?? value;
    default: return String(value);
  }
}
