// Every screen of the office at both sizes and in three lights, on a real core: accessible, nothing too wide, every target high enough.

import assert from "node:assert/strict";
import { test } from "node:test";
import { SIZES, flaws, goTo, onCore } from "./served.mjs";
import { NAME, askAll } from "./views.mjs";
import { Walk } from "./walk.mjs";

let screens, views;
const served = onCore(async ({ core }) => {
  views = await askAll(core.address);
  const line = ({ file, listed }) => `#/intake/${file}/${listed.index}`;
  const plan = ({ repair }) => `#/repair/${repair.repair.id}/plan`;
  const { id } = (await (await (await new Walk(served.api).open({ number: "R-20" })).plan()).to("verification"));
  const repair = Object.fromEntries(["", "review", "correct", "photo", "label", "paper", "sign", "certificate"].map((side) => [`verification, ${side}`, `#/repair/${id}/${side}`]));
  screens = {
    today: "#/", intake: "#/intake", "a line": line(views.tallow), "a line run against the flow": line(views.against), "a line that is called anything": line(views.named), "by hand": "#/by-hand",
    plan: plan(views.cool), "plan of anything": plan(views.named_plan), search: "#/search", people: "#/people", check: "#/check", help: "#/help", lost: "#/no/such",
    ...repair, issued: `#/repair/${views.issued.repair.id}`, rehearsal: `#/repair/${views.rehearsed.id}`,
    ...Object.fromEntries(["language", "units", "crew", "contract", "sheets"].map((step) => [`set-up, ${step}`, `#/setup/${step}`])),
    shelf: "#/shelf", ...Object.fromEntries(Object.entries({ contract: "contracts", resin: "resins", patch: "patches", packer: "packers", instrument: "instruments", method: "methods", person: "people" })
      .flatMap(([kind, list]) => [[`shelf, ${kind}`, `#/shelf/${kind}`], [`shelf, one ${kind}`, `#/shelf/${kind}/${encodeURIComponent(views.shelf[list][0].id)}`]])),
  };
});

/** Hands each screen on, with its name. */
async function each(size, run) {
  const { page, close } = await served.open(size);
  for (const [name, hash] of Object.entries(screens)) {
    await goTo(page, hash);
    await run(page, name);
  }
  await close();
}

for (const size of SIZES) {
  test(`WCAG 2.2 AA, width and targets in three lights on a ${size.name}`, { timeout: 300_000 }, async () => {
    const found = new Set();
    await each(size, async (page, name) => {
      for (const light of ["day", "sun", "night"]) {
        await page.evaluate((to) => { document.documentElement.dataset.light = to; }, light);
        for (const flaw of await flaws(page, { colours: light !== "day" })) found.add(`${name}: ${flaw}`);
      }
    });
    assert.deepEqual([...found], []);
  });
}

for (const [what, size, zoom] of [["320 px", { width: 320, height: 568 }, 1], ["200 % text on a phone", SIZES[0], 2], ["200 % text on a laptop", SIZES[1], 2]]) {
  test(`nothing is wider than the screen at ${what}`, { timeout: 120_000 }, async () => {
    const wide = [];
    await each(size, async (page, name) => {
      await page.evaluate((factor) => { document.documentElement.style.fontSize = `${16 * factor}px`; }, zoom);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      if (over > 0) wide.push(`${name}: ${over} px`);
    });
    assert.deepEqual(wide, []);
  });
}

for (const language of ["de", "es", "fr"]) {
  test(`nothing is wider than the screen, and no word is cut off, at 320 px in ${language}`, { timeout: 120_000 }, async () => {
    const { page, close } = await served.open({ width: 320, height: 568 });
    await page.evaluate((tag) => localStorage.setItem(`mendline.language.${localStorage.getItem("mendline.person")}`, tag), language);
    await page.reload();
    await page.locator(`html[lang=${language}]`).waitFor();
    const wide = [];
    for (const [name, hash] of Object.entries(screens)) {
      await goTo(page, hash);
      const found = await page.evaluate(() => {
        const over = document.documentElement.scrollWidth - innerWidth;
        // What is only read aloud has a width of one pixel.
        const cut = [...document.querySelectorAll("button, a, h1, h2, legend, label, b, small")].filter((one) => getComputedStyle(one).overflowX === "hidden" && one.clientWidth > 2 && one.scrollWidth > one.clientWidth + 1);
        return [...(over > 0 ? [`${over} px`] : []), ...cut.map((one) => one.textContent.trim().slice(0, 40))];
      });
      wide.push(...found.map((what) => `${name}: ${what}`));
    }
    await close();
    assert.deepEqual(wide, []);
  });
}

test("the heading of each screen takes the focus on arrival", { timeout: 60_000 }, async () => {
  await each(SIZES[0], async (page, name) => assert.equal(await page.evaluate(() => document.activeElement.tagName), "H1", name));
});

test("today counts on by itself", { timeout: 60_000 }, async () => {
  for (const size of SIZES) {
    const { page, close } = await served.open(size);
    const left = page.locator(".live-count b").nth(1);
    const seconds = async () => { const [min, s] = (await left.innerText()).split(":").map(Number); return min * 60 + s; };
    const before = await seconds();
    const began = Date.now();
    let gone = 0;
    while (gone < 2 && Date.now() - began < 20_000) { await page.waitForTimeout(250); gone = before - (await seconds()); }
    const passed = (Date.now() - began) / 1000;
    assert.ok(gone >= 2 && gone <= passed + 2, `${gone} s gone in ${passed} s`);
    assert.equal(await page.locator(".live-chart").first().isVisible(), size.name === "laptop", "the chart stands on a laptop only");
    await close();
  }
});

test("the light is kept on this device", { timeout: 60_000 }, async () => {
  const { page, close } = await served.open(SIZES[0]);
  await page.locator("#root").getByText("Night", { exact: true }).click();
  assert.equal(await page.evaluate(() => document.documentElement.dataset.light), "night");
  await page.reload();
  await page.locator("h1").waitFor();
  assert.equal(await page.evaluate(() => document.documentElement.dataset.light), "night");
  await close();
});

test("the search finds while it is typed", { timeout: 60_000 }, async () => {
  const { page, close } = await served.open(SIZES[1], { hash: "#/search" });
  await page.locator("#text").fill("tallow");
  await page.locator("#found small").getByText("1", { exact: true }).waitFor();
  assert.match(await page.locator("main .way").innerText(), /MH 214 to MH 215/);
  await page.locator("#text").fill("nowhere at all");
  await page.locator("#root").getByText("Nothing found.").waitFor();
  await close();
});

for (const size of SIZES) {
  test(`a record that somebody brings is checked on a ${size.name}`, { timeout: 60_000 }, async () => {
    const { page, close } = await served.open(size, { hash: "#/check" });
    const found = { valid: "Unchanged since it was written", changed: "Changed, or not complete", unfinished: "Changed, or not complete", rehearsal: "A sound rehearsal, not a record", no_record: "Not a record" };
    const before = JSON.stringify(await served.api.ask({ do: "list" }));
    for (const [key, says] of Object.entries(found)) {
      await page.locator("#record").setInputFiles({ name: `${key} ${NAME}.json`, mimeType: "application/json", buffer: views.records[key] });
      await page.locator(".deck > .act").click();
      await page.getByRole("heading", { level: 1, name: `${key} ${NAME}.json` }).waitFor();
      assert.equal(await page.locator(".verdict h2").innerText(), says, key);
      assert.deepEqual(await flaws(page), [], key);
    }
    assert.equal(JSON.stringify(await served.api.ask({ do: "list" })), before, "a check leaves nothing behind");
    await close();
  });
}
