// Example screens made of the parts, with the figures of the invented world. For looking at, never shipped.

import { html } from "/html.js";
import { page } from "/parts/page.js";
import { mast } from "/parts/mast.js";
import { others } from "/parts/others.js";
import { clock } from "/parts/clock.js";
import { count } from "/parts/count.js";
import { ends, pending, tape } from "/parts/tape.js";
import { budget, sum } from "/parts/budget.js";
import { act, deck, gate, usual } from "/parts/deck.js";
import { held, hold } from "/parts/hold.js";
import { conditions } from "/parts/conditions.js";
import { readings } from "/parts/readings.js";
import { facts } from "/parts/facts.js";
import { section } from "/parts/section.js";
import { way } from "/parts/way.js";
import { doNow, note } from "/parts/note.js";
import { alarm } from "/parts/alarm.js";
import { entry } from "/parts/entry.js";
import { choice } from "/parts/choice.js";
import { pair, yesNo } from "/parts/pair.js";
import { field, file, lines, picks } from "/parts/field.js";
import { table } from "/parts/table.js";
import { light } from "/parts/light.js";
import { liveCure, liveHold } from "/parts/live.js";
import { problemList, refusalNote } from "/parts/problem-list.js";
import { dialog } from "/parts/dialog.js";
import { figure } from "/drawings/svg.js";
import { defectsView, lineView } from "/drawings/line.js";
import { detail } from "/drawings/detail.js";
import { faces } from "/parts/faces.js";
import { tempRule } from "/drawings/temp-rule.js";
import { holdChart } from "/drawings/hold-chart.js";
import { edges } from "/drawings/edges.js";
import { places } from "/drawings/places.js";
import { scale } from "/drawings/scale.js";
import { sumRule } from "/drawings/sum-rule.js";
import { chain } from "/drawings/chain.js";
import { timeLine } from "/drawings/time-line.js";

const MIN = 60e3;
// 14 Oct 2026, 10:00 in Quillmere, two hours ahead of UTC.
const TEN = Date.UTC(2026, 9, 14, 8);
const when = (hour, minute, second = 0) => TEN + ((hour - 10) * 60 + minute) * MIN + second * 1000;

const tallow = { strong: "MH 214", where: "Tallow Street" };
const tallowLine = (more) => lineView({ nodes: ["MH 214", "MH 215"], length_m: 46.8, laterals_m: [6.35, 24.1], hose_from: "start", rope_from: "end", label: "Line from MH 214 to MH 215", ...more });
const placed = { packer: { at_m: 18.57, length_m: 1 }, patch: { at_m: 18.57, length_m: 0.6 }, target_m: 18.57 };

const chart = (more) => holdChart({ id: "c", readings: [[10, 31, 1.25], [10, 39, 1.24], [10, 47, 1.23], [11, 0, 1.22], [11, 8, 1.22], [11, 17, 1.21]].map(([h, m, bar]) => ({ at_ms: when(h, m), bar })),
  window_bar: [1.1, 1.4], gaps: [{ from_ms: when(10, 47), to_ms: when(11, 0) }], now_ms: when(11, 24), release_ms: when(11, 44), from_ms: when(10, 28), to_ms: when(11, 48), offset_min: 120, label: "Pressure against time; window 1.10 to 1.40 bar", ...more });

const wetOut = (rehearsal) => page({ rehearsal,
  mast: mast({ ...(rehearsal ? { strong: "RH 1", where: "practice pipe" } : tallow), title: "Wet-out", side: [rehearsal ? "RH-09" : "R-07", "13:17"], stage: 3, rehearsal }),
  main: html`<main class="stage">${clock({ what: "Working time left", ms: 18 * MIN + 42e3, note: "to 13:36" })}
    ${tape({ n: 34, label: "18.7 of 34 minutes left", parts: [{ kind: "full", m: 18.7 }, { kind: "gone", m: 15.3 }], marks: [{ at: 15.72, name: 1 }, { at: 9, name: 2 }, { at: 5, name: 3 }] })}
    <p class="by-what">At the latest, to keep the margin:</p><ol class="by"><li><b>1</b> way in <strong>13:20</strong></li><li><b>2</b> inflate <strong>13:27</strong></li><li><b>3</b> on target <strong>13:31</strong></li></ol>
    ${figure({ kind: "only-tall", inside: tallowLine(placed) })}</main>`,
  deck: deck({ more: usual({ repair: "R-07", ago: { min: 0, href: "#ago" } }), act: hold({ label: "Target pressure reached", note: "Hold 2 s. The only tap now.", does: { do: "report" } }) }) });

const plan = (refused) => page({
  mast: mast({ strong: "MH 214 to MH 215", where: "Tallow Street", title: "Plan", side: ["R-07"] }),
  main: html`<main class="plan ${refused && "refused"}">${refused && html`<section class="note" aria-labelledby="why"><h2 id="why">The resin would set before the patch is in place.</h2><p>At the warmest of the three, 24 °C, working time is 19:00; this needs 27:30. <b>It can’t be waived: no time.</b></p>
    ${figure({ flush: true, inside: tempRule({ id: "t", temps: [{ name: "pipe", celsius: 12 }, { name: "air", celsius: 21 }, { name: "resin", celsius: 24 }], limit: 17.5, limit_says: "17.5 °C gives 27:36", label: "temperatures" }) })}
    <p><b>Way out:</b> resin, air and pipe all at 17.5 °C or colder.</p></section>`}
  <div class="plan-draw">${figure({ inside: tallowLine({ ...placed, detail: true }), caption: html`Rope from MH 215 pulls it in, the hose follows from MH 214; <b>mark read at the pipe mouth</b>. Nobody below. Lengths to scale, heights are not.` })}
    ${figure({ flush: true, inside: detail({ packer_mm: 1000, patch_mm: 600, defect_mm: 220, cover_mm: [156, 156], label: "Detail at the defect" }), caption: html`<b>Detail A</b>, mm. Cover is what is left after three errors.` })}</div>
  <div class="plan-time">${section({ title: "Time, an estimate", aside: refused ? "warmest: resin, 24 °C" : "warmest: resin, 14 °C", kind: "", inside: budget({ total_ms: (refused ? 19 : 34) * MIN, parts: [{ label: "Wet-out", ms: 12 * MIN }, { label: "Way in, 5:00 × 1.3 loaded", ms: 6.5 * MIN }, { label: "Connect and inflate", ms: 4 * MIN }, { label: "Margin, from the contract", ms: 5 * MIN }] }) })}</div>
  <div class="plan-where">${section({ title: "Where", inside: html`${readings([{ label: "from MH 214", value: "18.57", unit: "m" }, { label: "from MH 215", value: "28.23", unit: "m" }], "two")}${facts([{ label: "Brought in by", value: "rope from MH 215" }, { label: "Mark on the hose", value: "18.07 m from patch centre" }])}` })}</div>
  <div class="plan-pick">${section({ title: "Cover each side", aside: "asked 150 mm, contract", inside: html`${figure({ flush: true, inside: sumRule({ id: "s", nominal: 190, left: 156, errors: [19, 10, 5], asked: 150, label: "cover" }) })}
    ${sum([{ mark: "b0", label: "(600 − 220) / 2, offset 0", value: "190 mm" }, { mark: "b2", label: "Inspection, counter 0.1 %", value: "− 19 mm" }, { mark: "b3", label: "Placement, hose stretch", value: "− 10 mm" }, { mark: "b6", label: "Mark reading", value: "− 5 mm" }, { mark: "b5", label: "Cover left", value: "156 mm" }])}` })}
    ${choice({ legend: "Packer", name: "packer", picked: "P-2", options: [{ value: "P-2", strong: "P-2", text: "fits", note: "for 150 – 225 mm; pipe 196 – 201" }, { value: "P-3", strong: "P-3", text: "does not fit", note: "for 200 – 300 mm; pipe from 196", closed: true }] })}</div></main>`,
  deck: refused ? deck({ gate: gate({ reason: "Closed: 8 min 30 s too short" }), act: act({ label: "Measure all three again", note: "resin, air and pipe", href: "#x" }) }) : deck({ act: act({ label: "Accept this plan", note: "estimate: 6 min 30 s to spare", does: { do: "x" } }) }) });

const trouble = (title, inside, button) => page({ kind: "troubled", mast: alarm({ ...tallow, where: "Tallow Street · R-07", what: "Working time is over by 2:15", title }), main: html`<main class="stage">${inside}</main>`, deck: deck({ more: usual({ repair: "R-07" }), act: button }) });

export const SAMPLES = {
  today: () => page({ mast: mast({ title: "Today, crew 3", where: html`Quillmere <span class="soft">(invented town)</span>`, side: ["Wed 14 Oct", "11:24"] }),
    main: html`<main class="today">${section({ id: "h1", title: "Holding now", aside: 2, kind: "", inside: html`<div class="lives">
      ${liveHold({ href: "#hold", manhole: "MH 118", where: "Lantern Lane · R-05", counted: 33, pending: 7, needed: 60, items: [{ label: "Reading due in", value: "2:40" }, { label: "Closed until", value: "11:44" }, { label: "Last reading", value: "1.21", note: "bar at 11:17", wide: true }], chart: figure({ flush: true, kind: "live-chart only-wide", inside: chart({ height: 132, id: "a" }) }) })}
      ${liveHold({ href: "#hold", manhole: "MH 122", where: "Lantern Lane · R-06", counted: 8, pending: 4, needed: 72, items: [{ label: "Reading due in", value: "5:40" }, { label: "Closed until", value: "12:24" }] })}</div>` })}
      ${section({ id: "h2", title: "Curing", aside: 1, kind: "", inside: liveCure({ href: "#x", manhole: "MH 031", where: "Kettle Row · R-03", gone: 4.13, needed: 8.82, when: "16:05", label: "4 h 8 min of 8 h 49 min gone" }) })}
      ${section({ id: "h3", title: "Next to start", aside: 1, kind: "", inside: way({ href: "#plan", label: "MH 214 to MH 215", note: "Tallow Street · R-07 · DN 200, crack at 18.57 m. Plan accepted." }) })}
      ${section({ id: "h4", title: "Waiting for signature", aside: 1, kind: "", inside: way({ href: "#x", label: "MH 031 to MH 032", note: "Kettle Row · R-03 · 6 things off the plan, 1 asks for the foreman: lateral opened early" }) })}
      ${section({ id: "h5", title: "Light", kind: "today-light", inside: light("day") })}</main>` }),
  intake: () => page({ mast: mast({ strong: "MH 214 to MH 215", where: "Tallow Street", title: "Which is the defect?", side: ["R-07"] }),
    main: html`<main class="intake"><div class="intake-draw">${figure({ inside: defectsView({ nodes: ["MH 214", "MH 215"], length_m: 46.8, label: "Line with five observations", observations: [
      { at_m: 6.35, name: "lateral", dots: [9] }, { at_m: 18.46, name: "crack", picked: true }, { at_m: 18.6, name: "damp", picked: true, arc: [10, 2], dots: [1] }, { at_m: 24.1, name: "lateral", dots: [3] }, { at_m: 31.9, name: "roots", dots: [12] }] }), caption: "Clock marks seen looking downstream, crown on top. Lengths to scale from the centre of MH 214; heights are not. Water runs from left to right." })}</div>
      <form class="intake-list">${choice({ legend: "Observations", aside: "5 read, 0 refused", name: "o", several: true, picked: ["2", "3"], kind: "section", options: [{ value: "1", strong: "Connection, DN 125", note: "BCA", at: ["6.35 m", "9 h"] }, { value: "2", strong: "Crack, longitudinal", note: "BAB B A", at: ["18.46 – 18.68 m", "10 – 2 h"] }, { value: "3", strong: "Infiltration, sweating", note: "BBF A", at: ["18.60 m", "1 h"] }] })}</form>
      <div class="intake-side">${section({ title: "Picked", kind: "", inside: html`${faces({ marks: [{ from: 10, to: 2 }, { from: 1, kind: "dot" }, { from: 3, kind: "lateral" }, { from: 9, kind: "lateral" }] })}<p>Crack over the crown, 10 to 2 h.</p>` })}</div></main>`,
    deck: deck({ act: act({ label: "Take 2 as the defect", note: "18.46 to 18.68 m, 10 to 2 h", href: "#plan" }) }) }),
  plan: () => plan(false),
  "plan-refused": () => plan(true),
  "test-push": () => page({ mast: html`${mast({ ...tallow, title: "Test push", side: ["R-07", "11:24"], stage: 1 })}${others([{ repair: "R-05", manhole: "MH 118", due_ms: 160e3 }, { repair: "R-06", manhole: "MH 122", due_ms: 340e3 }])}`,
    main: html`<main class="stage">${clock({ what: "Pull in to the mark.", ms: 192e3, count: true, rising: true })}<p class="soft">since 11:21:08; a go needs it under 10:00</p>${figure({ inside: tallowLine({ packer: { at_m: 11.4, length_m: 1 }, target_m: 18.57, target_named: true }), caption: "Rope from MH 215 pulls, hose from MH 214. Never inflated." })}</main>`,
    deck: deck({ more: usual({ repair: "R-07" }), act: act({ label: "Mark is at the pipe mouth", note: "records the time, place and you", does: { do: "x" } }) }) }),
  staging: () => page({ mast: html`${mast({ ...tallow, title: "Staging", side: ["R-07", "10:52"], stage: 0 })}${others([{ repair: "R-05", manhole: "MH 118", due_ms: 300e3 }])}`,
    main: html`<main class="stage"><h2 class="head-row">Each: done, or why not <small>2 of 14 open</small></h2>${conditions([
      { state: "open", text: "Packer tested", note: "0.5 bar, the sheet’s test pressure, 5 min, no drop. Restrained, nobody beside it.", inside: pair({ legend: "Packer tested", name: "packer", quiet: true, options: [{ value: "done", label: "Done" }, { value: "not_applicable", label: "Does not apply" }] }) },
      { state: "waived", text: "Residents told", note: "Drains out of use until about 15:30.", inside: pair({ legend: "Residents told", name: "res", quiet: true, picked: "not_applicable", options: [{ value: "done", label: "Done" }, { value: "not_applicable", label: "Does not apply" }] }) }], "tasks")}
      ${section({ title: "Air at MH 214", aside: "last 10:49, next by 11:19", inside: readings([{ label: "Oxygen", value: "20.9", unit: "%" }, { label: "Flammable", value: "0", unit: "% LEL" }, { label: "H₂S", value: "0", unit: "ppm" }, { label: "CO", value: "2", unit: "ppm" }], "air") })}</main>`,
    deck: deck({ gate: gate({ reason: "Test push closed: 2 open" }), act: act({ label: "Packer tested", note: "records the time and you", mark: "tick", does: { do: "x" } }) }) }),
  "wet-out": () => wetOut(false),
  rehearsal: () => wetOut(true),
  "second-go": () => page({ mast: mast({ ...tallow, title: "Go or no-go", side: ["R-07", "13:00"], stage: 3 }),
    main: html`<main class="stage go-page"><p class="clock-what">Go: the resin gives time enough.</p>${count({ figure: "6:17", lines: ["to spare", "of 34:00"], kind: "go-count" })}
      ${tape({ n: 34, label: "27:43 needed", parts: [{ kind: "full", m: 27.7 }, { kind: "now", m: 6.3 }] })}${ends(["needed 27:43", { strong: "to spare 6:17" }])}
      ${figure({ flush: true, inside: tempRule({ id: "g", temps: [{ name: "pipe", celsius: 9 }, { name: "air", celsius: 13 }, { name: "resin", celsius: 14 }], limit: 17.4, limit_says: "no go above 17.4 °C", label: "temperatures" }) })}<p class="soft">Read at 12:58, good until 13:08. The warmest counts: resin, 14 °C.</p></main>`,
    deck: deck({ more: usual({ repair: "R-07" }), act: act({ label: "Go: ready to join", note: "opens “Parts joined”", href: "#join" }) }) }),
  join: () => page({ mast: mast({ ...tallow, title: "Wet-out", side: ["R-07", "13:02"], stage: 3 }),
    main: html`<main class="stage"><p class="clock-what">Join A and B</p><p class="lead-in">The working time starts here. It cannot be stopped.</p>${clock({ ms: 34 * MIN, note: "at 14 °C, warmest", count: true })}
      ${tape({ n: 34, label: "34 minutes, none used", parts: [{ kind: "full", m: 34 }] })}${conditions([{ state: "met", text: "Go, good until 13:08" }, { state: "met", text: "Lots DA-11 and DB-07 in date" }])}</main>`,
    deck: deck({ more: usual({ repair: "R-07", ago: { min: 0, href: "#ago" } }), act: hold({ label: "Parts joined", note: "Hold 2 s to start the clock", does: { do: "x" } }) }) }),
  ago: () => page({ mast: mast({ ...tallow, title: "Parts joined", side: ["R-07", "13:05"], stage: 3 }),
    main: html`<main class="stage"><form class="stack" id="f">${entry({ id: "ago", label: "It was", aside: "0 is now", value: "3", unit: "min ago", min: 0 })}${readings([{ label: "Joined at", value: "13:02" }, { label: "Tapped at", value: "13:05" }], "two")}
      <div>${tape({ n: 34, label: "31 of 34 minutes left", parts: [{ kind: "full", m: 31 }, { kind: "gone", m: 3 }] })}${ends(["31:00 left", "3 min gone"])}</div>${note({ lead: "Both times are kept.", text: "If it costs you time, it is allowed. If it gains you time, it is a departure." })}</form></main>`,
    deck: deck({ more: usual({ repair: "R-07", ago: { min: 3, href: "#ago" } }), act: hold({ label: "Parts joined at 13:02", note: "Hold 2 s. 31:00 left.", form: "f" }) }) }),
  "fill-in": () => page({ mast: mast({ ...tallow, title: "Fill in now", side: ["R-07", "13:34"], stage: 6 }),
    main: html`<main class="stage fill"><p class="lead-in">Target pressure 13:29. Six things from wet-out; each is marked late.</p><form>${choice({ legend: "Parts", aside: "one of two", name: "parts", picked: "whole", options: [{ value: "whole", strong: "Whole containers", note: "both emptied completely, kit DK-4 (invented)" }, { value: "weighed", strong: "Weighed", note: "A 812 g, B 406 g; ratio 2.00, asked 1.96 – 2.04" }] })}
      ${section({ title: "Mixed", aside: "sheet asks 3:00", kind: "section-gap stack", inside: entry({ id: "mix", label: "Mixed for", value: "3:10", unit: "min : s", step: 5, spanned: true }) })}
      ${section({ title: "Patch", kind: "section-gap stack", inside: html`${yesNo({ legend: "Soaked, no dry area", name: "w1", picked: "yes" })}${yesNo({ legend: "Centred and bound, seam at 12 h", name: "w2" })}` })}</form></main>`,
    deck: deck({ act: act({ label: "Record, marked late", note: "5 of 6 answered, 1 departure", mark: "tick", does: { do: "x" } }) }) }),
  hold: () => page({ mast: mast({ strong: "MH 118", where: "Lantern Lane", title: "Hold", side: ["R-05", "11:24"], stage: 6 }),
    main: html`<main class="stage holdm"><div class="hold-count">${count({ figure: 33, lines: ["of 60 min", "counted"] })}${tape({ n: 60, label: "33 minutes counted, 7 more with the next reading", parts: [{ kind: "full", m: 33 }, { kind: "pend", m: 7 }] })}${pending("7 more with the next reading")}
      ${readings([{ label: "Next reading in", value: "2:40", then: "due 11:27" }, { label: "Water in MH 118", value: "0.35", unit: "m", then: "11:17; look again" }], "two")}<p class="soft hold-say">60 min at 11 °C, the coldest so far. Longer if the wall gets colder.</p></div>
      ${figure({ kind: "hold-chart", flush: true, above: html`<b>Pressure, bar gauge.</b> Window 1.10 – 1.40: least net 1.00 and 1.0 m of groundwater, sheet “Demo patch” (invented).`, inside: html`<div class="only-narrow">${chart({ id: "n", narrow: true })}</div><div class="only-wide">${chart({ id: "w", height: 268 })}</div>`, caption: "10:47 – 11:00 was not witnessed: readings were 13 min apart, 10 allowed." })}
      ${section({ title: "Check", aside: "each reading", kind: "hold-where", inside: conditions([{ state: "open", text: "Water upstream of the packer", note: "0.35 m at 11:17 in MH 118. The packer is a plug: at 0.90 m open the bypass or release." }, { state: "met", text: "Plug and bypass", note: "hold until 15:30" }]) })}
      ${section({ title: "Readings", aside: "G-04, by hand", kind: "hold-log", inside: table({ label: "Readings", head: ["Time", "Pressure, bar", "Pipe wall, °C", "Counted, min"], rows: [["11:17", "1.21", "11", "9"], ["11:08", "1.22", "11", "8"], ["11:00", "1.22", "11", "not witnessed"]] }) })}</main>`,
    deck: deck({ gate: gate({ reason: "Closed until 11:44", note: "at the earliest" }), more: usual({ repair: "R-05" }), act: act({ label: "Take a reading", note: "pressure, pipe wall, water", href: "#reading" }) }) }),
  reading: () => page({ mast: mast({ strong: "MH 118", where: "Lantern Lane", title: "Reading", side: ["R-05", "11:26"], stage: 6 }),
    main: html`<main class="stage"><form class="stack" id="r">${entry({ id: "bar", label: "Pressure", aside: "1.21 at 11:17", value: "1.21", unit: "bar", step: 0.01, digits: 2 })}${scale({ from: 1, to: 1.5, every: 0.01, long: 0.1, window: [1.1, 1.4], value: 1.21, label: "inside", left: "1.00", right: "1.50", says: "inside 1.10 – 1.40" })}
      ${entry({ id: "temp", label: "Pipe wall", aside: "11 at 11:17", value: "11", unit: "°C" })}${entry({ id: "lev", label: "Water in MH 118", aside: "0.35 at 11:17", value: "x", unit: "m", step: 0.01, digits: 2, problem: "Water in MH 118: a number, please." })}</form></main>`,
    deck: deck({ act: act({ label: "Record the three", note: "1.21 bar, 11 °C, 0.38 m · T. Ekdal", mark: "tick", form: "r" }) }) }),
  stop: () => page({ mast: mast({ strong: "MH 118", where: "Lantern Lane", title: "Stop", side: ["R-05", "11:24"], stage: 6, kind: "stop-mast" }),
    main: html`<main class="stage"><p class="clock-what">33 of 60 min counted. Released now, the attempt is doubtful.</p>${doNow(["Everybody out of the manhole and away from both ends.", "Open the valve slowly. Let it empty wholly.", "Back by the rope; don’t cut the hose."], "tight-do")}</main>`,
    deck: deck({ act: hold({ label: "Emergency release", note: "Hold 2 s. Any minute, no PIN.", alarm: true, does: { do: "x" } }) }) }),
  "time-over": () => page({ kind: "troubled", mast: alarm({ strong: "MH 214", where: "Tallow Street · R-07", what: "Working time is over", title: "Where is the patch?", beside: count({ figure: "+2:15", lines: ["since 13:36"] }) }),
    main: html`<main class="stage over-main">${places(() => ({ href: "#x" }))}<p class="soft">From 13:36 the attempt is doubtful.</p></main>`, deck: deck({ more: usual({ repair: "R-07" }) }) }),
  "on-table": () => trouble("On the table", html`${doNow(["Don’t push it in.", "Take the patch off the packer: wrapped it heats too.", "Spread resin and patch out thin: outside, gloves on, away from drains. In a container it grows hot."])}${note({ text: "Then attempt 2. Permit, inside diameter and test push stay valid." })}<p class="answered"><a href="#time-over">The patch is elsewhere</a></p>`, hold({ label: "Patch is discarded", note: "Hold 2 s. Ends attempt 1.", does: { do: "x" } })),
  "pressure-low": () => page({ kind: "troubled", mast: alarm({ strong: "MH 118", where: "Lantern Lane · R-05 · 11:36", title: "Pressure too low", below: count({ figure: "1.06", lines: ["bar; window", "1.10 – 1.40"], kind: "low" }), items: [{ label: "Out of the window", value: "up to 10 min" }, { label: "Age of the resin", value: "1 h 31 min" }] }),
    main: html`<main class="stage">${doNow(["Nobody in the manhole or in line with the pipe.", "Find the leak. Raise slowly, not above 1.40.", "Take a reading."])}${note({ lead: "The patch may have lost the wall:", text: "photos of the full turn, the foreman decides." })}
      ${figure({ flush: true, inside: holdChart({ id: "l", height: 150, narrow: true, readings: [[10, 47, 1.23], [11, 0, 1.22], [11, 8, 1.22], [11, 17, 1.21], [11, 26, 1.2], [11, 36, 1.06]].map(([h, m, bar]) => ({ at_ms: when(h, m), bar })), window_bar: [1.1, 1.4], gaps: [{ from_ms: when(10, 47), to_ms: when(11, 0) }], now_ms: when(11, 37), from_ms: when(10, 45), to_ms: when(11, 45), offset_min: 120, label: "Pressure" }) })}</main>`,
    deck: deck({ more: usual({ repair: "R-05" }), act: act({ label: "Take a reading", note: "shows whether it is inside again", href: "#reading" }) }) }),
  verification: () => page({ mast: mast({ strong: "MH 031", where: "Kettle Row", title: "Verification", side: ["R-03", "09:48"], stage: 8 }),
    main: html`<main class="stage verify"><section class="cure-card"><p class="clock-what">Full cure from 16:05</p>${tape({ n: 8.82, label: "2 h 32 min of 8 h 49 min gone", parts: [{ kind: "done", m: 2.53 }] })}${ends(["joined 07:16", "6 h 17 min to go"])}<p><b>Don’t cut or test before.</b></p></section>
      ${figure({ flush: true, inside: edges({ from_m: 17.66, to_m: 18.26, found: [{ kind: "fold", at_m: 17.9, hour: 7, says: "fold, 2 mm, 7 h" }, { kind: "lateral", at_m: 18.15, hour: 10, says: "lateral, 10 h, covered" }], label: "patch" }), caption: "As found. Widths to scale, heights are not." })}
      ${section({ title: "Edges, full turn", kind: "section-gap stack", inside: pair({ legend: "Upstream, 17.66 m", name: "e1", picked: "bonded", options: [{ value: "bonded", label: "Bonded" }, { value: "lifted", label: "Lifted" }] }) })}</main>`,
    deck: deck({ gate: gate({ reason: "Closed: 1 photo missing" }), act: act({ label: "Photograph the patch", note: "the last one asked before full cure", mark: "photo", href: "#x" }) }) }),
  review: () => page({ mast: mast({ strong: "R-03", where: "· MH 031 to MH 032, Kettle Row", title: "Six things went off the plan, one asks for you", side: ["I. Varga, foreman", "14 Oct 2026, 11:26"] }),
    main: html`<main class="review">${figure({ inside: timeLine({ id: "tl", from_ms: when(4, 0), to_ms: when(10, 30), offset_min: 120, label: "Both attempts",
      attempts: [{ name: "Attempt 1", failed: true, spans: [{ from_ms: when(4, 21), to_ms: when(5, 31) }] }, { name: "Attempt 2", spans: [[6, 2, 6, 41], [6, 41, 6, 58], [6, 58, 7, 14], [7, 14, 7, 29], [7, 29, 7, 42], [7, 42, 9, 22, "hold"], [9, 22, 9, 31], [9, 31, 10, 19, "verification"]].map(([a, b, c, d, name]) => ({ from_ms: when(a, b), to_ms: when(c, d), name, solid: name === "hold" })) }],
      gaps: [{ from_ms: when(8, 7), to_ms: when(8, 19) }], marks: [[5, 31], [6, 36], [7, 31], [8, 13], [8, 40], [9, 58]].map(([h, m], i) => ({ at_ms: when(h, m), n: i + 1, needs: i === 5 })) }) })}</main>` }),
  check: () => page({ mast: mast({ where: "Check a certificate", title: "K3F-0147.pdf", side: ["nothing leaves this machine"] }),
    main: html`<main class="check check-changed">${figure({ kind: "chain", inside: chain({ entries: 214, label: "Chain of 214 entries", broken: { entry: 140, says: "page 2: 93 min, entry 140: 81:12" }, flags: [[1, "planned"], [18, "staging", true], [46, "test push"], [74, "wet-out", true], [98, "inflation", true], [122, "hold"], [158, "verification"]].map(([entry_, name, minor]) => ({ entry: entry_, name, minor })) }) })}
      ${figure({ kind: "chain", inside: chain({ entries: 4210, label: "Chain of 4210 entries" }) })}</main>` }),
  parts: () => page({ mast: mast({ title: "Parts", where: "not on other samples", strong: "Gallery" }),
    main: html`<main class="stack">${problemList([{ field: "name", text: "Name: is missing." }, { text: "No reading yet." }])}${refusalNote({ broken: [{ says: "Too early: 11 min are missing", way_out: "take readings until 11:44." }] })}
      ${field({ id: "name", label: "Name", value: "Ekdal & <b>", problem: "Name: is missing." })}${lines({ id: "l", label: "What was seen", value: "first\nsecond" })}${picks({ id: "p", label: "Material", value: "b", options: [{ value: "a", label: "Clay" }, { value: "b", label: "Concrete" }] })}${file({ id: "f", label: "Photo", accept: "image/*", camera: true })}
      ${held({ label: "Joined at 13:02:10", note: "Next tap: target pressure reached" })}
      ${clock({ what: "Less than a minute", ms: 42_300, note: "to 13:36" })}${clock({ what: "More than an hour", ms: 3_905_000, count: true })}
      ${figure({ inside: lineView({ nodes: ["CO 3", "MH 9"], length_m: 8.4, hose_from: "end", rope_from: "start", packer: { at_m: 3, length_m: 1 }, patch: { at_m: 3, length_m: 0.6 }, target_m: 3, target_named: true, label: "hose from the right" }), caption: "Hose from the right" })}
      ${faces({ seam: 2, marks: [{ from: 1, to: 4 }, { from: 9, kind: "lateral" }] })}
      ${figure({ flush: true, inside: sumRule({ id: "s2", nominal: 140, left: 106, errors: [19, 10, 5], asked: 150, label: "short cover" }) })}
      ${figure({ flush: true, inside: edges({ from_m: 3, to_m: 3.6, found: [{ kind: "lift", at_m: 3.1, hour: 12, says: "lift, 12 h" }, { kind: "lateral", at_m: 3.4, hour: 5, says: "lateral, 5 h, open" }], label: "patch" }) })}</main>` }),
  dialog: () => page({ mast: mast({ title: "Dialog", where: "waiver" }), main: html`<main></main>${dialog({ id: "d", title: "Accept the cover of 106 mm", inside: html`<div class="stack">${note({ text: "150 mm asked by the contract. Your name and the reason are printed." })}${field({ id: "reason", label: "Reason, printed" })}${field({ id: "pin", label: "PIN of I. Varga", type: "password", mode: "numeric" })}</div>` })}` }),
};
