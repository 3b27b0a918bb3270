// A rehearsal that is played, through the screens: begun from an empty folder, marked on every screen, with its debrief.

import assert from "node:assert/strict";
import { test } from "node:test";
import { SIZES, flaws, goTo, onCore } from "./served.mjs";
import { Walk } from "./walk.mjs";

const served = onCore();
const HASH = /#\/repair\/([0-9a-f]{32})/;

/** Begins a rehearsal by taps alone. Returns its id. */
async function begin(page, mishap) {
  await page.locator("#root").getByText("Rehearse the job").click();
  await page.locator("#root").getByText(mishap, { exact: true }).click();
  await page.waitForTimeout(500);
  await page.locator("#root").getByText("Begin the rehearsal").click();
  await page.waitForFunction(() => location.hash.startsWith("#/repair/"));
  await page.locator("#root").getByText("What you would see").waitFor();
  // A touch on what has just appeared counts as a ghost.
  await page.waitForTimeout(600);
  return HASH.exec(await page.evaluate(() => location.hash))[1];
}

/** Returns the walk of a repair that is there already. */
async function walking(id) {
  const view = await served.api.ask({ do: "repair", repair: id });
  return Object.assign(new Walk(served.api), { id, view });
}

for (const size of SIZES) {
  test(`a rehearsal with a leaking packer on a ${size.name}: the gauge falls on the screen, the debrief names the rule`, { timeout: 180_000 }, async () => {
    const { page, close } = await served.open(size, { person: null });
    const id = await begin(page, "Leaking packer");
    const walk = await walking(id);
    await walk.to("hold");
    await served.api.ask({ do: "pace", repair: id, pace: 60 });
    await goTo(page, `#/repair/${id}`);
    await page.getByRole("heading", { name: "Hold", exact: true }).waitFor();
    const gauge = async () => Number((await page.locator(".sights dd").first().innerText()).split(/\s/)[0]);
    const before = await gauge();
    assert.ok(before > 1.2, `${before} bar`);
    await page.locator("#root").getByText("You hear air at the hose coupling.").waitFor({ timeout: 20_000 });
    await page.waitForFunction((was) => Number.parseFloat(document.querySelector(".sights dd").textContent) < was - 0.3, before, { timeout: 40_000 });
    assert.deepEqual(await flaws(page), []);
    const { practice } = await served.api.ask({ do: "repair", repair: id });
    const gauge_pa = practice.sights.find(({ seen }) => seen === "gauge_pa").value;
    await walk.report({ what: "reading", gauge_pa, pipe_mc: 12_800, by: "hand", gauge: "G-04" });
    await walk.report({ what: "released", emergency: true });
    await walk.answer("deflation");
    await walk.goOn();
    await walk.tell({ command: "judge", accept: false, reasons: ["An edge has lifted."] }, "varga");
    await goTo(page, `#/repair/${id}/debrief`);
    await page.locator("#root").getByText("Not met").waitFor();
    const said = await page.locator("main").innerText();
    for (const words of ["Leaking packer", "Not met", "Released after", "is outside the window", "Attempt 1"]) assert.ok(said.includes(words), `${words} is missing: ${said}`);
    for (const light of ["day", "sun", "night"]) {
      await page.evaluate((to) => { document.documentElement.dataset.light = to; }, light);
      assert.deepEqual(await flaws(page, { colours: light !== "day" }), []);
    }
    await close();
  });
}

test("every screen of a rehearsal says so: a frame, and the word", { timeout: 120_000 }, async () => {
  const { page, close } = await served.open(SIZES[0], { person: null });
  const id = await begin(page, "Late crew");
  const walk = await walking(id);
  const screens = ["", "/plan", "/paper", "/branches", "/checks", "/checks/end-thrust", "/debrief", "/note", "/stop", "/photo", "/tasks", "/review", "/correct", "/label"];
  const unmarked = [];
  const look = async (where) => {
    for (const side of screens) {
      await goTo(page, `#/repair/${id}${side}`);
      const marked = await page.evaluate(() => document.querySelector(".screen.rehearsal") !== null && document.querySelector(".rehearsal-word")?.checkVisibility() === true);
      if (!marked) unmarked.push(`${where}: ${side || "/"}`);
    }
  };
  await look("planned");
  await walk.to("hold");
  screens.push("/reading", "/sample", "/hold", "/ago/joined");
  await look("hold");
  assert.deepEqual(unmarked, []);
  await goTo(page, "#/");
  assert.match(await page.locator("main").innerText(), /REHEARSAL/);
  await close();
});

test("the clock of a rehearsal runs at its pace on the screen, the first screen keeps the time of day", { timeout: 60_000 }, async () => {
  const { page, close } = await served.open(SIZES[1], { person: null });
  await begin(page, "Hot day");
  const clock = async () => { const [h, m] = /(\d\d):(\d\d)/.exec(await page.locator(".mast-side").first().innerText()).slice(1).map(Number); return h * 60 + m; };
  assert.equal(await clock(), 6 * 60 + 42);
  await page.locator("#root").getByText("× 60").click();
  await page.waitForTimeout(4_000);
  const gone = (await clock()) - (6 * 60 + 42);
  assert.ok(gone >= 3 && gone <= 8, `${gone} min gone in 4 s`);
  await goTo(page, "#/");
  const now = new Date();
  const shown = /(\d\d):(\d\d)/.exec(await page.locator(".mast-side").first().innerText());
  const off = Math.abs(Number(shown[1]) * 60 + Number(shown[2]) - now.getHours() * 60 - now.getMinutes());
  assert.ok(off <= 1 || off >= 1439, `${shown[0]} is not the time of day`);
  await close();
});
