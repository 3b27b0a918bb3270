// Somebody who reads feet, inches, psi and °F meets no other unit on any screen, in no drawing and in no name that is read aloud.

import assert from "node:assert/strict";
import { test } from "node:test";
import { goTo, onCore } from "./served.mjs";
import { shots } from "./shots.mjs";
import { Walk } from "./walk.mjs";

const served = onCore();

/** What keeps its own unit: the names of documents, and the measures of a defect, which EN 13508-2 codes in millimetres. */
const OWN = "\\(invented\\)$|^(Crack|Open crack|Broken pipe), .* mm (wide|long)|^(Pressure gauge|Thermometer|Scale) [A-Z]-\\d+, ";

/** Every text and name with a metric figure in it. */
const metric = (own) => {
  const found = new Set();
  const sign = /\d\s?(mm|m|bar|mbar|°C|kg|g|l|kPa|MPa|N|kN)(?![\p{L}\d/²³])/u;
  const look = (text) => { if (sign.test(text) && !new RegExp(own).test(text.trim().replaceAll("\u00a0", " "))) found.add(text.trim().slice(0, 120)); };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) look(walker.currentNode.textContent);
  for (const one of document.querySelectorAll("[aria-label]")) look(one.getAttribute("aria-label"));
  return [...found];
};

test("no metric figure on any screen for a reader of US customary units", { timeout: 300_000 }, async () => {
  const { page, close } = await served.open({ width: 1280, height: 800 }, { person: "varga" });
  await page.evaluate(() => localStorage.setItem("mendline.units.varga", "us"));
  const found = [];
  for await (const { name, hash } of shots(served.api)) {
    await goTo(page, hash);
    await page.reload();
    await page.locator("h1").waitFor();
    found.push(...(await page.evaluate(metric, OWN)).map((text) => `${name}: ${text}`));
  }
  await close();
  assert.deepEqual(found, []);
});

test("a calculation takes and gives inches, psi and pounds-force for a reader of US customary units", { timeout: 60_000 }, async () => {
  const { page, close } = await served.open({ width: 1280, height: 800 }, { person: "varga" });
  await page.evaluate(() => localStorage.setItem("mendline.units.varga", "us"));
  await goTo(page, "#/checks/end-thrust");
  await page.reload();
  await page.locator("#w-gauge_bar").fill("20");
  await page.locator("#w-inside_diameter_mm").fill("8");
  // 20 psi on a circle of 8 in: 20 · π/4 · 8² = 1005.3 pounds-force.
  await page.locator("#root").getByText("1005.3\u00a0lbf").waitFor();
  await close();
});

test("a slip of the unit in a calculation of a repair is asked about, and nothing is kept before", { timeout: 60_000 }, async () => {
  const { id } = await new Walk(served.api).open({ number: "R-97" });
  const { page, close } = await served.open({ width: 1280, height: 800 }, { person: "varga" });
  await goTo(page, `#/repair/${id}/checks/end-thrust`);
  await page.locator("#w-gauge_bar").fill("1.2");
  // The line is DN 200: 8 mm is not likely, 8 in is.
  await page.locator("#w-inside_diameter_mm").fill("8");
  await page.locator('[data-means="w-inside_diameter_mm"][data-value="8 in"]').click();
  // 120 000 Pa on a circle of 0.2032 m: π/4 · 0.2032² · 120 000 = 3891.5 N.
  await page.locator("#root").getByText("3891.5\u00a0N").waitFor();
  await close();
});
