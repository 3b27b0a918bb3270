// Every screen of the stages, on a real core: accessible with the higher contrast in three lights, nothing too wide or too low,
// the act under the thumb, and large targets.

import assert from "node:assert/strict";
import { test } from "node:test";
import { SIZES, flaws, goTo, onCore } from "./served.mjs";
import { stages } from "./stages.mjs";

const served = onCore();
const [PHONE] = SIZES;
const LANDSCAPE = { width: 640, height: 360 };
const SMALL = { width: 320, height: 568 };

/** What is wrong with the place and the size of what is touched, at the phone's size. */
const reach = () => {
  const found = [];
  const boxOf = (control) => (control.closest("label") ?? control).getBoundingClientRect();
  for (const control of document.querySelectorAll("main.stage :is(a[href], button, input, select, textarea), .deck :is(a, button), .others a")) {
    if (control.checkVisibility() && !control.closest("dialog") && boxOf(control).height < 63.5) found.push(`${(control.innerText || control.id || control.name).slice(0, 40)}: ${Math.round(boxOf(control).height)} px high`);
  }
  const act = document.querySelector(".deck > .act")?.getBoundingClientRect();
  // A rehearsal wears a frame round the whole screen.
  const frame = document.querySelector(".rehearsal") ? 16 : 1;
  if (act && (Math.abs(act.bottom - innerHeight) > frame || act.height < 64)) found.push(`the act ends at ${act.bottom} of ${innerHeight}`);
  for (const button of document.querySelectorAll(".entry")) if (button.querySelectorAll("[data-step]").length !== 2) found.push(`no − and + at ${button.innerText}`);
  return found;
};

/** How far the page is wider than the screen, and words that are cut off. */
const lost = () => {
  const over = document.documentElement.scrollWidth - innerWidth;
  const cut = [...document.querySelectorAll("main :is(p, h1, h2, b, small, dd, dt, label, li), .deck :is(b, small, p)")].filter((one) => one.checkVisibility() && !one.closest(".unseen, .over, .scroll, svg") && one.getBoundingClientRect().right > innerWidth + 1);
  return [...(over > 0 ? [`${over} px too wide`] : []), ...cut.map((one) => `cut off: ${one.innerText.slice(0, 40)}`)];
};

test("contrast, names, width, targets and the reach of a thumb, in three lights", { timeout: 600_000 }, async () => {
  const found = new Set();
  const { page, close } = await served.open(PHONE);
  for await (const { name, hash } of stages(served.api)) {
    await goTo(page, hash);
    await page.setViewportSize(PHONE);
    await page.evaluate(() => { document.documentElement.dataset.light = "day"; });
    for (const flaw of await page.evaluate(reach)) found.add(`${name}: ${flaw}`);
    for (const light of ["day", "sun", "night"]) {
      await page.evaluate((to) => { document.documentElement.dataset.light = to; }, light);
      for (const flaw of await flaws(page, { colours: light !== "day" })) found.add(`${name}, ${light}: ${flaw}`);
    }
    for (const [what, size, factor] of [["320 px", SMALL, 1], ["200 % text", PHONE, 2], ["landscape", LANDSCAPE, 1], ["200 % text on a laptop", SIZES[1], 2]]) {
      await page.setViewportSize(size);
      await page.evaluate((by) => { document.documentElement.style.fontSize = `${16 * by}px`; }, factor);
      for (const flaw of await page.evaluate(lost)) found.add(`${name}, ${what}: ${flaw}`);
      await page.evaluate(() => { document.documentElement.style.fontSize = ""; });
    }
  }
  await close();
  assert.deepEqual([...found], []);
});
