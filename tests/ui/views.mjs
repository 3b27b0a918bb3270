// What the core answers to the screens of the office, asked of a real core on a folder of its own.

import { readFile } from "node:fs/promises";
import "./words.mjs";
import { SCREENS, fetchAll } from "../../ui/screens.js";
import { Walk, asker } from "./walk.mjs";

await fetchAll();

const EXAMPLE = new URL("../../fixtures/inspections/quillmere.txt", import.meta.url);

/** What somebody may call a line, a street, a node, a file or themselves. It is only a name. */
export const NAME = "<img src=x onerror=alert(1)>";

/** Returns the example inspection in which the first line, its street and its upstream node are called `NAME`. */
export async function namedInspection() {
  const text = await readFile(EXAMPLE, "utf8");
  return Buffer.from(text.replaceAll("SS-03107", NAME).replaceAll("Kettle Row 8–10", NAME).replaceAll("MH 031", NAME));
}

/** Returns what main.js hands to a screen. */
export const shown = (answer, more = {}) => ({ ...answer, params: {}, light: "day", person: "ekdal", drafts: {}, problems: [], error: null, came: "#/", now: { at_ms: Date.now(), offset_min: 120 }, ...more });

/** Returns the HTML of a screen by its route. */
export const drawn = (name, view) => String(SCREENS[name].screen.render(view));

/** The temperatures at which the example resin leaves time, and at which it does not. In millidegrees. */
export const COOL = { resin_mc: 19_200, air_mc: 13_100, pipe_mc: 12_800, water_mc: null };
export const WARM = { resin_mc: 27_000, air_mc: 24_000, pipe_mc: 17_500, water_mc: null };
export const OFF_SHEET = { ...WARM, resin_mc: 31_000 };

/** Asks the core at `address` for one view after the other, from an empty folder to a full one. */
export async function askAll(address) {
  const api = asker(address);
  const { ask, raw } = api;
  const nobody = (request) => raw(request, null).then(({ ok }) => ok);
  const views = { empty: await nobody({ do: "today" }), no_files: await ask({ do: "inspections" }), bare_shelf: await ask({ do: "shelf" }) };
  views.shelf = await ask({ do: "take_examples" });
  views.nobody = await nobody({ do: "today" });
  views.rules = await ask({ do: "rules" });
  views.checks = await ask({ do: "checks" });
  views.thrust = await ask({ do: "checks", name: "end-thrust", input: { gauge_bar: "20 psi", inside_diameter_mm: "8 in" } });
  views.unread = await ask({ do: "checks", name: "end-thrust", input: { gauge_bar: "20 in", inside_diameter_mm: 200 } });

  await takeIn(api, views);
  await plans(api, views);
  await days(api, views);
  return views;
}

async function takeIn({ ask, raw }, views) {
  const bytes = (await readFile(EXAMPLE)).toString("base64");
  views.files = await ask({ do: "import_inspection", name: "quillmere.txt", bytes });
  const [{ file, inspections }] = views.files.files;
  const line = (name) => ask({ do: "inspection", file, index: inspections.find((one) => one.line === name).index });
  Object.assign(views, { kettle: await line("SS-03107"), tallow: await line("SS-03214"), joint: await line("SS-03118"), against: await line("SS-03122") });
  const gap = views.joint.observations.find(({ code }) => code.startsWith("BAJ"));
  views.same_hour = await raw({ do: "open_from_inspection", file, index: views.joint.listed.index, observations: [gap.index], contract: "QM-2026-31" });
  views.broken = await raw({ do: "import_inspection", name: NAME, bytes: Buffer.from("no inspection at all").toString("base64") });
  const named = await ask({ do: "import_inspection", name: NAME, bytes: (await namedInspection()).toString("base64") });
  views.named_files = named;
  const other = named.files.find(({ name }) => name === NAME);
  views.named = await ask({ do: "inspection", file: other.file, index: 0 });
}

async function plans(api, views) {
  const { ask } = api;
  const { file } = views.tallow;
  const index = views.tallow.listed.index;
  const observations = views.tallow.observations.filter(({ code }) => /^(BAB|BBF)/.test(code)).map((one) => one.index);
  const { repair } = await ask({ do: "open_from_inspection", file, index, observations, contract: "QM-2026-31", number: "R-07", video_before: "V-214" });
  const plan = (change) => ask({ do: "plan", repair: repair.id, choice: { ...views.unmeasured.proposal.choice, ...change } });
  views.unmeasured = await ask({ do: "plan", repair: repair.id });
  views.cool = await plan({ temperatures: COOL });
  views.warm = await plan({ temperatures: WARM });
  views.off_sheet = await plan({ temperatures: OFF_SHEET });
  views.off_centre = await plan({ temperatures: COOL, centre_um: views.unmeasured.repair.repair.defect.from_um + 350_000 });
  const called = await ask({ do: "open_from_inspection", file: views.named.file, index: 0, observations: [3], contract: "QM-2026-31", number: NAME, video_before: NAME });
  views.named_plan = await ask({ do: "plan", repair: called.repair.id });
  views.named_list = await ask({ do: "list", text: "" });
}

async function days(api, views) {
  const { ask } = api;
  const at = async (stage, number, rehearsal = false) => (await (await new Walk(api).open({ number, rehearsal })).plan()).to(stage);
  await (await new Walk(api).open({ number: "R-08" })).plan();
  const mixed = await at("wet_out", "R-10");
  await mixed.go();
  await mixed.report({ what: "joined" }, 5);
  const over = await at("wet_out", "R-11");
  await over.go();
  await over.report({ what: "joined" }, 40);
  const held = await at("wet_out", "R-05");
  await held.go();
  await held.report({ what: "joined" }, 75);
  await held.report({ what: "target_reached", gauge_pa: 131_000 }, 52);
  for (const [pa, ago] of [[130_000, 45], [129_000, 38], [128_000, 17], [127_000, 8]]) await held.report({ what: "reading", gauge_pa: pa, pipe_mc: 12_000, upstream_um: 350_000, by: "hand", gauge: "G-04" }, ago);
  const done = await at("verification", "R-03");
  views.today = await ask({ do: "today" });
  views.found = await ask({ do: "list", text: "kettle" });
  views.rehearsed = await at("joined", "RH-1", true);
  await records(api, views, done.id);
  views.issued = await issued(done);
  views.today_done = await ask({ do: "today" });
  views.records.valid = Buffer.from((await ask({ do: "record", repair: done.id })).bytes, "base64");
  views.valid = await checkedBy(api, views.records.valid);
}

// The foreman waives what stands in the way, and both sign.
async function issued(done) {
  await done.report({ what: "at_the_mark", beyond_um: -3_000 });
  await done.answer("wet_out", "placement", "inflation", "hold", "deflation", "verification");
  await done.report({ what: "lateral_opened", lateral: 1, open_pct: 94, coupon: true });
  for (const { rule, subject } of done.view.review.broken.filter(({ waived, waivable }) => waivable && !waived)) await done.waive(rule, subject);
  await done.tell({ command: "judge", accept: true, reasons: [] }, "varga");
  for (const person of ["ekdal", "varga"]) await done.tell({ command: "sign", name: "", statement: "I sign.", strokes: [[[100, 500], [900, 600]]] }, person);
  return done.ask({ do: "issue", repair: done.id });
}

const checkedBy = ({ ask }, bytes, name = "record.json") => ask({ do: "check_record", name, bytes: Buffer.from(bytes).toString("base64") });

// A record as it was saved, changed by one letter, no record at all, and a rehearsal's: the bytes and what the check says.
async function records(api, views, id) {
  const bytesOf = async (repair) => Buffer.from((await api.ask({ do: "record", repair })).bytes, "base64");
  const whole = await bytesOf(id);
  views.records = { unfinished: whole, changed: Buffer.from(whole.toString().replace("Kettle Row", "Kettle Raw")), no_record: Buffer.from("not a record"), rehearsal: await bytesOf(views.rehearsed.id) };
  for (const [key, bytes] of Object.entries(views.records)) views[key] = await checkedBy(api, bytes, key === "no_record" ? NAME : "record.json");
}
