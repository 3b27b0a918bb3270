// How fast the screens feel, printed and not judged: `make bench-ui`. Chromium with its processor four times slower, on a core
// with live holds. Limits are the project's own. Source of the measures: W3C Event Timing, Layout Instability, and Chromium's
// Emulation.setCPUThrottlingRate.

import { readdir, stat } from "node:fs/promises";
import { basename, extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { BUILT, serveMendline } from "./mendline.mjs";
import { fromFolder } from "./shots/from-folder.mjs";
import { Walk, asker } from "./walk.mjs";

const SLOWER = 4;
const STARTS = 7;
const PHONE = { width: 360, height: 640 };
const LIMITS = { usable_ms: 1000, tap_ms: 100, shift: 0, size_kb: 300 };
const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run"];
const UI = process.env.MENDLINE_UI ?? fileURLToPath(new URL("../../ui", import.meta.url));

const core = await serveMendline();
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: FLAGS });
try {
  const repairs = await filled();
  console.log(`Chromium ${browser.version()}, ${SLOWER} times slower, ${PHONE.width} × ${PHONE.height}, ${basename(BUILT)} build; a part of the limit in brackets.`);
  await starts();
  await taps(repairs);
  await shifts(repairs);
  await sizes();
} finally {
  await browser.close();
  await core.stop();
}

/** Two holds, mixed resin, a cure, a staging and a plan: a busy day. */
async function filled() {
  const api = asker(core.address);
  const at = async (stage, number) => (await (await new Walk(api).open({ number })).plan()).to(stage);
  const planned = await (await new Walk(api).open({ number: "R-01" })).plan();
  const staging = await at("staging", "R-02");
  const push = await at("test_push", "R-03");
  const mixed = await at("joined", "R-04");
  const holds = [];
  for (const number of ["R-05", "R-06"]) {
    const hold = await at("wet_out", number);
    await hold.go();
    await hold.report({ what: "joined" }, 75);
    await hold.report({ what: "target_reached", gauge_pa: 131_000 }, 52);
    for (const [gauge_pa, ago] of [[130_000, 45], [129_000, 38], [128_000, 29], [127_000, 18], [126_000, 8]]) await hold.report({ what: "reading", gauge_pa, pipe_mc: 12_000, upstream_um: 350_000, by: "hand", gauge: "G-04" }, ago);
    holds.push(hold);
  }
  const verification = await at("verification", "R-07");
  return { planned, staging, push, mixed, hold: holds[0], verification };
}

/** Opens a page, slowed; `close` closes it with its context. `again()` opens another one that finds what the first has kept. */
async function page({ script } = {}) {
  const context = await browser.newContext({ viewport: PHONE });
  await context.addInitScript(() => localStorage.setItem("mendline.person", "ekdal"));
  if (script) await context.addInitScript(script);
  return { ...(await slowed(context)), again: () => slowed(context), close: () => context.close() };
}

async function slowed(context) {
  const one = await context.newPage();
  await fromFolder(one);
  const session = await context.newCDPSession(one);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  return { page: one, session };
}

/**
 * From the start of the navigation until the first screen is drawn with what the core answered, and takes a touch. The first start
 * on a device fetches the words of the screens, every later one has kept them. What is served may not be kept, so all else is alike.
 */
async function starts() {
  const usable = () => {
    new MutationObserver((_, seen) => {
      if (!document.querySelector("main.today .live") || globalThis.usable) return;
      seen.disconnect();
      requestAnimationFrame(() => setTimeout(() => { globalThis.usable = performance.now(); }));
    }).observe(document, { childList: true, subtree: true });
  };
  const found = { first: [], later: [] };
  const start = async ({ page: one }) => {
    await one.goto(core.address);
    await one.waitForFunction(() => globalThis.usable);
    return one.evaluate(() => globalThis.usable);
  };
  for (let n = 0; n < STARTS; n += 1) {
    const one = await page({ script: usable });
    found.first.push(await start(one));
    await one.page.waitForFunction(() => localStorage.getItem("mendline.words"));
    await one.page.close();
    found.later.push(await start(await one.again()));
    await one.close();
  }
  for (const [which, all] of Object.entries(found)) {
    line(`first screen usable, ${which} start, middle of ${STARTS}`, middle(all), LIMITS.usable_ms, "ms");
    line(`first screen usable, ${which} start, worst`, Math.max(...all), LIMITS.usable_ms, "ms");
  }
}

/** From a touch to the frame that shows its answer. */
async function taps({ planned, staging, push, hold, mixed }) {
  const watch = () => {
    globalThis.events = [];
    new PerformanceObserver((list) => { for (const { name, duration } of list.getEntries()) globalThis.events.push({ name, duration }); }).observe({ type: "event", durationThreshold: 16, buffered: true });
    // The first change of the page after the last touch, at the frame that shows it.
    globalThis.answered = null;
    let touched = null;
    addEventListener("pointerup", () => { touched = performance.now(); globalThis.answered = null; }, true);
    new MutationObserver(() => {
      if (touched === null || globalThis.answered !== null) return;
      const from = touched;
      globalThis.answered = -1;
      requestAnimationFrame(() => setTimeout(() => { globalThis.answered = performance.now() - from; touched = null; }));
    }).observe(document, { childList: true, subtree: true, attributes: true, characterData: true });
  };
  const { page: one, close } = await page({ script: watch });
  await one.goto(core.address);
  await one.locator("h1").waitFor();
  const go = async (hash) => { await one.evaluate((to) => { location.hash = to; }, hash); await one.waitForFunction(() => !document.title.startsWith("Opening")); await one.waitForTimeout(700); };
  const worst = [];
  const tap = async (name, hash, css) => {
    await go(hash);
    // The clock draws too: the touch comes just after a second has been drawn.
    await one.locator(css).first().scrollIntoViewIfNeeded();
    await one.waitForTimeout(500);
    await one.locator(css).first().click();
    await one.waitForFunction(() => globalThis.answered > 0, undefined, { timeout: 5_000 });
    const ms = await one.evaluate(() => globalThis.answered);
    worst.push(ms);
    line(`tap: ${name}`, ms, LIMITS.tap_ms, "ms");
  };
  await tap("a hold on the first screen", "#/", ".live h3 a");
  await tap("take a reading", `#/repair/${hold.id}`, ".deck > .act");
  await tap("+ at the gauge", `#/repair/${hold.id}/reading`, ".entry [data-step='1']");
  await tap("a light", "#/", ".light label:nth-of-type(2)");
  await tap("stop, while it holds", `#/repair/${hold.id}`, ".deck-more a");
  // One that is not picked yet: a touch on a picked answer changes nothing, and the next change would be the clock's, up to a second later.
  await tap("an answer of staging", `#/repair/${staging.id}`, ".pair label:has(input:not(:checked))");
  await tap("a task recorded", `#/repair/${staging.id}`, ".deck > .act");
  await tap("the test push begins", `#/repair/${push.id}`, ".deck > .act");
  await tap("the plan", `#/repair/${planned.id}`, "a.way");
  await tap("fill in, while resin runs", `#/repair/${mixed.id}`, "a.way");
  line("tap, worst", Math.max(...worst), LIMITS.tap_ms, "ms");
  const events = await one.evaluate(() => globalThis.events.filter(({ name }) => /^(click|pointerup|keydown)$/.test(name)).map(({ duration }) => duration));
  if (events.length > 0) line("event to the next frame, worst (Event Timing, steps of 8 ms)", Math.max(...events), LIMITS.tap_ms, "ms");
  await close();
}

/** The sum of all layout shifts, those after a touch too: while a screen opens, and over ten seconds of its running clock. */
async function shifts({ hold, mixed, staging, planned, verification }) {
  const watch = () => {
    globalThis.shifted = 0;
    globalThis.moved = [];
    new PerformanceObserver((list) => {
      for (const { value, sources } of list.getEntries()) { globalThis.shifted += value; globalThis.moved.push(...sources.map(({ node }) => (node?.className?.baseVal ?? node?.className) || node?.nodeName)); }
    }).observe({ type: "layout-shift", buffered: true });
  };
  let worst = 0;
  for (const [name, hash] of Object.entries({ today: "#/", hold: `#/repair/${hold.id}`, "working time": `#/repair/${mixed.id}`, staging: `#/repair/${staging.id}`, planned: `#/repair/${planned.id}`, verification: `#/repair/${verification.id}` })) {
    const { page: one, close } = await page({ script: watch });
    await one.goto(core.address);
    await one.locator("h1").waitFor();
    await one.evaluate((to) => { location.hash = to; }, hash);
    await one.reload();
    await one.locator("h1").waitFor();
    await one.waitForTimeout(10_000);
    const { shifted, moved } = await one.evaluate(() => ({ shifted, moved }));
    worst = Math.max(worst, shifted);
    line(`layout shift: ${name}`, shifted, LIMITS.shift, "", moved.length > 0 ? [...new Set(moved)].slice(0, 5).join(", ") : "");
    await close();
  }
  line("layout shift, worst", worst, LIMITS.shift, "");
}

/** The screens without fonts and sounds, by folder. */
async function sizes() {
  const all = new Map();
  for (const entry of await readdir(UI, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath ?? entry.path, entry.name);
    if (!entry.isFile() || path.includes("/fonts/") || path.includes("/sounds/") || [".woff2", ".mp3", ".ogg", ".wav"].includes(extname(path))) continue;
    const folder = path.slice(UI.length + 1).split("/").slice(0, -1)[0] ?? "";
    all.set(folder, (all.get(folder) ?? 0) + (await stat(path)).size);
  }
  for (const [folder, bytes] of [...all].sort(([, a], [, b]) => b - a)) console.log(`  ${(folder || "(the folder itself)").padEnd(22)} ${(bytes / 1000).toFixed(1).padStart(7)} kB`);
  line("ui/ without fonts and sounds", [...all.values()].reduce((sum, one) => sum + one, 0) / 1000, LIMITS.size_kb, "kB");
}

function line(what, value, limit, unit, more = "") {
  const part = limit > 0 ? `(${(value / limit).toFixed(2)} of ${limit} ${unit})` : value > limit ? "(should be 0)" : "(0 as wished)";
  console.log(`${what.padEnd(64)} ${value.toFixed(unit === "" ? 4 : 1).padStart(8)} ${unit} ${part} ${more}`);
}

function middle(values) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}
