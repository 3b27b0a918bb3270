// Takes pictures of every screen, for people to look at: `node screens.mjs FOLDER [WORD …]`, as `make screens` does.

import { mkdir, readFile, readdir } from "node:fs/promises";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { serveMendline } from "./mendline.mjs";
import { stages } from "./stages.mjs";
import { Walk, asker } from "./walk.mjs";

const SIZES = [{ name: "phone", width: 360, height: 640 }, { name: "laptop", width: 1280, height: 800 }];
const [folder = "out/screens", ...words] = process.argv.slice(2);
const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run"];

await mkdir(folder, { recursive: true });
const core = await serveMendline();
const api = asker(core.address);
const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: FLAGS });

async function shoot(name, hash, { lights = ["day"], sizes = SIZES, full = true } = {}) {
  if (words.length > 0 && !words.some((word) => name.includes(word))) return;
  for (const { name: size, width, height } of sizes) {
    const context = await browser.newContext({ viewport: { width, height }, deviceScaleFactor: 1 });
    await context.addInitScript(() => localStorage.setItem("mendline.person", "varga"));
    const page = await context.newPage();
    const problems = [];
    page.on("console", (said) => said.type() === "error" && problems.push(said.text()));
    page.on("pageerror", (problem) => problems.push(String(problem)));
    await page.goto(core.address);
    await page.locator("h1").waitFor();
    await page.evaluate((to) => { location.hash = to; }, hash);
    await page.waitForTimeout(350);
    for (const light of lights) {
      await page.evaluate((to) => { document.documentElement.dataset.light = to; }, light);
      await page.screenshot({ path: join(folder, `${name}_${light}_${size}.png`) });
      if (full && light === "day") await page.screenshot({ path: join(folder, `${name}_${light}_${size}_whole.png`), fullPage: true });
    }
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (wider > 0) problems.push(`${wider} px wider than the screen`);
    for (const problem of problems) console.error(`${name}, ${size}: ${problem}`);
    await context.close();
  }
}

const ALL = ["day", "sun", "night"];
await shoot("first-run", "#/");
await shoot("intake-empty", "#/intake");
const opened = await new Walk(api).open({ number: "R-07" });
const { files } = await api.ask({ do: "inspections" });
await shoot("intake", "#/intake");
await shoot("line", `#/intake/${files[0].file}/0`);
await shoot("line-tallow", `#/intake/${files[0].file}/1`);
await shoot("by-hand", "#/by-hand");
await shoot("checks", "#/checks");
await shoot("check-wall", `#/repair/${opened.id}/checks/wall-thickness`);
await shoot("check-thrust", `#/repair/${opened.id}/checks/end-thrust`);
await shoot("taken", `#/repair/${opened.id}`);
await shoot("plan", `#/repair/${opened.id}/plan`);
await opened.plan();
await shoot("planned", `#/repair/${opened.id}`);
await opened.goOn();
await shoot("label", `#/repair/${opened.id}/label`);
await shoot("paper", `#/repair/${opened.id}/paper`);
const at = async (stage, options) => (await (await new Walk(api).open(options)).plan()).to(stage);
const PRESSING = /^(runs|hold|time over|pressure|rehearsal|go$)/;
for await (const { name, hash } of stages(api)) await shoot(name.replaceAll(/\W+/g, "-"), hash, { lights: PRESSING.test(name) ? ALL : ["day"] });
const held = await at("wet_out", { number: "R-05" });
await held.go();
await held.report({ what: "joined" }, 75);
await held.report({ what: "target_reached", gauge_pa: 131_000 }, 52);
for (const [gauge_pa, ago] of [[130_000, 45], [129_000, 38], [128_000, 25], [127_000, 17], [126_000, 8]]) await held.report({ what: "reading", gauge_pa, pipe_mc: 12_000, upstream_um: 350_000, by: "hand", gauge: "G-04" }, ago);
const mixed = await at("wet_out", { number: "R-10" });
await mixed.go();
await mixed.report({ what: "joined" }, 13);
await shoot("today", "#/", { lights: ALL });
const done = await at("deflation", { number: "R-03" });
await done.answer("deflation");
await done.goOn();
await shoot("verification", `#/repair/${done.id}`);
await done.report({ what: "at_the_mark", beyond_um: -3_000 });
await done.answer("wet_out", "placement", "inflation", "hold", "verification");
await shoot("lateral", `#/repair/${done.id}/lateral/1`);
await done.report({ what: "lateral_opened", lateral: 1, open_pct: 94, coupon: true });
const inside = (await readFile(new URL("../../fixtures/photos/" + (await readdir(new URL("../../fixtures/photos/", import.meta.url))).find((name) => name.endsWith(".jpg")), import.meta.url))).toString("base64");
const { repair: { photos } } = await api.ask({ do: "keep_photo", repair: done.id, label: "Downstream edge, seen again", bytes: inside });
await shoot("photo-taken", `#/repair/${done.id}/photo`);
await shoot("mark", `#/repair/${done.id}/mark/${photos.at(-1).sha256}`);
await shoot("correct", `#/repair/${done.id}/correct`);
await shoot("review", `#/repair/${done.id}/review`);
for (const one of done.view.review.broken.filter(({ waived, waivable }) => waivable && !waived)) await done.waive(one.rule, one.subject);
await shoot("review-waived", `#/repair/${done.id}/review`);
await done.tell({ command: "judge", accept: true, reasons: [] }, "varga");
await shoot("sign", `#/repair/${done.id}`);
const line = [[100, 500], [300, 200], [500, 700], [700, 300], [900, 600]];
for (const person of ["ekdal", "varga"]) await done.tell({ command: "sign", name: "", statement: "I sign.", strokes: [line] }, person);
await api.ask({ do: "issue", repair: done.id });
await shoot("issued", `#/repair/${done.id}`);
await shoot("search", "#/search");
await shoot("send", "#/send");
await shoot("send-one", `#/send/${done.id}`);
await shoot("take", "#/take");
await shoot("people", "#/people");
await shoot("shelf", "#/shelf");
for (const kind of ["contract", "resin", "patch", "packer", "instrument", "method"]) await shoot(`shelf-${kind}`, `#/shelf/${kind}`, { sizes: SIZES.slice(0, 1) });
await shoot("sheet-resin", "#/shelf/resin/Q30");
await shoot("sheet-contract", "#/shelf/contract/QM-2026-31");
await shoot("check", "#/check");
await shoot("help", "#/help");
await browser.close();
await core.stop();
