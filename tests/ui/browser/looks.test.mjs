// Every sample and with it every part: accessible, nothing wider than the screen, every target large enough.

import test from "node:test";
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { inChromium } from "./kit.mjs";

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const chromium = inChromium();
const { skip } = chromium;

// Tall enough that the deck covers nothing: what lies under it is scrolled into sight by hand.
const TALL = { viewport: { width: 360, height: 1600 } };

/** Opens each sample in turn and hands it on. */
async function eachSample(options, lights, run) {
  const { page, url, close } = await chromium.open("gallery/index.html", options);
  for (const name of await page.evaluate(() => Object.keys(SAMPLES))) {
    for (const light of lights) {
      await page.goto(`${url}gallery/index.html#${name}/${light}`);
      await page.evaluate(() => show());
      await run(page, `${name} ${light}`);
    }
  }
  await close();
}

test("WCAG 2.2 AA in three lights, with AAA contrast in the stages", { skip, timeout: 300_000 }, async () => {
  const found = [];
  await eachSample(TALL, ["day", "sun", "night"], async (page, name) => {
    await page.evaluate(axeSource);
    const violations = await page.evaluate(async () => (await axe.run({ runOnly: { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
      rules: document.querySelector("main.stage") ? { "color-contrast-enhanced": { enabled: true } } : {} })).violations.map((v) => `${v.id}: ${v.nodes[0].html.slice(0, 160)}`));
    found.push(...violations.map((violation) => `${name}: ${violation}`));
  });
  assert.deepEqual([...new Set(found)], []);
});

for (const [what, options, zoom] of [["320 px", { viewport: { width: 320, height: 568 } }, 1], ["200 % text on a phone", {}, 2], ["200 % text on a laptop", { viewport: { width: 1280, height: 800 } }, 2]]) {
  test(`nothing is wider than the screen at ${what}`, { skip, timeout: 120_000 }, async () => {
    const wide = [];
    await eachSample(options, ["day"], async (page, name) => {
      await page.evaluate((factor) => { document.documentElement.style.fontSize = `${16 * factor}px`; }, zoom);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      if (over > 0) wide.push(`${name}: ${over} px`);
    });
    assert.deepEqual(wide, []);
  });
}

test("targets are 64 px high in stages and 48 px elsewhere", { skip, timeout: 120_000 }, async () => {
  const small = [];
  await eachSample({}, ["day"], async (page, name) => {
    const found = await page.evaluate(() => {
      const least = document.querySelector("main.stage, .alarm") ? 64 : 48;
      // A row's link reaches over its whole article, a label belongs to its control.
      const boxOf = (control) => (control.closest("label, .live") ?? control).getBoundingClientRect();
      return [...document.querySelectorAll("a[href], button, input, select, textarea")].filter((control) => control.offsetParent !== null && boxOf(control).height < least - 0.5)
        .map((control) => `${(control.innerText || control.id || control.name).slice(0, 30)} ${Math.round(boxOf(control).height)} < ${least}`);
    });
    small.push(...found.map((one) => `${name}: ${one}`));
  });
  assert.deepEqual(small, []);
});

test("the focus can be seen, and nothing moves where motion is not wanted", { skip }, async () => {
  const { page, close } = await chromium.open("gallery/index.html#hold", { reducedMotion: "reduce" });
  await page.keyboard.press("Tab");
  const outline = await page.evaluate(() => getComputedStyle(document.activeElement).outlineWidth);
  assert.equal(outline, "3px");
  assert.equal(await page.evaluate(() => document.getAnimations().length), 0);
  await close();
});
