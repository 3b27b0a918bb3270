// Pictures in Chromium, of `mendline serve`.

import { chromium } from "playwright-core";
import { inBrowser } from "../hands.mjs";
import { serveMendline } from "../mendline.mjs";
import { asker } from "../walk.mjs";
import { fromFolder } from "./from-folder.mjs";

const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run"];

/** Returns { api, take, end } for these sizes. */
export async function inBrowserShots(sizes) {
  const core = await serveMendline();
  const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: FLAGS });
  const pages = new Map();
  for (const { name, width, height } of sizes) {
    const context = await browser.newContext({ viewport: { width, height }, deviceScaleFactor: 1 });
    await context.addInitScript(() => localStorage.setItem("mendline.person", "varga"));
    const page = await context.newPage();
    const problems = [];
    page.on("console", (said) => said.type() === "error" && problems.push(said.text()));
    page.on("pageerror", (problem) => problems.push(String(problem)));
    await fromFolder(page);
    await page.goto(core.address);
    await page.locator("h1").waitFor();
    pages.set(name, { page, problems });
  }
  return {
    api: asker(core.address),
    end: async () => { await browser.close(); await core.stop(); },
    take: async ({ hash, act }, { name, width, height }, lights) => {
      const { page, problems } = pages.get(name);
      await page.evaluate((to) => { for (const key of Object.keys(localStorage)) if (/draft|outbox/.test(key)) localStorage.removeItem(key); location.hash = to; }, hash);
      await page.reload();
      await page.waitForFunction(() => document.querySelector("h1") !== null && !document.title.startsWith("Opening"));
      await page.waitForTimeout(500);
      // Photos within what is folded are never fetched.
      await page.waitForFunction(() => [...document.querySelectorAll("img[data-photo]")].every((photo) => photo.naturalWidth > 0 || !photo.checkVisibility()));
      await act?.(inBrowser(page));
      if (act) await page.waitForTimeout(700);
      await page.evaluate(() => { document.activeElement?.blur(); scrollTo(0, 0); });
      const pictures = [];
      for (const light of lights) {
        await page.evaluate((to) => { document.documentElement.dataset.light = to; }, light);
        pictures.push({ light, png: await page.screenshot() });
        const tall = await page.evaluate(() => document.documentElement.scrollHeight);
        if (light === "day" && tall > height) pictures.push({ light, whole: true, png: await page.screenshot({ fullPage: true }) });
      }
      const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      return { pictures, problems: [...problems.splice(0), ...(wider > 0 ? [`${wider} px wider than the screen of ${width}`] : [])] };
    },
  };
}
