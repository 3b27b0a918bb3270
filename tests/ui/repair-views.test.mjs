// The screens of a repair and of the shelf as text, drawn from what the real core answers: well formed, in words of the catalogue.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { after, before, test } from "node:test";
import { serveMendline } from "./mendline.mjs";
import { sound, words } from "./unit/kit.mjs";
import { Walk, asker } from "./walk.mjs";
import "./words.mjs";
import { route } from "../../ui/route.js";
import { SCREENS, fetchAll } from "../../ui/screens.js";
import { known } from "../../ui/text/say.js";

const HOSTILE = "<img src=x onerror=alert(1)>";
const LINE = [[100, 500], [300, 200], [500, 700], [900, 600]];

let core, api, told;
before(async () => {
  await fetchAll();
  core = await serveMendline();
  api = asker(core.address);
  told = await story();
}, { timeout: 120_000 });
after(() => core?.stop());

/** Builds one repair of each kind; returns their ids and the inspection file's. */
async function story() {
  const walked = async (stage, options) => (await (await new Walk(api).open(options)).plan()).to(stage);
  const ids = {};
  const first = await new Walk(api).open({ number: "R-01" });
  ids.taken = first.id;
  ids.planned = (await (await new Walk(api).open({ number: "R-02" })).plan()).id;
  ids.mixed = (await walked("joined", { number: "R-03" })).id;
  ids.holding = (await walked("hold", { number: "R-04" })).id;
  ids.rehearsal = (await walked("joined", { number: "RH-01", rehearsal: true })).id;
  const verified = await walked("verification", { number: "R-05" });
  ids.verification = verified.id;
  const done = await walked("verification", { number: "R-06" });
  ids.issued = done.id;
  await done.report({ what: "at_the_mark", beyond_um: 0 });
  await done.answer("wet_out", "placement", "inflation", "hold", "verification");
  await done.report({ what: "lateral_opened", lateral: 1, open_pct: 94, coupon: true });
  for (const one of done.view.review.broken.filter(({ waived, waivable }) => waivable && !waived)) await done.waive(one.rule, one.subject);
  await done.tell({ command: "judge", accept: true, reasons: [] }, "varga");
  for (const person of ["ekdal", "varga"]) await done.tell({ command: "sign", name: "", statement: "I sign.", strokes: [LINE] }, person);
  await api.ask({ do: "issue", repair: done.id });
  const rejected = await walked("verification", { number: "R-07" });
  ids.rejected = rejected.id;
  await rejected.tell({ command: "judge", accept: false, reasons: ["The upstream edge stands off."] }, "varga");
  const closed = await (await new Walk(api).open({ number: "R-08" })).plan();
  ids.closed = closed.id;
  await closed.tell({ command: "close_unrepaired", reason: "The line is dug up." }, "varga");
  for (const id of [rejected.id, closed.id]) {
    for (const person of ["ekdal", "varga"]) await api.ask({ do: "tell", repair: id, command: { command: "sign", name: "", statement: "I sign.", strokes: [LINE] } }, person);
  }
  await api.ask({ do: "issue", repair: rejected.id });
  const seen = { asset: HOSTILE, upstream: HOSTILE, downstream: "MH 2", street: HOSTILE, length_um: 38_400_000, height_um: 200_000, material: HOSTILE, words: HOSTILE, from_um: 7_120_000, to_um: 7_400_000 };
  const hostile = await api.ask({ do: "enter_by_hand", seen, contract: "QM-2026-31", number: "" });
  ids.hostile = hostile.repair.id;
  const { files } = await api.ask({ do: "inspections" });
  return { ids, file: files[0].file, lines: files[0].inspections.length };
}

/** Returns the view that main.js gives to a screen, with the answer of the real core. */
async function drawn(hash, { person = "varga", drafts = {}, error = null } = {}) {
  const { name, params } = route(hash);
  const { screen, asks } = SCREENS[name];
  const answer = asks ? await api.ask(asks(params, (form) => drafts[form] ?? {}, {}), person) : {};
  const view = { ...answer, params, now: { at_ms: Date.now(), offset_min: 60 }, light: "day", person, drafts, problems: [], error, came: "#/" };
  return { view, html: screen.render(view), title: screen.title(view) };
}

/** Returns the codes that stand where a sentence should. */
const untold = (html) => [...words(html).matchAll(/\b[a-z_]+\.[a-z_]+\b/g)].map(([code]) => code).filter((code) => /^(rule|stage|status|check|looked|off|review|verify|plan|sheet|option|today|line|hand|done|sign|signs|kind|word|caution|role)\./.test(code) && !known(code));

const addresses = () => {
  const { ids, file, lines } = told;
  const repairs = Object.values(ids).map((id) => `#/repair/${id}`);
  return ["#/", "#/intake", ...Array.from({ length: lines }, (_, i) => `#/intake/${file}/${i}`), "#/by-hand", "#/search", "#/people", "#/check", "#/help", "#/nowhere",
    ...repairs, `#/repair/${ids.taken}/plan`, `#/repair/${ids.planned}/plan`, `#/repair/${ids.hostile}/plan`,
    ...["verification", "issued", "rejected", "closed"].flatMap((name) => ["review", "sign", "certificate"].map((side) => `#/repair/${ids[name]}/${side}`)),
    "#/shelf", ...["contract", "resin", "patch", "packer", "instrument", "method", "person"].flatMap((kind) => [`#/shelf/${kind}`, `#/shelf/${kind}/new`]),
    "#/shelf/contract/QM-2026-31", "#/shelf/resin/Q30", "#/shelf/resin/K90", "#/shelf/packer/P-07", "#/shelf/method/MS-07", "#/shelf/method/MS-07/edges", "#/shelf/person/varga"];
};

test("every screen is well formed and says everything in words", async () => {
  for (const hash of addresses()) {
    const { html, title } = await drawn(hash);
    sound(html);
    assert.ok(title, hash);
    assert.deepEqual(untold(html), [], hash);
    assert.equal(String(html).match(/<h1/g).length, 1, hash);
  }
});

test("a name is just a name, wherever it is shown", async () => {
  for (const hash of ["#/", "#/search", `#/repair/${told.ids.hostile}`, `#/repair/${told.ids.hostile}/plan`]) {
    const { html } = await drawn(hash);
    assert.ok(words(html).includes("&lt;img src=x onerror=alert(1)&gt;"), hash);
    assert.doesNotMatch(String(html), /<img/i, hash);
  }
});

test("an open departure stands first in the review, with what may be decided", async () => {
  const { view, html } = await drawn(`#/repair/${told.ids.verification}/review`);
  const open = view.review.off.filter((one) => one.open).length;
  assert.ok(open > 0);
  const rows = [...String(html).matchAll(/<tr class="needs">/g)].length;
  assert.equal(rows, open);
  assert.ok(String(html).indexOf('class="needs"') < String(html).indexOf("<tr >") || view.review.off.length === open);
  assert.match(words(html), /went off the plan, \w+ asks? for you/);
});

test("the pad is for the role that has not signed, and a typed name is no signature", async () => {
  const technician = await drawn(`#/repair/${told.ids.issued}/sign`, { person: "ekdal" });
  assert.doesNotMatch(String(technician.html), /canvas/);
  const { standing } = technician.view;
  assert.equal(standing, "complete");
});

test("a rejected patch and a defect not mended have a record with signatures and a number, and the paper says what it is", async () => {
  const rejected = await drawn(`#/repair/${told.ids.rejected}`);
  assert.match(words(rejected.html), /The record of this attempt/);
  const closed = await drawn(`#/repair/${told.ids.closed}`);
  assert.match(words(closed.html), /Issue the record/);
  const record = await drawn(`#/repair/${told.ids.rejected}/certificate`);
  assert.match(words(record.html), /Record: rejected.*not mended/);
  for (const [id, says] of [[told.ids.rejected, /REJECTED/], [told.ids.closed, /UNREPAIRED/]]) {
    const { bytes } = await api.ask({ do: "certificate", repair: id });
    const text = execFileSync("pdftotext", ["-layout", "-", "-"], { input: Buffer.from(bytes, "base64"), encoding: "utf8" });
    assert.match(text, says);
    assert.match(text, /Tomas Ekdal/);
  }
});

test("what the camera shows is drawn as it is typed", async () => {
  const { view } = await drawn(`#/repair/${told.ids.verification}`);
  const folds = view.tasks.find(({ kind, stage }) => kind === "folds" && stage === "verification");
  const { html } = await drawn(`#/repair/${told.ids.verification}`, { drafts: { [`task-${folds.key}`]: { "command.answer.values.height_um": "9,5", "command.answer.values.hour": "7" } } });
  assert.match(words(html), /fold, 10 mm, 7 h|fold, 9\.5 mm, 7 h/);
  assert.match(words(html), /above the limit/);
});
