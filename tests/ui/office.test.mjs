// The office in a browser on the real core: what is typed there, and what becomes of it.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { serveMendline } from "./mendline.mjs";
import { Walk, asker } from "./walk.mjs";

const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run"];
const SIZES = [{ width: 360, height: 640 }, { width: 1280, height: 800 }];
const INSPECTION = fileURLToPath(new URL("../../fixtures/inspections/quillmere.txt", import.meta.url));
const HOSTILE = "<img src=x onerror=alert(1)>";

let browser, core, api, ids, file;
before(async () => {
  core = await serveMendline();
  api = asker(core.address);
  browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: FLAGS, timeout: 30_000 });
  const walked = async (stage, options) => (await (await new Walk(api).open(options)).plan()).to(stage);
  ids = { taken: (await new Walk(api).open({ number: "R-01" })).id, mixed: (await walked("joined", { number: "R-02" })).id, rehearsal: (await walked("joined", { number: "RH-01", rehearsal: true })).id, verification: (await walked("verification", { number: "R-03" })).id };
  ({ files: [{ file }] } = await api.ask({ do: "inspections" }));
}, { timeout: 120_000 });
after(async () => { await browser?.close(); await core?.stop(); });

/** Opens an address; closing fails on what went wrong in the page meanwhile. */
async function open(hash, { viewport = SIZES[1], person = "varga", address = core.address } = {}) {
  const context = await browser.newContext({ viewport });
  await context.addInitScript((who) => localStorage.setItem("mendline.person", who), person);
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  const problems = [];
  page.on("console", (said) => said.type() === "error" && problems.push(said.text()));
  page.on("pageerror", (problem) => problems.push(String(problem)));
  page.on("dialog", (dialog) => { problems.push(`a dialog: ${dialog.message()}`); dialog.dismiss(); });
  await page.goto(address);
  await page.locator("h1").waitFor();
  await page.evaluate((to) => { location.hash = to; }, hash);
  await page.waitForFunction((to) => location.hash === to && document.querySelector("h1")?.textContent !== "Opening", hash);
  await page.waitForTimeout(200);
  return { page, act: page.locator(".deck > .act"), close: async () => { await context.close(); assert.deepEqual(problems, []); } };
}

const heading = (page, name) => page.getByRole("heading", { level: 1, name }).waitFor();

test("a defect that was read from the other node, looking the other way, is opened as it lies", { timeout: 60_000 }, async () => {
  const { page, act, close } = await open("#/by-hand");
  const typed = { asset: HOSTILE, upstream: "MH 9", downstream: "MH 10", street: HOSTILE, material: "clay", words: HOSTILE };
  for (const [name, text] of Object.entries(typed)) await page.fill(`#hand-${name}`, text);
  await act.click();
  await page.locator("#root").getByText("Still missing: the length of the line, the nominal size, where the defect begins.").waitFor();
  for (const [id, text] of Object.entries({ length_um: "38.4", height_um: "200", from_um: "31", to_um: "31,28", hour_from: "1", hour_to: "4" })) await page.fill(`#${id}`, text);
  await page.locator("label:has(input[name='seen.counted_from'][value=downstream])").click();
  await page.locator("label:has(input[name='seen.looking'][value=upstream])").click();
  await act.click();
  await heading(page, "Plan");
  const id = page.url().split("/").at(-2);
  const { repair } = await api.ask({ do: "repair", repair: id });
  assert.deepEqual([repair.defect.from_um, repair.defect.to_um], [7_120_000, 7_400_000]);
  assert.deepEqual(repair.defect.observations[0].around, { kind: "between", from: 8, to: 11 });
  await page.evaluate(() => { location.hash = "#/search"; });
  await page.locator("#root").getByText(HOSTILE).first().waitFor();
  assert.equal(await page.locator("img").count(), 0);
  await close();
});

test("from an hour to the same hour is asked once, and the answer is kept with the defect", { timeout: 60_000 }, async () => {
  const { page, act, close } = await open(`#/intake/${file}/2`);
  await page.locator(".choice label b", { hasText: "Displaced joint" }).click();
  assert.equal(await page.locator("#root").getByText("From an hour to the same hour means:").count(), 0);
  await act.click();
  await page.getByRole("heading", { name: "From an hour to the same hour means:" }).waitFor();
  await page.locator(".pair label", { hasText: "All round" }).click();
  await act.click();
  await heading(page, "Plan");
  const { repair } = await api.ask({ do: "repair", repair: page.url().split("/").at(-2) });
  assert.deepEqual(repair.defect.observations[0].around, { kind: "all_round" });
  await close();
});

test("lines are found by street, node or key", { timeout: 60_000 }, async () => {
  const { page, close } = await open("#/intake");
  await page.fill("#intake-text", "lantern 122");
  await page.locator("#root").getByText("2 of 7").waitFor();
  assert.deepEqual(await page.locator("a.way b").allInnerTexts(), ["MH 122 to MH 123", "CO 7 to MH 122", "Enter a defect by hand"]);
  await close();
});

test("an inspection file is taken in from the disk, a broken one is refused with its reason", { timeout: 60_000 }, async () => {
  const { page, close } = await open("#/intake");
  await page.setInputFiles("#inspection-file", { name: "cut.txt", mimeType: "text/plain", buffer: readFileSync(INSPECTION).subarray(0, 40) });
  await page.locator("#take-in-form button").click();
  await page.locator("#root").getByText("cut.txt was not taken in.").waitFor();
  await page.setInputFiles("#inspection-file", INSPECTION);
  await page.locator("#take-in-form button").click();
  await page.locator("#root").getByText("quillmere.txt").waitFor();
  await close();
});

test("a plan is computed at every change and written only when it is accepted", { timeout: 60_000 }, async () => {
  const { page, act, close } = await open(`#/repair/${ids.taken}/plan`);
  const before = await api.ask({ do: "record", repair: ids.taken });
  await page.locator("#root").getByText("Closed: temperatures missing").waitFor();
  const measure = async (degrees) => { for (const [i, id] of ["resin_mc", "air_mc", "pipe_mc"].entries()) await page.fill(`#${id}`, degrees[i]); };
  await measure(["27", "25", "12"]);
  await page.locator("#root").getByText(/Closed: \d+\smin \d+\ss too short/).waitFor();
  await page.locator("#root").getByText("It can’t be waived.").waitFor();
  await act.click();
  assert.equal(await page.evaluate(() => document.activeElement.id), "resin_mc");
  assert.deepEqual(await api.ask({ do: "record", repair: ids.taken }), before);
  await measure(["14", "12", "9.5"]);
  await page.locator("#root").getByText("Accept this plan").waitFor();
  // Whoever taps before it was computed anew sees it first.
  await act.evaluate((button) => {
    const field = document.getElementById("resin_mc");
    field.value = "15";
    field.dispatchEvent(new Event("input", { bubbles: true }));
    button.click();
  });
  await page.locator("#root").getByText("warmest: resin, 15 °C").waitFor();
  assert.deepEqual(await api.ask({ do: "record", repair: ids.taken }), before);
  await act.click();
  await heading(page, "Planned");
  const { repair } = await api.ask({ do: "repair", repair: ids.taken });
  assert.equal(repair.plan.choice.temperatures.resin_mc, 15_000);
  await close();
});

test("a short cover goes to the foreman, in a dialog with his reason", { timeout: 60_000 }, async () => {
  const { page, act, close } = await open(`#/repair/${(await new Walk(api).open({ number: "R-20" })).id}/plan`);
  for (const [id, degrees] of [["resin_mc", "14"], ["air_mc", "12"], ["pipe_mc", "10"]]) await page.fill(`#${id}`, degrees);
  await page.locator("#root").getByText("Accept this plan").waitFor();
  await page.locator("#pick-patch label", { hasText: "400 mm" }).first().click();
  await page.locator("#root").getByText("Closed: cover short").waitFor();
  await page.getByRole("button", { name: /Ask the foreman/ }).click();
  await page.locator("dialog[open] textarea").fill("The owner asked for the short one.");
  await page.locator("dialog[open] .act").click();
  await page.locator("#root").getByText("The owner asked for the short one.").waitFor();
  await page.locator("#root").getByText("Accept this plan").waitFor();
  await act.click();
  await heading(page, "Planned");
  await close();
});

test("every document of the shelf can be looked at and kept without changing a letter", { timeout: 180_000 }, async () => {
  const { page, act, close } = await open("#/shelf");
  const shelf = async () => { const { kind, ...all } = await api.ask({ do: "shelf" }); return { kind, ...all }; };
  const kinds = { contract: "contracts", resin: "resins", patch: "patches", packer: "packers", instrument: "instruments", method: "methods", person: "people" };
  const before = await shelf();
  for (const [kind, list] of Object.entries(kinds)) {
    for (const { id } of before[list].slice(0, 6)) {
      await page.evaluate((to) => { location.hash = to; }, `#/shelf/${kind}/${encodeURIComponent(id)}`);
      await page.locator(`form.sheet input[value="${id}"]`).first().waitFor();
      await act.click();
      await page.waitForFunction((to) => location.hash === to, `#/shelf/${kind}`);
    }
  }
  assert.deepEqual(await shelf(), before);
  await close();
});

test("a value of a sheet is changed in its unit, a row is added and taken out, and what is missing is named", { timeout: 60_000 }, async () => {
  const { page, act, close } = await open("#/shelf/resin/Q45");
  const path = "document-sheet-working_time-rows-points";
  const rows = (await api.ask({ do: "shelf" })).resins.find(({ id }) => id === "Q45").working_time.rows.points.length;
  await page.fill("#document-sheet-batch_most_mg-value", "1850,5");
  await page.fill(`#${path}-${rows}-at_mc`, "35");
  await act.click();
  await page.getByRole("link", { name: "Time: is missing." }).waitFor();
  await page.fill(`#${path}-${rows}-ms`, "9");
  await page.fill(`#${path}-0-at_mc`, "");
  await page.fill(`#${path}-0-ms`, "");
  await act.click();
  await page.waitForFunction(() => location.hash === "#/shelf/resin");
  const sheet = (await api.ask({ do: "shelf" })).resins.find(({ id }) => id === "Q45");
  assert.equal(sheet.batch_most_mg.value, 1_850_500);
  assert.deepEqual([sheet.working_time.rows.points.length, sheet.working_time.rows.points.at(-1)], [rows, { at_mc: 35_000, ms: 540_000 }]);
  await close();
});

test("a task is worded anew and changes its place, and the other tasks stay", { timeout: 60_000 }, async () => {
  const { page, act, close } = await open("#/shelf/method/MS-07/edges");
  const tasks = async () => (await api.ask({ do: "shelf" })).methods[0].tasks;
  const before = await tasks();
  await page.fill('textarea[name$=".detail"]', "Slowly, all the way round.");
  await act.click();
  await page.waitForFunction(() => location.hash === "#/shelf/method/MS-07");
  const at = before.findIndex(({ key }) => key === "edges");
  assert.deepEqual(await tasks(), before.with(at, { ...before[at], detail: "Slowly, all the way round." }));
  await page.evaluate(() => { location.hash = "#/shelf/method/MS-07/edges"; });
  await page.getByRole("button", { name: /Before the one above/ }).click();
  await page.getByRole("button", { name: /After the one below Video/ }).waitFor();
  assert.equal((await tasks())[at - 1].key, "edges");
  await close();
});

test("a record is checked: whole, changed by a letter, cut at the end", { timeout: 60_000 }, async () => {
  const { page, act, close } = await open("#/check");
  const { bytes } = await api.ask({ do: "record", repair: ids.verification });
  const record = JSON.parse(Buffer.from(bytes, "base64"));
  const check = async (name, change) => {
    const brought = structuredClone(record);
    change(brought);
    await page.setInputFiles("#record", { name, mimeType: "application/json", buffer: Buffer.from(JSON.stringify(brought)) });
    await act.click();
    await heading(page, name);
  };
  await check("whole.json", () => {});
  await page.locator("#root").getByText("Chain is whole").waitFor();
  await page.locator("#root").getByText("But the repair is not complete, or not signed.").waitFor();
  await check("changed.json", (brought) => { brought.entries[9].body = brought.entries[9].body.replace(/\d/, (digit) => (Number(digit) + 1) % 10); });
  await page.getByRole("img", { name: /Chain of/ }).getByText("entry 10 does not fit").waitFor();
  await check("cut.json", (brought) => brought.entries.pop());
  await page.locator("#root").getByText("Entries are missing at the end").first().waitFor();
  await close();
});

test("a drawn line is seen again after a new start, and is sent in thousandths of the field", { timeout: 120_000 }, async () => {
  const done = await (await (await new Walk(api).open({ number: "R-30" })).plan()).to("verification");
  await done.report({ what: "at_the_mark", beyond_um: 0 });
  await done.answer("wet_out", "placement", "inflation", "hold", "verification");
  await done.report({ what: "lateral_opened", lateral: 1, open_pct: 98, coupon: true });
  for (const one of done.view.review.broken.filter(({ waived, waivable }) => waivable && !waived)) await done.waive(one.rule, one.subject);
  await done.tell({ command: "judge", accept: true, reasons: [] }, "varga");
  const { page, act, close } = await open(`#/repair/${done.id}/sign`, { person: "ekdal" });
  const pad = page.locator("canvas.pad");
  await pad.scrollIntoViewIfNeeded();
  const box = await pad.boundingBox();
  await page.mouse.move(box.x + box.width * 0.1, box.y + box.height * 0.5);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.5, box.y + box.height * 0.2, { steps: 5 });
  await page.mouse.move(box.x + box.width * 0.9, box.y + box.height * 0.8, { steps: 5 });
  await page.mouse.up();
  await page.reload();
  await page.locator(".pad-ink polyline").waitFor();
  await act.click();
  await page.locator("#root").getByText("Tomas Ekdal, technician").first().waitFor();
  const { repair } = await api.ask({ do: "repair", repair: done.id });
  const [stroke] = repair.signatures[0].strokes;
  assert.deepEqual([stroke[0], stroke.at(-1)].map(([x]) => Math.round(x / 100)), [1, 9]);
  await page.locator("#root").getByText("Next signs: the Foreman.").waitFor();
  await close();
});

test("a value is corrected with its reason, and old and new stand in the review", { timeout: 60_000 }, async () => {
  const { page, act, close } = await open(`#/repair/${ids.verification}/correct`);
  await page.getByRole("link", { name: "Bare end, front 198 mm" }).click();
  await page.fill("#corrected-value", "199");
  await act.click();
  await page.locator("#root").getByText("Why it was wrong: is missing.").waitFor();
  await page.fill("#correct-why", "Read at the wrong edge.");
  await act.click();
  await page.getByRole("link", { name: "Bare end, front 199 mm" }).waitFor();
  await page.evaluate((to) => { location.hash = to; }, `#/repair/${ids.verification}/review`);
  const row = page.locator("tr", { hasText: "Correction" });
  assert.match(await row.innerText(), /Bare end, front: 198\smm 199\smm at \d\d:\d\d\. Read at the wrong edge\./);
  await close();
});

test("a photo is fetched when somebody looks, and stays over every new drawing", { timeout: 60_000 }, async () => {
  const { page, close } = await open(`#/repair/${ids.verification}/review`);
  const photo = page.locator("img[data-photo]").first();
  assert.equal(await photo.getAttribute("src"), null);
  await page.locator("summary", { hasText: "Staging" }).click();
  await page.waitForFunction(() => document.querySelector("details[open] img[data-photo]")?.naturalWidth > 0);
  await page.waitForTimeout(1_300);
  assert.match(await photo.getAttribute("src"), /^blob:/);
  await close();
});

test("the first start leads from the invented examples to who is there, and back to today", { timeout: 60_000 }, async () => {
  const own = await serveMendline();
  const { page, act, close } = await open("#/", { viewport: SIZES[0], person: "", address: own.address });
  await page.getByRole("button", { name: /Take the invented examples/ }).click();
  await heading(page, "Who are you?");
  await page.locator(".choice label b", { hasText: "Ines Varga" }).click();
  await act.click();
  await heading(page, "Today, crew 3");
  await page.locator("#root").getByText("Ines Varga taps on this device").waitFor();
  await page.locator("#root").getByText("No repair yet").waitFor();
  await close();
  await own.stop();
});
