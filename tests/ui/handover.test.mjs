// A live hold from one phone to another by the screens: handed over, the file carried, the code photographed from the screen.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { serveMendline } from "./mendline.mjs";
import { SIZES, flaws, goTo, onCore } from "./served.mjs";
import { carried } from "./shots.mjs";
import { Walk, asker } from "./walk.mjs";

/** Touches sooner than this after a screen came are taken for ghosts. */
const GHOSTS_MS = 500;

let other;
const street = onCore();
before(async () => {
  other = await serveMendline();
  await asker(other.address).ask({ do: "take_examples" });
}, { timeout: 60_000 });
after(() => other?.stop());

/** Hands a hold over by taps on the first phone, carries its file, and opens it on the second. */
async function handed(size) {
  const { api } = street;
  const hold = await (await (await new Walk(api).open({ number: `R-${size.name}` })).plan()).to("hold");
  const first = await street.open(size);
  await goTo(first.page, `#/repair/${hold.id}`);
  await first.page.getByRole("link", { name: /Hand the hold over/ }).click();
  await first.page.getByLabel(/To whom/).fill("Mika");
  await first.page.waitForTimeout(GHOSTS_MS);
  await first.page.getByRole("button", { name: /Hand it over/ }).click();
  await first.page.getByRole("heading", { level: 1, name: "Handed over" }).waitFor();
  await carried(api, asker(other.address), hold.id);
  const second = await street.open(size, { core: other });
  await goTo(second.page, `#/repair/${hold.id}`);
  await second.page.getByRole("heading", { level: 1, name: "Take the hold over" }).waitFor();
  return { hold, first, second, api };
}

for (const size of SIZES) {
  test(`a hold is handed over by file and code on a ${size.name}`, { timeout: 120_000 }, async () => {
    const { hold, first, second, api } = await handed(size);
    assert.deepEqual(await flaws(first.page), []);
    assert.deepEqual(await flaws(second.page), []);
    // Tall, so that the deck does not lie on the code.
    await first.page.setViewportSize({ width: size.width, height: 2_000 });
    const code = await first.page.locator("svg.code").screenshot({ type: "png" });
    await second.page.setInputFiles("#by-code-camera", { name: "code.png", mimeType: "image/png", buffer: code });
    await second.page.waitForTimeout(GHOSTS_MS);
    await second.page.locator(".deck > .act").click();
    await second.page.getByRole("heading", { level: 1, name: "Hold", exact: true }).waitFor();
    assert.match(await second.page.locator(".readings").first().innerText(), /\d:\d\d/, "the second phone counts down to the reading");
    const { handed: told } = await asker(other.address).ask({ do: "repair", repair: hold.id });
    assert.deepEqual([told.away, told.taken_by === null], [false, false]);
    // The first one hears of it by the second one's file.
    await carried(asker(other.address), api, hold.id);
    await first.page.reload();
    await first.page.locator("#root").getByText(/has taken the hold over/).waitFor();
    assert.deepEqual(await flaws(first.page), []);
    await Promise.all([first.close(), second.close()]);
  });
}

test("a hold that was handed over is taken back by the same phone, and a wrong picture takes nothing over", { timeout: 120_000 }, async () => {
  const { first, second } = await handed({ ...SIZES[0], name: "back" });
  const blank = await second.page.locator("h1").screenshot({ type: "png" });
  await second.page.setInputFiles("#by-code-camera", { name: "blank.png", mimeType: "image/png", buffer: blank });
  await second.page.waitForTimeout(GHOSTS_MS);
  await second.page.locator(".deck > .act").click();
  await second.page.locator("#root").getByText(/no code of a hold in this picture/).waitFor();
  await first.page.waitForTimeout(GHOSTS_MS);
  await first.page.getByRole("button", { name: /Take it back/ }).click();
  await first.page.getByRole("heading", { level: 1, name: "Hold", exact: true }).waitFor();
  await Promise.all([first.close(), second.close()]);
});

for (const language of ["en", "de", "es", "fr"]) {
  test(`both sides fit a screen of 320 px in ${language}`, { timeout: 120_000 }, async () => {
    const { hold, first, second } = await handed({ name: language, width: 320, height: 568 });
    for (const [page, side] of [[first.page, ""], [first.page, "/hold"], [second.page, ""], [second.page, "/handover"]]) {
      await page.evaluate((tag) => localStorage.setItem(`mendline.language.${localStorage.getItem("mendline.person")}`, tag), language);
      await page.reload();
      await page.locator(`html[lang=${language}]`).waitFor();
      await goTo(page, `#/repair/${hold.id}${side}`);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      const cut = await page.evaluate(() => [...document.querySelectorAll("button, a, h1, h2, label, b, small, p")].filter((one) => one.clientWidth > 2 && one.scrollWidth > one.clientWidth + 1).map((one) => one.textContent.trim().slice(0, 40)));
      assert.deepEqual([over, cut], [0, []], `${hold.id}${side}`);
      await page.evaluate(() => localStorage.setItem(`mendline.language.${localStorage.getItem("mendline.person")}`, "en"));
    }
    await Promise.all([first.close(), second.close()]);
  });
}
