// The plan by taps, at both sizes: every change asks the core and writes nothing, a refusal leads to its way out, the foreman
// waives what he may, and the plan is accepted as it was shown.

import assert from "node:assert/strict";
import { test } from "node:test";
import { SIZES, flaws, goTo, onCore } from "./served.mjs";
import { COOL, WARM } from "./views.mjs";
import { Walk } from "./walk.mjs";

const served = onCore();
const act = (page) => page.locator(".deck > .act");
const says = (page, text) => page.waitForFunction((wanted) => document.querySelector(".deck > .act")?.innerText.includes(wanted), text);

/** Opens a repair and its plan. */
async function planOf(size, number) {
  const { id } = await new Walk(served.api).open({ number });
  const { page, close } = await served.open(size, { hash: `#/repair/${id}/plan` });
  return { id, page, close };
}

async function measure(page, { resin_mc: resin, air_mc: air, pipe_mc: pipe }) {
  for (const [place, mc] of Object.entries({ resin, air, pipe })) await page.locator(`#${place}_mc`).fill(String(mc / 1000));
}

/** Returns how many entries the repair's record has. */
async function entries(id) {
  const { bytes } = await served.api.ask({ do: "record", repair: id });
  return JSON.parse(Buffer.from(bytes, "base64")).entries.length;
}

const planned = async (id) => (await served.api.ask({ do: "repair", repair: id })).repair.plan;

for (const size of SIZES) {
  test(`temperatures open the plan, and nothing is written before it is accepted, on a ${size.name}`, { timeout: 60_000 }, async () => {
    const { id, page, close } = await planOf(size, "");
    const before = await entries(id);
    await says(page, "Measure all three");
    assert.match(await page.locator(".gate").innerText(), /Closed: temperatures missing/);
    await act(page).click();
    assert.equal(await page.evaluate(() => document.activeElement.id), "resin_mc", "the act leads to the field");
    await measure(page, COOL);
    await says(page, "Accept this plan");
    await page.locator("label", { hasText: "G1050, DN 200, 800 mm" }).first().click();
    await page.waitForFunction(() => /\(800 − 280\) \/ 2/.test(document.body.innerText));
    await says(page, "Take another packer");
    await page.locator("label", { hasText: "P-08" }).first().click();
    await says(page, "Accept this plan");
    assert.deepEqual(await flaws(page), []);
    assert.equal(await entries(id), before, "a change is a question");
    assert.equal(await planned(id), null);
    await act(page).click();
    await page.getByRole("heading", { level: 1, name: "Planned" }).waitFor();
    const plan = await planned(id);
    assert.deepEqual([plan.patch.length_um, plan.packer.body_um], [800_000, 1_400_000]);
    assert.deepEqual(plan.choice.temperatures, COOL);
    assert.equal(await entries(id), before + 1);
    await close();
  });

  test(`a plan without time is closed, and opens as soon as there is time, on a ${size.name}`, { timeout: 60_000 }, async () => {
    const { page, close } = await planOf(size, "");
    await measure(page, WARM);
    await page.getByRole("heading", { name: /The resin would set before the patch is in place/ }).waitFor();
    assert.match(await page.locator(".gate").innerText(), /Closed: \d+\smin \d+\ss too short/);
    assert.match(await page.locator("#refusal").innerText(), /Way out:/);
    assert.equal(await page.getByRole("button", { name: /Ask the foreman/ }).count(), 0, "no foreman may waive it");
    assert.deepEqual(await flaws(page), []);
    await measure(page, COOL);
    await says(page, "Accept this plan");
    assert.equal(await page.locator("#refusal").count(), 0);
    await close();
  });

  test(`a foreman waives short cover by name and with a reason, on a ${size.name}`, { timeout: 60_000 }, async () => {
    const { id, page, close } = await planOf(size, "");
    await measure(page, COOL);
    await page.locator("#plan-centre_um").fill("7.40");
    await page.getByRole("heading", { name: /^Cover is / }).waitFor();
    await page.getByRole("button", { name: /Ask the foreman/ }).click();
    const dialog = page.locator("dialog[open]");
    await dialog.waitFor();
    assert.deepEqual(await flaws(page), []);
    const offered = await dialog.locator("select").locator("option").allInnerTexts();
    assert.deepEqual(offered, (await served.api.ask({ do: "shelf" })).people.filter(({ role }) => role === "foreman").map(({ name }) => name));
    await dialog.locator("textarea").fill("Seen on camera, the joint is sound.");
    await dialog.getByRole("button", { name: /Waive/ }).click();
    await says(page, "Accept this plan");
    assert.equal(await page.locator("dialog[open]").count(), 0);
    await page.locator("#root").getByText("Seen on camera, the joint is sound.").first().waitFor();
    await act(page).click();
    await page.getByRole("heading", { level: 1, name: "Planned" }).waitFor();
    const { repair } = await served.api.ask({ do: "repair", repair: id });
    assert.equal(repair.plan.choice.centre_um, 7_400_000);
    assert.deepEqual(repair.waivers.map(({ rule, foreman, reason }) => [rule, foreman, reason]), [["cover_short", "varga", "Seen on camera, the joint is sound."]]);
    await close();
  });
}

test("what no number is stays in its field, is named, and is not asked", { timeout: 60_000 }, async () => {
  const { page, close } = await planOf(SIZES[0], "");
  await page.locator("#resin_mc").fill("19,2x");
  await page.getByRole("link", { name: /^Resin: / }).waitFor();
  assert.equal(await page.locator("#resin_mc").inputValue(), "19,2x");
  await page.locator("#resin_mc").fill("19,2");
  await page.getByRole("link", { name: /^Resin: / }).waitFor({ state: "detached" });
  await close();
});

test("what was entered into the plan is there and computed after a reload", { timeout: 60_000 }, async () => {
  const { page, close } = await planOf(SIZES[0], "");
  await measure(page, COOL);
  await says(page, "Accept this plan");
  await page.reload();
  await says(page, "Accept this plan");
  assert.equal(await page.locator("#resin_mc").inputValue(), "19.2");
  await close();
});

test("a plan that is accepted can be changed before staging", { timeout: 60_000 }, async () => {
  const { id, page, close } = await planOf(SIZES[1], "");
  await measure(page, COOL);
  await says(page, "Accept this plan");
  await act(page).click();
  await page.getByRole("heading", { level: 1, name: "Planned" }).waitFor();
  await goTo(page, `#/repair/${id}/plan`);
  await says(page, "Accept this plan");
  await page.locator("#plan-diameter_least_um").fill("196.5");
  await page.locator("#plan-diameter_most_um").fill("199");
  await page.locator("fieldset", { hasText: "Measured at the defect?" }).getByText("Yes").click();
  await page.waitForFunction(() => !document.body.innerText.includes("The inside diameter is nominal"));
  await act(page).click();
  await page.getByRole("heading", { level: 1, name: "Planned" }).waitFor();
  const { choice } = await planned(id);
  assert.deepEqual([choice.diameter_least_um, choice.diameter_most_um, choice.diameter_measured], [196_500, 199_000, true]);
  await close();
});
