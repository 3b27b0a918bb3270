// The set-up of an empty device: five questions in less than two minutes, back and later possible, nobody led through it twice.

import assert from "node:assert/strict";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { serveMendline } from "./mendline.mjs";
import { flaws, goTo, onCore, SIZES } from "./served.mjs";
import { asker } from "./walk.mjs";

const PHONE = SIZES[0];

// Keystroke-level model (Card, Moran, Newell 1980): pointing 1.1 s, its press 0.1 s, thinking before each 1.35 s, a letter of
// an average typist 0.28 s, here doubled for a phone. The figures are from memory.
const SECONDS = { tap: 1.1 + 0.1 + 1.35, letter: 2 * 0.28 };
const MOST_S = 120;

const served = onCore();
let folder;
let sheets;
const fresh = [];

// The office makes the file once.
before(async () => {
  folder = await mkdtemp(join(tmpdir(), "mendline-sheets-"));
  sheets = join(folder, "mendline-sheets.json");
  const office = await serveMendline();
  fresh.push(office);
  const { ask } = asker(office.address);
  await ask({ do: "take_examples" });
  const made = await ask({ do: "hand_out_sheets" });
  await writeFile(sheets, Buffer.from(made.bytes, "base64"));
}, { timeout: 60_000 });
after(async () => { for (const core of fresh) await core.stop(); await rm(folder, { recursive: true, force: true }); });

async function emptyDevice() {
  const core = await serveMendline();
  fresh.push(core);
  return { core, ...(await served.open(PHONE, { core, person: null })) };
}

/** Taps that are counted. */
function counted(page) {
  const count = { taps: 0, letters: 0 };
  const on = (hash) => page.waitForFunction((to) => location.hash === to && !document.title.startsWith("Opening"), hash);
  const tap = async (css, to) => { count.taps += 1; await page.waitForTimeout(450); await page.locator(css).first().click(); if (to) await on(to); };
  const type = async (css, text) => { count.taps += 1; count.letters += text.length; await page.locator(css).fill(text); };
  return { count, tap, type, on };
}

test("an empty phone is ready in less than two minutes, in German and by name", { timeout: 60_000 }, async () => {
  const { core, page, close } = await emptyDevice();
  const { count, tap, type } = counted(page);
  await tap('a[href="#/setup"]', "#/setup");
  await tap('label:has(input[value="de"])');
  await page.getByRole("heading", { name: "In welcher Sprache?" }).waitFor();
  await tap("a.act", "#/setup/units");
  await tap("a.act", "#/setup/crew");
  await type("#setup-name", "Jörn Ekdal");
  await tap("button.act", "#/setup/contract");
  count.taps += 2; // The file is picked in a window of the system: the button, the file.
  await page.locator("#sheets-file").setInputFiles(sheets);
  await tap("#take-sheets button", "#/setup/contract");
  await page.locator("#root").getByText("QM-2026-31").first().waitFor();
  await tap("a.act", "#/setup/sheets");
  assert.equal(await page.locator("#root").getByText("noch nicht da").count(), 0, "a sheet is missing");
  await tap("a.act", "#/");
  assert.ok(count.taps <= 12, `${count.taps} taps`);
  const seconds = count.taps * SECONDS.tap + count.letters * SECONDS.letter;
  assert.ok(seconds < MOST_S, `${seconds.toFixed(0)} s`);
  console.log(`${count.taps} taps and ${count.letters} letters: about ${seconds.toFixed(0)} s`);

  // Done once: today leads to the first job, in the language that was picked before anybody had a name, by the one who set up.
  assert.equal(await page.locator('a[href="#/setup"]').count(), 0);
  assert.equal(await page.evaluate(() => document.documentElement.lang), "de");
  assert.equal(await page.evaluate(() => localStorage.getItem("mendline.person")), "jorn-ekdal");
  const shelf = await asker(core.address).ask({ do: "shelf" });
  assert.deepEqual(shelf.people, [{ id: "jorn-ekdal", name: "Jörn Ekdal", role: "technician", organisation: "" }]);
  await close();
});

test("a set-up that is left is taken up at its question, keeps what was said, and goes back", { timeout: 60_000 }, async () => {
  const { core, page, close } = await emptyDevice();
  const { tap, on } = counted(page);
  await goTo(page, "#/setup/units");
  await tap('label:has(input[value="us"])');
  await tap("a.act", "#/setup/crew");
  await page.locator("#setup-name").fill("Ida Varga");
  await tap('header a[href="#/"]', "#/");
  await page.reload();
  await on("#/");
  await tap('a[href="#/setup"]', "#/setup");
  assert.equal(await page.locator("#setup-name").inputValue(), "Ida Varga");
  await tap(".deck-more a", "#/setup/units");
  assert.ok(await page.locator('input[value="us"]').isChecked());
  await tap("a.act", "#/setup/crew");
  await tap("button.act", "#/setup/contract");
  await tap('header a[href="#/"]', "#/");
  assert.match(await page.locator('a[href="#/setup"]').innerText(), /Contracts/);
  assert.doesNotMatch(await page.locator('a[href="#/setup"]').innerText(), /People/);

  // Another phone's person on the same folder, once everything is there: nobody is asked again.
  await asker(core.address).ask({ do: "take_examples" });
  const second = await served.open(PHONE, { core, person: null });
  assert.equal(await second.page.locator('a[href="#/setup"]').count(), 0);
  await second.close();
  await close();
});

test("the last question names what is missing, and says nothing of it when all is there", { timeout: 60_000 }, async () => {
  const { core, page, close } = await emptyDevice();
  await goTo(page, "#/setup/sheets");
  assert.match(await page.locator("main .note").first().innerText(), /^Still missing: Contracts, .*Method statements/);
  assert.doesNotMatch(await page.locator("a.act").innerText(), /the set-up ends here/);
  await asker(core.address).ask({ do: "take_examples" });
  await page.reload();
  await page.locator("#root").getByText("the set-up ends here").waitFor();
  assert.equal(await page.locator("#root").getByText("Still missing").count(), 0);
  await close();
});

test("who goes elsewhere before the answer comes is not led back", { timeout: 60_000 }, async () => {
  const { core, page, close } = await emptyDevice();
  await goTo(page, "#/setup/crew");
  await page.locator("#setup-name").fill("Ida Varga");
  let answered;
  const held = new Promise((resolve) => { answered = resolve; });
  await page.route("**/ask", async (route) => {
    if (/"do":"keep"/.test(route.request().postData())) await held;
    await route.continue();
  });
  await page.locator("button.act").click();
  await goTo(page, "#/help");
  answered();
  await page.waitForFunction(() => localStorage.getItem("mendline.person") !== null);
  await page.waitForTimeout(300);
  assert.equal(new URL(page.url()).hash, "#/help");
  assert.equal((await asker(core.address).ask({ do: "shelf" })).people.length, 1);
  await close();
});

for (const size of SIZES) {
  test(`each question reads well on a ${size.name}`, { timeout: 120_000 }, async () => {
    const core = await serveMendline();
    fresh.push(core);
    const { page, close } = await served.open(size, { core, person: null });
    const found = [];
    for (const step of ["language", "units", "crew", "contract", "sheets"]) {
      await goTo(page, `#/setup/${step}`);
      for (const flaw of await flaws(page)) found.push(`${step}: ${flaw}`);
    }
    assert.deepEqual(found, []);
    await close();
  });
}
