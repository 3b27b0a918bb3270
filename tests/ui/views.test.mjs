// The screens of the office on what a real core answers: what stands on them, in which order, and that a name is only a name.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { minSec } from "../../ui/format.js";
import { mirrored } from "../../ui/drawings/clock-face.js";
import { choiceOf } from "../../ui/screens/plan/choice.js";
import { SCREENS } from "../../ui/screens.js";
import { route } from "../../ui/route.js";
import { serveMendline } from "./mendline.mjs";
import { sound, values, words } from "./unit/kit.mjs";
import { COOL, NAME, askAll, drawn, shown } from "./views.mjs";

let core, views;
before(async () => {
  core = await serveMendline();
  views = await askAll(core.address);
}, { timeout: 120_000 });
after(() => core?.stop());

const line = (view, more) => drawn("line", shown(view, { params: { file: view.file, index: String(view.listed.index) }, ...more }));
const picking = (view, observations, more) => line(view, { drafts: { [`open-${view.file}-${view.listed.index}`]: { observations: observations.map(String), ...more } } });
const order = (html, texts) => {
  const places = texts.map((text) => { const at = html.indexOf(text); assert.notEqual(at, -1, `${text} is missing`); return at; });
  assert.deepEqual(places, [...places].sort((a, b) => a - b), `the order of ${texts.join(", ")}`);
};

/** Every screen of the office with every answer it may get: [what, HTML]. */
function all() {
  const sheets = Object.entries({ contract: "contracts", resin: "resins", patch: "patches", packer: "packers", instrument: "instruments", method: "methods", person: "people" })
    .flatMap(([kind, list]) => views.shelf[list].map(({ id }) => [`shelf ${kind} ${id}`, drawn("shelf", shown(views.shelf, { params: { kind, id } }))]));
  const one = (name, ...keys) => keys.map((key) => [`${name} ${key}`, drawn(name, shown(views[key]))]);
  return [
    ...one("today", "empty", "nobody", "today", "today_done"), ...one("intake", "no_files", "files", "named_files"), ...one("search", "found", "named_list"), ...one("people", "bare_shelf", "shelf"), ...one("help", "rules"), ...one("checks", "checks"), ...views.checks.checks.map(({ name }) => [`checks ${name}`, drawn("checks", shown(views.checks, { params: { name } }))]),
    ...one("plan", "unmeasured", "cool", "warm", "off_sheet", "off_centre", "named_plan"), ...one("check", "unfinished", "valid", "changed", "no_record", "rehearsal"),
    ...["kettle", "tallow", "joint", "against", "named"].flatMap((key) => [[`line ${key}`, line(views[key])], [`line ${key}, all picked`, picking(views[key], views[key].observations.map((each) => each.index))]]),
    ["by hand, bare", drawn("by_hand", shown(views.bare_shelf))], ["by hand", drawn("by_hand", shown(views.shelf))], ["check", drawn("check", shown({}))],
    ["shelf, bare", drawn("shelf", shown(views.bare_shelf))], ["shelf", drawn("shelf", shown(views.shelf))], ...sheets,
  ];
}

test("every screen is well formed, has one heading of the first rank, and its links lead to a screen", () => {
  for (const [what, html] of all()) {
    assert.doesNotThrow(() => sound(html), what);
    assert.equal(html.match(/<h1/g)?.length, 1, what);
    assert.equal(html.match(/<main/g)?.length, 1, what);
    for (const href of values(html, "href").filter((to) => to.startsWith("#/"))) assert.notEqual(route(href).name, "lost", `${what}: ${href}`);
  }
});

test("what a file, a line, a street or a repair is called is only a name", () => {
  const named = all().filter(([, html]) => html.includes("onerror"));
  assert.ok(named.length >= 7, `it stands on ${named.map(([what]) => what)}`);
  for (const [what, html] of named) {
    assert.doesNotMatch(html, /<img/, what);
    assert.match(words(html), /&lt;img src=x onerror=alert\(1\)&gt;/, what);
  }
});

test("today: mixed resin comes first, then holds, cures, what comes next, what waits", () => {
  const html = drawn("today", shown(views.today));
  order(html, ["Resin is mixed", "Holding now", "Curing", "Next to start", "Waiting for signature", "Needs a plan"]);
  assert.match(words(html), /Needs a plan 2/);
  assert.match(words(drawn("today", shown(views.today_done))), /Done 1 .*certificate issued/);
});

test("today: the most urgent of the mixed comes first, and says that its time is over", () => {
  const [first, second] = views.today.mixed;
  assert.ok(first.clock.deadline_ms < second.clock.deadline_ms);
  const html = drawn("today", shown(views.today));
  order(html, ["R-11", "Working time is over", "R-10"]);
});

test("today: counters run on the moment, up for time gone and down for time left", () => {
  const at = (second) => { const now = { at_ms: views.today.mixed[1].clock.deadline_ms - second * 1000, offset_min: 120 }; return words(drawn("today", shown(views.today, { now }))); };
  assert.match(at(600), /10:00 left/);
  assert.match(at(539.5), /8:59 left/);
  assert.match(at(-0.5), /0:01 over/);
});

test("today: a hold says its counted minutes, its next reading and until when it is closed; the chart stands on a laptop only", () => {
  const [{ hold, summary }] = views.today.holding;
  const html = drawn("today", shown(views.today));
  const article = html.slice(html.indexOf("Holding now"), html.indexOf("Curing"));
  assert.match(words(article), new RegExp(`${summary.node} .*R-05 ${Math.floor(hold.counted_ms / 60e3)} of ${Math.ceil(hold.required_ms / 60e3)} min`));
  assert.match(words(article), /Reading due in \d+:\d\d Closed until \d\d:\d\d/);
  assert.match(article, /class="[^"]*live-chart only-wide/);
});

test("today: who taps is shown, and it is asked while nobody is picked", () => {
  assert.match(words(drawn("today", shown(views.today))), /Tomas Ekdal taps on this device/);
  assert.match(words(drawn("today", shown(views.nobody))), /Nobody is picked on this device/);
});

test("today: every other screen is one tap away, and the light can be switched", () => {
  const html = drawn("today", shown(views.today));
  for (const to of ["#/intake", "#/search", "#/people", "#/shelf", "#/check", "#/help"]) assert.ok(html.includes(`href="${to}"`), to);
  assert.deepEqual(values(html, "value").filter((value) => ["day", "sun", "night"].includes(value)), ["day", "sun", "night"]);
});

test("the first start says that the examples are invented, and that no number is built in", () => {
  const text = words(drawn("today", shown(views.empty, { person: null })));
  assert.match(text, /invented examples/);
  assert.match(text, /a town that does not exist/);
  assert.match(text, /None is built in/);
});

test("a continuous defect is one row with both its ends, start and finish are folded away", () => {
  const text = words(line(views.tallow));
  assert.equal(text.match(/Crack, lengthwise/g).length, 1);
  assert.match(text, /18\.46 – 18\.68 m 10 – 2 h/);
  const html = line(views.tallow);
  const folded = /<details>.*<\/details>/s.exec(html)[0];
  assert.match(folded, /BCD A/);
  assert.match(folded, /BCE A/);
  assert.equal(html.replace(folded, "").includes("BCD A"), false);
});

// The lines of MH 122 to MH 123 in the file: run against the flow, 27.65 m long. Station and hour as the camera counted them.
test("a line that was run against the flow is told from its upstream node, looking downstream", () => {
  const text = words(line(views.against));
  for (const [counted, from, to] of [[14.52, 8, 10], [20.05, 7, 5]]) {
    const upstream = (27.65 - counted).toFixed(2);
    assert.match(text, new RegExp(`${upstream} m ${mirrored(to)} – ${mirrored(from)} h`));
  }
  assert.match(text, /17\.85 m 9 h/, "counted 9.80 m at 3 h");
  assert.match(text, /Seen looking downstream/);
  assert.match(text, /against the flow/);
});

test("advice is text: nothing that was seen is closed for picking", () => {
  for (const key of ["kettle", "tallow", "joint", "against"]) assert.doesNotMatch(line(views[key]), /disabled/);
  assert.match(words(line(views.joint)), /not for a patch/);
});

test("what is picked stands on the act with its extent and its hours, and is counted from both nodes", () => {
  const picked = views.tallow.observations.filter(({ code }) => code === "BAB B A" || code === "BBF A").map((one) => one.index);
  const text = words(picking(views.tallow, picked));
  assert.match(text, /Take 2 as the defect 18\.46 – 18\.68 m, 10 – 2 h, 1 h/);
  assert.match(text, /from MH 215 28\.12 – 28\.34 m/);
  assert.match(words(picking(views.tallow, [])), /Pick one or several/);
});

test("what the same hour means is asked once the core has asked, and not before", () => {
  assert.equal(views.same_hour.error.code, "same_hour");
  assert.doesNotMatch(words(line(views.joint)), /All round/);
  assert.match(words(line(views.joint, { error: views.same_hour.error })), /The clock runs from 12 to 12.*All round One spot/);
});

test("the intake finds a line by any of its words, and a broken file is named with its fault", () => {
  const text = words(drawn("intake", shown(views.files, { drafts: { "intake-search": { text: "tallow 214" } } })));
  assert.match(text, /MH 214 to MH 215/);
  assert.doesNotMatch(text, /MH 031/);
  assert.match(views.broken.error.says, /was not taken in. line 1/);
  assert.equal(views.named_files.files.length, 2, "nothing of it was kept");
});

// Working time less its parts, and cover less its errors, added up here from what the screen shows.
test("the plan's sums add up as they stand on the screen", () => {
  const text = words(drawn("plan", shown(views.cool)));
  const seconds = (span) => { const [min, s] = span.split(":").map(Number); return min * 60 + s; };
  const [, total, left] = /Left of ([\d:]+) ([\d:]+)/.exec(text);
  const parts = ["Wet-out", "loaded", "Connect and inflate", "Margin, from the contract"].map((name) => seconds(new RegExp(`${name} ([\\d:]+)`).exec(text)[1]));
  assert.equal(seconds(total) - parts.reduce((sum, part) => sum + part, 0), seconds(left));
  const [, patch, defect, offset, nominal] = /\((\d+) − (\d+)\) \/ 2, offset (\d+) (\d+) mm/.exec(text);
  assert.equal((patch - defect) / 2 - offset, Number(nominal));
  const errors = [...text.matchAll(/− (\d+) mm/g)].map(([, mm]) => Number(mm));
  assert.equal(errors.length, 3);
  assert.equal(nominal - errors.reduce((sum, mm) => sum + mm, 0), Number(/Cover left (\d+) mm/.exec(text)[1]));
});

test("every error of the cover names its source, and the window says what governs it", () => {
  const text = words(drawn("plan", shown(views.cool)));
  for (const { what, source } of views.cool.proposal.parts.place.cover.errors) assert.ok(text.toLowerCase().includes(`${what} ${source}`.toLowerCase()), source);
  assert.match(text, /Lower limit from least gauge Upper limit from host pipe/);
  assert.match(text, /Danger zone\./);
});

test("a plan in order is accepted with the choice that was computed", () => {
  const html = drawn("plan", shown(views.cool));
  assert.match(words(html), /Accept this plan estimate: \d+ min/);
  const request = values(html, "data-request").map((text) => JSON.parse(text.replaceAll("&quot;", '"'))).find((one) => one.do === "accept_plan");
  assert.deepEqual(request.choice, views.cool.proposal.choice);
});

test("a plan without time says by how much, the way out by all three temperatures, and cannot be waived", () => {
  const [broken] = views.warm.proposal.breaks;
  assert.equal(broken.rule, "no_time");
  const html = drawn("plan", shown(views.warm));
  const text = words(html);
  assert.ok(text.includes(broken.says));
  for (const { says } of broken.ways_out) assert.ok(text.includes(says), says);
  assert.match(text, /It can’t be waived/);
  assert.doesNotMatch(text, /Accept this plan/);
  assert.doesNotMatch(html, /<dialog/);
  assert.ok(text.includes(`Short of ${minSec(views.warm.proposal.parts.timed.budget.working_ms)} by ${minSec(-views.warm.proposal.parts.timed.budget.spare_ms, "up")}`));
});

test("temperatures off the sheet are not said to be missing", () => {
  const text = words(drawn("plan", shown(views.off_sheet)));
  assert.match(text, /the sheet ends at/);
  assert.doesNotMatch(text, /Waits for resin, air and pipe/);
  assert.match(words(drawn("plan", shown(views.unmeasured))), /Waits for resin, air and pipe/);
});

test("a departure asks a foreman by name, with the reason", () => {
  const html = drawn("plan", shown(views.off_centre));
  const dialog = /<dialog.*?<\/dialog>/s.exec(html)[0];
  const people = new Map(views.shelf.people.map((one) => [one.id, one.role]));
  const offered = [...dialog.matchAll(/<option value="([^"]*)"/g)].map(([, id]) => id);
  assert.ok(offered.length > 0);
  for (const id of offered) assert.equal(people.get(id), "foreman");
  const request = values(dialog, "data-request").map((text) => JSON.parse(text.replaceAll("&quot;", '"')))[0];
  assert.deepEqual(request, { do: "tell", repair: views.off_centre.repair.repair.id, command: { command: "waive", rule: "cover_short", subject: "" } });
  assert.match(dialog, /name="command\.reason"/);
});

test("temperatures go with the question only when all three are there", () => {
  const { water_mc: water, ...three } = COOL;
  assert.deepEqual(choiceOf({ choice: { temperatures: three } }).choice.temperatures, three);
  assert.equal(choiceOf({ choice: { temperatures: { resin_mc: 19_000, air_mc: 12_000 } } }).choice.temperatures, undefined);
  assert.deepEqual(choiceOf(undefined), {}, "what was never changed is left to the core");
});

test("what does not fit stays in sight with its reason", () => {
  const text = words(drawn("plan", shown(views.cool)));
  const closed = views.cool.proposal.packers.filter(({ fits }) => !fits);
  assert.ok(closed.length > 0);
  for (const { id, says } of closed.slice(0, 2)) assert.ok(text.includes(says), id);
});

test("a check says its verdict in words, and what it looked at", () => {
  const text = (key) => words(drawn("check", shown(views[key])));
  assert.match(text("valid"), /Unchanged since it was written/);
  assert.match(text("valid"), new RegExp(views.valid.head));
  assert.match(text("changed"), /Changed, or not complete .*Entry 1 does not fit/);
  assert.match(text("unfinished"), /Failed: Not complete/);
  assert.match(text("rehearsal"), /not a record/);
  assert.match(text("no_record"), /Not a record/);
  assert.match(words(drawn("check", shown({}))), /nothing leaves this device/);
});

test("help defers to the sheets and to licensed practice, and prints every rule of the table", () => {
  const text = words(drawn("help", shown(views.rules)));
  assert.match(text, /Data sheet, safety data sheet, local codes and licensed practice decide/);
  for (const { says } of views.rules.rules) assert.ok(text.includes(words(says.replaceAll("'", "&#39;"))), says);
});

test("a screen asks for nothing that its address does not name", () => {
  for (const { asks } of Object.values(SCREENS)) if (asks) assert.equal(typeof asks({ id: "x", file: "f", index: "0" }, () => ({}), {}).do, "string");
});

test("every calculation has its words, its fields and its source on a screen", () => {
  for (const { name, fields, source } of views.checks.checks) {
    const html = drawn("checks", shown(views.checks, { params: { name }, drafts: { [`checks--${name}`]: { "input.condition": "fully_deteriorated" } } }));
    assert.ok(words(html).includes(words(source.replaceAll("'", "&#39;"))), `${name}: its source`);
    for (const field of fields.filter(({ kind }) => kind !== "object")) assert.ok(html.includes(`name="input.${field.name}"`), `${name}: ${field.name}`);
    assert.doesNotMatch(html, /worked\.(name|what|field|out|word)\./, `${name}: a code without its words`);
  }
});

test("a calculation reads a typed unit, and says what it can't read", () => {
  // π/4 · 0.2032² m² · 137 895 Pa, NIST SP 811 (2008) for psi and inch.
  assert.ok(words(drawn("checks", shown(views.thrust, { params: { name: "end-thrust" } }))).includes("4471.8"));
  assert.ok(words(drawn("checks", shown(views.unread, { params: { name: "end-thrust" } }))).includes("in is no unit of this field"));
});
