// Takes pictures of every sample at phone and laptop size in the three lights: node gallery/shots.mjs FOLDER [name …]

import { mkdirSync } from "node:fs";
import { chromium } from "playwright-core";
import { serve } from "../serve.mjs";

const [folder = "out", ...only] = process.argv.slice(2);
const SIZES = [{ width: 360, height: 640, scale: 2 }, { width: 1280, height: 800, scale: 1 }];

mkdirSync(folder, { recursive: true });
const { url, close } = await serve(() => ({}));
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: ["--no-sandbox"] });
for (const { width, height, scale } of SIZES) {
  const page = await browser.newPage({ viewport: { width, height }, deviceScaleFactor: scale });
  page.on("console", (m) => { if (m.type() !== "log") console.log(m.type(), m.text()); });
  page.on("pageerror", (problem) => console.log(problem));
  await page.goto(`${url}gallery/index.html`);
  const names = only.length > 0 ? only : await page.evaluate(async () => Object.keys((await import("/gallery/samples.js")).SAMPLES));
  for (const name of names) {
    for (const light of ["day", "sun", "night"]) {
      await page.goto(`${url}gallery/index.html#${name}/${light}`);
      await page.evaluate(() => document.fonts.ready);
      await page.screenshot({ path: `${folder}/${name}_${light}_${width}x${height}.png` });
      if (light === "day" && width === 360) await page.screenshot({ path: `${folder}/${name}_${light}_${width}_whole.png`, fullPage: true });
    }
  }
  await page.close();
}
await browser.close();
close();
