// From the first start to an opened repair, by taps, at both sizes: the examples, who taps, an inspection file, one line, by hand.

import assert from "node:assert/strict";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { serveMendline } from "./mendline.mjs";
import { SIZES, flaws, goTo, onCore } from "./served.mjs";
import { NAME, namedInspection } from "./views.mjs";
import { asker } from "./walk.mjs";

const INSPECTION = fileURLToPath(new URL("../../fixtures/inspections/quillmere.txt", import.meta.url));
const served = onCore();

const act = (page) => page.locator(".deck > .act");
const heading = (page, name) => page.getByRole("heading", { level: 1, name, exact: true }).waitFor();

/** Runs a test on an empty folder of its own. */
async function onEmpty(size, run) {
  const core = await serveMendline();
  try {
    const { page, close } = await served.open(size, { core, person: null });
    await run({ page, api: asker(core.address) });
    await close();
  } finally {
    await core.stop();
  }
}

/** Takes the examples and the example inspection without a screen. */
async function filled({ ask }, name = "quillmere.txt", bytes) {
  await ask({ do: "take_examples" });
  const { files } = await ask({ do: "import_inspection", name, bytes: (bytes ?? (await namedInspection())).toString("base64") });
  return files[0];
}

for (const size of SIZES) {
  test(`the first start on a ${size.name}: examples, a person, a file`, { timeout: 90_000 }, () => onEmpty(size, async ({ page, api }) => {
    await heading(page, "Today");
    assert.match(await page.locator("main").innerText(), /a town that does not exist/);
    assert.deepEqual(await flaws(page), []);
    await page.getByRole("button", { name: /Take the invented examples/ }).click();
    await heading(page, "Who are you?");
    assert.match(await act(page).innerText(), /nobody is picked/);
    await page.locator("#root").getByText("Tomas Ekdal").click();
    assert.match(await act(page).innerText(), /Tomas Ekdal/);
    await goTo(page, "#/");
    await page.locator("#root").getByText("Tomas Ekdal taps on this device").waitFor();
    await page.getByRole("link", { name: /New repair/ }).first().click();
    await heading(page, "Inspections");
    await act(page).click();
    await page.getByRole("link", { name: "Choose a file first." }).waitFor();
    await page.locator("#inspection-file").setInputFiles({ name: `${NAME}.txt`, mimeType: "text/plain", buffer: Buffer.from("#A1=UTF-8\nno inspection") });
    await act(page).click();
    await page.locator("#root").getByText(`${NAME}.txt was not taken in.`).waitFor();
    assert.deepEqual((await api.ask({ do: "inspections" })).files, [], "nothing of a broken file is kept");
    await page.locator("#inspection-file").setInputFiles(INSPECTION);
    await act(page).click();
    await page.getByRole("heading", { level: 2, name: "quillmere.txt" }).waitFor();
    assert.equal(await page.locator("main a.way[href^='#/intake/']").count(), 7);
    await page.locator("#intake-text").fill("lantern 118");
    await page.waitForFunction(() => document.querySelectorAll("main a.way[href^='#/intake/']").length === 1);
  }));

  test(`a line that is called anything becomes a repair on a ${size.name}`, { timeout: 90_000 }, () => onEmpty(size, async ({ page, api }) => {
    const { file } = await filled(api, NAME);
    await goTo(page, `#/intake/${file}/0`);
    await heading(page, "Which is the defect?");
    assert.match(await page.locator(".mast").innerText(), /<img src=x onerror=alert\(1\)>/);
    await page.locator(".choice label", { hasText: "Crack, lengthwise" }).click();
    assert.match(await act(page).innerText(), /Take 1 as the defect\s+7\.12\s–\s7\.40\sm, 11\s–\s1\sh/);
    await page.locator("#number").fill(NAME);
    await act(page).click();
    await heading(page, "Plan");
    assert.equal(await page.locator("img[src='x']").count(), 0);
    const { repairs } = await api.ask({ do: "list" });
    assert.deepEqual(repairs.map(({ number, asset, street, upstream }) => [number, asset, street, upstream]), [[NAME, NAME, NAME, NAME]]);
    await goTo(page, "#/");
    await page.locator("#root").getByText(`${NAME} to MH 032`).waitFor();
    assert.equal(await page.locator("img[src='x']").count(), 0);
  }));

  test(`the same hour is asked for, once, on a ${size.name}`, { timeout: 90_000 }, () => onEmpty(size, async ({ page, api }) => {
    const { file, inspections } = await filled(api);
    await goTo(page, `#/intake/${file}/${inspections.find(({ line }) => line === "SS-03118").index}`);
    await page.locator(".choice label", { hasText: "Displaced joint" }).click();
    assert.equal(await page.locator("#root").getByText("All round", { exact: true }).count(), 0);
    await act(page).click();
    await page.locator("#root").getByText("The clock runs from 12 to 12: is it all round, or one spot?").waitFor();
    assert.equal((await api.ask({ do: "list" })).repairs.length, 0);
    assert.deepEqual(await flaws(page), []);
    await page.locator("#root").getByText("All round", { exact: true }).click();
    await act(page).click();
    await heading(page, "Plan");
    const [{ repair: id }] = (await api.ask({ do: "list" })).repairs;
    const { repair } = await api.ask({ do: "repair", repair: id });
    assert.deepEqual(repair.defect.observations.map(({ around }) => around), [{ kind: "all_round" }]);
  }));

  // 40.00 m long, seen 12.30 to 12.60 m from the downstream node, looking upstream from 2 to 4 h: from the upstream node that
  // is 27.40 to 27.70 m, and looking downstream 8 to 10 h.
  test(`a defect by hand counts from either node and looks either way on a ${size.name}`, { timeout: 90_000 }, () => onEmpty(size, async ({ page, api }) => {
    await api.ask({ do: "take_examples" });
    await goTo(page, "#/by-hand");
    await act(page).click();
    await page.locator("#root").getByText(/^Still missing: /).waitFor();
    for (const [id, text] of Object.entries({ "hand-asset": "SS-04001", "hand-upstream": "MH 401", "hand-downstream": "MH 402", "hand-street": NAME, "hand-material": "vitrified clay", length_um: "40", height_um: "200", "hand-words": "Crack", from_um: "12,30", to_um: "12.6", hour_from: "2", hour_to: "4" })) {
      await page.locator(`#${id}`).fill(text);
    }
    await page.locator("label", { hasText: "MH 402" }).click();
    await page.locator("label", { hasText: "Seen looking upstream" }).click();
    assert.deepEqual(await flaws(page), []);
    await act(page).click();
    await heading(page, "Plan");
    const [{ repair: id }] = (await api.ask({ do: "list" })).repairs;
    const { repair: { defect, line } } = await api.ask({ do: "repair", repair: id });
    assert.deepEqual([defect.from_um, defect.to_um], [27_400_000, 27_700_000]);
    assert.deepEqual(defect.observations[0].around, { kind: "between", from: 8, to: 10 });
    assert.deepEqual([line.street, line.length_um, defect.origin.kind], [NAME, 40_000_000, "by_hand"]);
  }));
}

test("what was typed and not sent is there after a reload", { timeout: 60_000 }, () => onEmpty(SIZES[0], async ({ page, api }) => {
  await api.ask({ do: "take_examples" });
  await goTo(page, "#/by-hand");
  await page.locator("#hand-words").fill("Crack over the crown");
  await page.reload();
  await page.locator("#hand-words").waitFor();
  assert.equal(await page.locator("#hand-words").inputValue(), "Crack over the crown");
}));
