// One line of an inspection: which is the defect? One or several observations are picked.

import { html } from "../html.js";
import { between, figure, isoDate, quantity, unitOf } from "../format.js";
import { form } from "../parts/action.js";
import { choice } from "../parts/choice.js";
import { act, deck } from "../parts/deck.js";
import { facts } from "../parts/facts.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { field } from "../parts/field.js";
import { section } from "../parts/section.js";
import { say } from "../text/say.js";
import { drawn } from "./line/drawn.js";
import { extent, pickedSide } from "./line/picked.js";
import { advice, clock, folded, placed, stations } from "./line/seen.js";
import { opened, sameHour } from "./opened.js";

export const title = () => say("line.title");

export function render(view) {
  const { listed } = view;
  const id = `open-${view.file}-${view.params.index}`;
  const typed = view.drafts?.[id] ?? {};
  const picked = [typed.observations ?? []].flat().map(Number);
  const { shown, aside } = folded(view.observations);
  const chosen = shown.filter((one) => picked.includes(one.index));
  return page({
    mast: mast({ title: title(), strong: say("today.line", { from: listed.upstream, to: listed.downstream }), between: ", ", where: listed.street, side: [listed.line] }),
    main: html`<main>${form({ id, kind: "intake", then: "#/repair/{repair}/plan", does: { do: "open_from_inspection", file: view.file, index: Number(view.params.index) }, inside: html`
      <div class="intake-draw">${drawn(view, shown, picked)}</div>
      <div class="intake-list">${choice({ legend: say("line.observations"), aside: say("line.read", { n: shown.length }), name: "observations", several: true, as: "number-list", picked: picked.map(String), kind: "section", options: shown.map(row) })}${others(aside)}</div>
      <div class="intake-side">${section({ id: "picked", title: say("line.picked"), kind: "", inside: pickedSide(view, shown, picked) })}
        ${sameHour(view, typed)}${unsaid(listed, typed)}${opened(view.contracts, typed)}${file(view)}</div>` })}</main>`,
    deck: deck({ act: chosen.length > 0
      ? act({ label: say("line.act", { n: chosen.length }), note: [extent(chosen, "upstream_um"), ...new Set(chosen.map(clock).filter(Boolean))].join(", "), form: id })
      : act({ label: say("line.pick"), note: say("line.pick_note"), href: "#/by-hand" }) }),
  });
}

// What identifies the pipe and the file does not say: without it no certificate can be made, and it can't be told later.
const IDENTIFIES = ["asset", "material"];

function unsaid({ line: asset, material, street }, typed) {
  const missing = Object.entries({ asset, material, street }).filter(([, said]) => !said).map(([name]) => name);
  return missing.length > 0 && section({ id: "unsaid", title: say("line.unsaid"), inside: html`<p class="soft">${say("line.unsaid_text")}</p>${missing.map((name) =>
    field({ id: `unsaid-${name}`, name: `unsaid.${name}`, label: say(`hand.${name}`), value: typed[`unsaid.${name}`] ?? "", needed: IDENTIFIES.includes(name) }))}` });
}

const bare = (from, to) => (from === to ? figure("m", from) : between("m", from, to));
const row = (one) => ({ value: String(one.index), strong: one.words, note: [one.code, advice(one), one.remark].filter(Boolean).join(" · "), at: [stations(one) ? bare(...stations(one)) : "?", clock(one) ?? "", unitOf("m")] });

const others = (rows) => rows.length > 0 && html`<details><summary>${say("line.ends", { n: rows.length })}</summary><ul>${rows.map((one) =>
  html`<li>${stations(one) && placed(stations(one))} ${one.words} (${one.code})</li>`)}</ul></details>`;

const file = ({ name, listed, against_flow: against, reference_point: zero }) => section({ id: "file", title: say("line.file"), inside: facts([
  { label: say("line.name"), value: name },
  { label: say("line.coding"), value: "EN 13508-2" },
  { label: say("line.inspected"), value: isoDate(listed.date), note: say(against === null ? "line.direction_unknown" : against ? "line.upstream" : "line.downstream") },
  ...(zero ? [{ label: say("line.zero"), value: say("line.code", { code: `ABC ${zero}` }) }] : []),
  { label: say("line.line"), value: [listed.length_um && quantity("m", listed.length_um), listed.height_um && `DN ${listed.height_um / 1000}`, listed.material].filter(Boolean).join(", ") },
]) });
