// The same taps for a browser and for the real window.

import { readFile } from "node:fs/promises";
import { basename } from "node:path";
import { until } from "./driver.mjs";

const HOLD_MS = 2_500;

const waiting = (screen) => (what, says) => until(what).catch(async (problem) => { throw new Error(`never came true: ${says}. The screen says: ${(await screen()).slice(0, 600)}`, { cause: problem }); });

/** Hands on a page of Playwright. */
export const inBrowser = (page) => ({
  go: async (hash) => { await page.evaluate((to) => { location.hash = to; }, hash); await page.waitForTimeout(150); },
  click: (css) => page.locator(css).first().click(),
  clickText: (css, text) => page.locator(css, { hasText: text }).first().click(),
  hold: async (css) => {
    await page.locator(css).hover();
    await page.mouse.down();
    await page.waitForTimeout(HOLD_MS);
    await page.mouse.up();
  },
  type: (css, text) => page.locator(css).fill(text),
  choose: (css, value) => page.locator(css).selectOption(value),
  file: (css, path) => page.locator(css).setInputFiles(path),
  text: async (css) => (await page.locator(css).first().innerText()).trim(),
  run: (script) => page.evaluate(`(() => { ${script} })()`),
  until: waiting(() => page.locator("body").innerText()),
  draw: async (css, points) => {
    await page.locator(css).scrollIntoViewIfNeeded();
    const box = await page.locator(css).boundingBox();
    const at = ([x, y]) => [box.x + (x / 1000) * box.width, box.y + (y / 1000) * box.height];
    await page.mouse.move(...at(points[0]));
    await page.mouse.down();
    for (const point of points.slice(1)) await page.mouse.move(...at(point), { steps: 4 });
    await page.mouse.up();
  },
});

/** Hands on the window, through WebDriver. */
export const inWindow = (window) => {
  const marked = (css, text) => window.run(`const found = [...document.querySelectorAll(args[0])].find((one) => one.textContent.includes(args[1])); if (!found) throw new Error("no " + args[1]); document.querySelector("[data-hand]")?.removeAttribute("data-hand"); found.setAttribute("data-hand", ""); found.scrollIntoView({ block: "center" });`, css, text);
  const waitFor = waiting(() => window.text("body"));
  const shown = (css) => window.run(`document.querySelector(args[0])?.scrollIntoView({ block: "center" })`, css);
  return {
    go: async (hash) => { await window.run("location.hash = args[0]", hash); await window.run("await new Promise((ready) => setTimeout(ready, 150))"); },
    click: async (css) => { await window.find(css); await shown(css); await window.click(css); },
    // The screen is drawn anew every second and loses the mark, so both are tried together.
    clickText: (css, text) => waitFor(async () => { await marked(css, text); await window.clickNow("[data-hand]"); return true; }, text),
    hold: (css) => window.hold(css, HOLD_MS),
    type: async (css, text, kind) => {
      if (kind !== "date") return window.type(css, text);
      return window.run(`const input = document.querySelector(args[0]); input.value = args[1]; input.dispatchEvent(new Event("input", { bubbles: true }));`, css, text);
    },
    choose: (css, value) => window.run(`const list = document.querySelector(args[0]); list.value = args[1]; list.dispatchEvent(new Event("input", { bubbles: true }));`, css, value),
    file: async (css, path) => window.run(`const bytes = Uint8Array.from(atob(args[1]), (letter) => letter.charCodeAt(0)); const given = new DataTransfer(); given.items.add(new File([bytes], args[2])); document.querySelector(args[0]).files = given.files;`,
      css, (await readFile(path)).toString("base64"), basename(path)),
    text: async (css) => (await window.text(css)).trim(),
    run: (script) => window.run(script),
    until: waitFor,
    draw: (css, points) => window.draw(css, points),
  };
};
