// One line of an inspection: which is the defect? One or several observations are picked.

import { html } from "../html.js";
import { hours, number, quantity } from "../format.js";
import { clockFace } from "../drawings/clock-face.js";
import { defectsView } from "../drawings/line.js";
import { figure } from "../drawings/svg.js";
import { action } from "../parts/action.js";
import { choice } from "../parts/choice.js";
import { act, deck } from "../parts/deck.js";
import { facts } from "../parts/facts.js";
import { field } from "../parts/field.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { pair, yesNo } from "../parts/pair.js";
import { section } from "../parts/section.js";
import { say } from "../text/say.js";

export const title = () => say("line.title");

const ENDS = /^(BCD|BCE|BDC)/;

export function render(view) {
  const { listed } = view;
  const id = `open-${view.file}-${view.params.index}`;
  const typed = view.drafts?.[id] ?? {};
  const picked = [typed.observations ?? []].flat().map(Number);
  const rows = folded(view.observations);
  const shown = rows.filter(({ code }) => !ENDS.test(code) && !code.startsWith("BD"));
  return page({
    mast: mast({ title: title(), strong: say("today.line", { from: listed.upstream, to: listed.downstream }), where: listed.street, side: [listed.line] }),
    main: html`<main><form id="${id}" class="intake" data-request="${JSON.stringify({ do: "open_from_inspection", file: view.file, index: Number(view.params.index) })}" data-then="#/repair/{repair}/plan" novalidate>
      <div class="intake-draw">${drawn(view, shown, picked)}</div>
      <div class="intake-list">${choice({
        legend: say("line.observations"), aside: say("line.read", { n: shown.length }), name: "observations", several: true, as: "number-list", picked: picked.map(String), kind: "section",
        options: shown.map((one) => ({ value: String(one.index), strong: one.words, note: [one.code, advice(one), one.remark].filter(Boolean).join(" · "), at: [where(one), clock(one)] })),
      })}${others(rows)}</div>
      <div class="intake-side">${section({ id: "picked", title: say("line.picked"), kind: "", inside: face(shown, picked) })}
        ${section({ id: "repair", title: say("line.repair"), inside: html`
          <input type="hidden" name="contract" value="${typed.contract ?? "QM-2026-31"}">
          ${field({ id: "number", label: say("line.number"), value: typed.number ?? "" })}${field({ id: "video_before", label: say("line.video"), value: typed.video_before ?? "" })}
          <p class="entry-label">${say("line.rehearsal")}</p>${yesNo({ legend: say("line.rehearsal"), name: "rehearsal", picked: typed.rehearsal ?? "no", quiet: true })}
          ${ambiguous(shown, picked) && html`<p class="entry-label">${say("line.same_hour")}</p>${pair({ legend: say("line.same_hour"), name: "same_hour", quiet: true, picked: typed.same_hour, options: [{ value: "all_round", label: say("line.all_round") }, { value: "one_spot", label: say("line.one_spot") }] })}`}` })}
        ${section({ id: "file", title: say("line.file"), inside: facts([
          { label: say("line.name"), value: view.name }, { label: say("line.coding"), value: "EN 13508-2" },
          { label: say("line.inspected"), value: listed.date, note: view.against_flow === null ? say("line.direction_unknown") : say(view.against_flow ? "line.upstream" : "line.downstream") },
          { label: say("line.line"), value: [listed.length_um && quantity("m", listed.length_um), listed.height_um && `DN ${listed.height_um / 1000}`, listed.material].filter(Boolean).join(", ") },
        ]) })}</div></form></main>`,
    deck: deck({ act: picked.length > 0
      ? act({ label: say("line.act", { n: picked.length }), note: extent(shown, picked), form: id })
      : action({ href: "#/by-hand", kind: "act", inside: html`<b>${say("line.pick")}</b><small>${say("line.pick_note")}</small>` }) }),
  });
}

// A continuous defect stands in two rows of the file; it is one on the screen.
const folded = (all) => all.filter((one) => one.other_end === null || one.index < one.other_end)
  .map((one) => (one.other_end === null ? one : { ...one, until: all[one.other_end] }));

const ordered = (a, b) => [a, b].sort((x, y) => x - y);
const stations = (one) => (one.until ? ordered(one.upstream_um ?? one.counted_um, one.until.upstream_um ?? one.until.counted_um) : [one.upstream_um ?? one.counted_um, one.upstream_um ?? one.counted_um]);
const where = (one) => { const [from, to] = stations(one); return from === null ? "?" : from === to ? `${number(from / 1e6, 2)} m` : `${number(from / 1e6, 2)} – ${number(to / 1e6, 2)} m`; };
const clock = (one) => [one.clock_from && hours(one.clock_from, one.clock_to ?? one.clock_from), one.downstream_um !== null && say("line.from_below", { m: number(one.downstream_um / 1e6, 2) })].filter(Boolean).join(" · ");
const advice = ({ advice: { advice: says }, advice_words: why, lateral }) => (says === "yes" || lateral ? "" : say(`advice.${says}`, { why }));
const ambiguous = (shown, picked) => shown.some((one) => picked.includes(one.index) && one.clock_from && one.clock_from === one.clock_to);

function extent(shown, picked) {
  const all = shown.filter((one) => picked.includes(one.index)).flatMap(stations);
  return say("line.extent", { from: number(Math.min(...all) / 1e6, 2), to: number(Math.max(...all) / 1e6, 2) });
}

function drawn(view, shown, picked) {
  const { listed } = view;
  if (!listed.length_um || view.against_flow === null) return note({ text: say("line.no_drawing") });
  const marks = shown.filter((one) => stations(one)[0] !== null).slice(0, 12).map((one) => ({
    at_m: (stations(one)[0] + stations(one)[1]) / 2e6, name: one.words.split(",")[0].toLowerCase(), picked: picked.includes(one.index),
    arc: one.clock_from && one.clock_to && one.clock_from !== one.clock_to ? [one.clock_from, one.clock_to] : undefined,
    dots: one.clock_from && !(one.clock_to && one.clock_from !== one.clock_to) ? [one.clock_from] : undefined,
  }));
  return figure({ inside: defectsView({ nodes: [listed.upstream, listed.downstream], length_m: listed.length_um / 1e6, observations: marks, label: say("line.drawing", { n: shown.length }) }), caption: say("line.caption", { node: listed.upstream }) });
}

const face = (shown, picked) => html`<figure class="face-row">${clockFace({
  direction: "downstream",
  marks: shown.filter((one) => one.clock_from && (picked.includes(one.index) || one.lateral)).map((one) => ({ from: one.clock_from, to: one.clock_to ?? undefined, kind: one.lateral ? "lateral" : one.clock_to && one.clock_to !== one.clock_from ? "defect" : "dot" })),
})}<figcaption><b>${say("face.downstream")}</b><br>${picked.length > 0 ? shown.filter((one) => picked.includes(one.index)).map((one) => one.words).join("; ") : say("line.none_picked")}</figcaption></figure>`;

const others = (rows) => { const ends = rows.filter(({ code }) => ENDS.test(code) || code.startsWith("BD")); return ends.length > 0 && html`<details><summary>${say("line.ends", { n: ends.length })}</summary><ul>${ends.map((one) => html`<li>${where(one)} ${one.words} (${one.code})</li>`)}</ul></details>`; };
