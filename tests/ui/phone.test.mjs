// The screens in a browser the size of a phone, on the real core through `mendline serve`.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { inBrowser } from "./hands.mjs";
import { wholeJob } from "./job.mjs";
import { serveMendline } from "./mendline.mjs";
import { asker } from "./walk.mjs";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run"];
const PHONES = [{ width: 390, height: 844 }, { width: 360, height: 640 }];

let browser, served;
before(async () => {
  served = await serveMendline();
  browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: FLAGS, timeout: 30_000 });
}, { timeout: 60_000 });
after(async () => { await browser?.close(); await served?.stop(); });

/** Opens the address as it was printed, and notes all that goes wrong in the page or goes out of it. */
async function openPhone(viewport, address = served.address) {
  const context = await browser.newContext({ viewport, deviceScaleFactor: 2, isMobile: true, hasTouch: true });
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  const problems = [];
  page.on("console", (message) => { if (message.type() === "error") problems.push(message.text()); });
  page.on("pageerror", (problem) => problems.push(String(problem)));
  page.on("request", (request) => { if (new URL(request.url()).origin !== served.origin && !/^(blob|data):/.test(request.url())) problems.push(`outside: ${request.url()}`); });
  await page.goto(address);
  return { page, problems, close: () => context.close() };
}

for (const viewport of PHONES) {
  test(`the first screen at ${viewport.width} × ${viewport.height}`, { timeout: 60_000 }, async () => {
    const { page, problems, close } = await openPhone(viewport);
    await page.getByRole("heading", { level: 1, name: "Today" }).waitFor();
    await page.waitForLoadState("networkidle");
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth), 0, "wider than the phone");
    await page.evaluate(AXE);
    const { violations } = await page.evaluate(() => globalThis.axe.run());
    assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`), []);
    assert.deepEqual(problems, []);
    await close();
  });
}

test("the token leaves the address bar and outlives a reload", { timeout: 60_000 }, async () => {
  const { page, problems, close } = await openPhone(PHONES[0]);
  await page.waitForFunction(() => !location.href.includes("token"));
  const answer = page.waitForResponse((response) => response.url().endsWith("/ask"));
  await page.reload();
  assert.equal((await answer).status(), 200);
  assert.deepEqual(problems, []);
  await close();
});

test("without the token no question is answered", { timeout: 60_000 }, async () => {
  const { page, close } = await openPhone(PHONES[0], served.origin);
  const status = await page.evaluate(async () => (await fetch("/ask", { method: "POST", body: "{}" })).status);
  assert.equal(status, 403);
  await close();
});

const INSPECTION = fileURLToPath(new URL("../../fixtures/inspections/quillmere.txt", import.meta.url));
const PHOTO = fileURLToPath(new URL("../../fixtures/photos/cover.jpg", import.meta.url));

for (const viewport of PHONES) {
  test(`the whole job by taps at ${viewport.width} × ${viewport.height}`, { timeout: 240_000 }, async () => {
    const own = await serveMendline();
    try {
      const { page, problems, close } = await openPhone(viewport, own.address);
      page.setDefaultTimeout(20_000);
      await page.getByRole("heading", { level: 1, name: "Today" }).waitFor();
      const number = await wholeJob(inBrowser(page), INSPECTION, PHOTO);
      assert.match(number, /^[0-9A-F]{3}-0001$/);
      const [saved] = await Promise.all([page.waitForEvent("download").catch(async () => assert.fail(`nothing was saved; the screen says: ${await page.locator("body").innerText()}`)), page.locator(".deck > .act").click()]);
      const pdf = readFileSync(await saved.path());
      assert.equal(pdf.subarray(0, 5).toString(), "%PDF-");
      assert.equal(saved.suggestedFilename(), `${number}.pdf`);
      const { repairs } = await asker(own.address).ask({ do: "list" });
      assert.deepEqual(repairs.map((one) => [one.status, one.certificate]), [["issued", number]]);
      assert.deepEqual(problems.filter((problem) => !problem.startsWith(`outside: ${own.origin}`)), []);
      await close();
    } finally {
      await own.stop();
    }
  });
}
