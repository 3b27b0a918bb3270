// One core on a folder of its own and one Chromium for a file of tests. A page fails its test when it logs an error, opens a
// box of the browser or reaches outside.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { after, before } from "node:test";
import { chromium } from "playwright-core";
import { serveMendline } from "./mendline.mjs";
import { fromFolder } from "./shots/from-folder.mjs";
import { asker } from "./walk.mjs";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run"];

/** The two sizes that the screens are drawn for. */
export const SIZES = [{ name: "phone", width: 360, height: 640 }, { name: "laptop", width: 1280, height: 800 }];

/** Returns { api, core, open }. They are there once the tests run. `prepare(at)` fills the core before them. */
export function onCore(prepare = () => {}) {
  const at = {};
  let browser;
  before(async () => {
    at.core = await serveMendline();
    at.api = asker(at.core.address);
    browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: FLAGS, timeout: 30_000 });
    await prepare(at);
  }, { timeout: 120_000 });
  after(async () => { await browser?.close(); await at.core?.stop(); });

  /** Opens a screen by its hash for `person`, or for nobody. `close` fails on what went wrong meanwhile. */
  at.open = async ({ width, height }, { hash = "#/", person = "ekdal", core = at.core } = {}) => {
    const context = await browser.newContext({ viewport: { width, height } });
    if (person) await context.addInitScript((id) => { localStorage.getItem("mendline.person") ?? localStorage.setItem("mendline.person", id); }, person);
    const page = await context.newPage();
    page.setDefaultTimeout(10_000);
    const problems = [];
    page.on("console", (message) => { if (message.type() === "error") problems.push(message.text()); });
    page.on("pageerror", (problem) => problems.push(String(problem)));
    page.on("dialog", (box) => { problems.push(`${box.type()}: ${box.message()}`); box.dismiss(); });
    page.on("request", (request) => { if (new URL(request.url()).origin !== core.origin && !/^(blob|data):/.test(request.url())) problems.push(`outside: ${request.url()}`); });
    await fromFolder(page);
    await page.goto(core.address);
    await page.locator("h1").waitFor();
    await goTo(page, hash);
    return { page, close: async () => { await context.close(); assert.deepEqual(problems, []); } };
  };
  return at;
}

/** Goes to a screen and waits until the core has answered. */
export async function goTo(page, hash) {
  await page.evaluate((to) => { location.hash = to; }, hash);
  await page.waitForFunction((to) => location.hash === to && !document.title.startsWith("Opening"), hash);
  await page.waitForTimeout(100);
}

/**
 * Returns what is wrong with a screen as it stands: WCAG 2.2 AA, its width, the height of its targets, an element that a name
 * made. `colours` asks for the contrast alone, where only the light has changed.
 */
export async function flaws(page, { colours = false } = {}) {
  const size = page.viewportSize();
  // Tall, so that the deck covers nothing that is measured.
  await page.setViewportSize({ ...size, height: 12_000 });
  await page.evaluate(AXE);
  const found = await page.evaluate(async (only) => {
    const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
    // Beside the manhole the contrast is higher.
    const street = document.querySelector("main.stage") !== null;
    const contrast = street ? "color-contrast-enhanced" : "color-contrast";
    const { violations } = await axe.run(only ? { runOnly: { type: "rule", values: [contrast] } } : { runOnly: { type: "tag", values: tags }, rules: street ? { [contrast]: { enabled: true } } : {} });
    const wide = document.documentElement.scrollWidth - innerWidth;
    const boxOf = (control) => (control.closest("label, .live") ?? control).getBoundingClientRect();
    const low = [...document.querySelectorAll("a[href], button, input, select, textarea, summary")].filter((control) => control.offsetParent !== null && boxOf(control).height < 47.5);
    return [
      ...violations.map(({ id, nodes }) => `${id}: ${nodes[0].html.slice(0, 160)} (${nodes.length})`),
      ...(wide > 0 ? [`${wide} px wider than the screen`] : []),
      ...low.map((control) => `${(control.innerText || control.id || control.name).slice(0, 40)}: ${Math.round(boxOf(control).height)} px high`),
      ...(document.querySelector("img[src='x']") ? ["a name became an element"] : []),
    ];
  }, colours);
  await page.setViewportSize(size);
  return found;
}
