// A sheet of paper is keyed in through the screens: the day and time on it stand with each entry, marked.

import assert from "node:assert/strict";
import { test } from "node:test";
import { SIZES, flaws, goTo, onCore } from "./served.mjs";
import { Walk } from "./walk.mjs";

const served = onCore();

for (const size of SIZES) {
  test(`what stands on paper is keyed in, marked and with both times, on a ${size.name}`, { timeout: 120_000 }, async () => {
    const walk = await (await new Walk(served.api).open({ number: `P-${size.name}` })).plan();
    await walk.goOn();
    await new Promise((later) => setTimeout(later, 1_000));
    const { page, close } = await served.open(size, { hash: `#/repair/${walk.id}/paper` });
    await page.locator("#root").getByText("Key in from paper").click();
    await page.getByRole("heading", { name: "Key in from paper" }).waitFor();
    // The sheet says when the repair was opened: nothing on it can be earlier, and this test has no minutes to wait.
    const opened = new Date(walk.view.repair.opened.moment.at_ms + 1000);
    const two = (n) => String(n).padStart(2, "0");
    const day = `${opened.getFullYear()}-${two(opened.getMonth() + 1)}-${two(opened.getDate())}`;
    const clock = `${two(opened.getHours())}:${two(opened.getMinutes())}:${two(opened.getSeconds())}`;
    await page.locator("#root").getByText("Yes", { exact: true }).click();
    await page.locator("#paper-day").fill(day);
    await page.locator("#paper-time").evaluate((input, value) => { input.step = "1"; input.value = value; input.dispatchEvent(new Event("input", { bubbles: true })); }, clock);
    assert.deepEqual(await flaws(page), []);
    await page.waitForTimeout(600);
    await page.locator("#root").getByText("Go to the stage").click();
    await page.getByRole("heading", { name: "Staging" }).waitFor();
    assert.match(await page.locator("main").innerText(), /^From paper/);
    await page.waitForTimeout(600);
    await page.locator(".deck > .act").click();
    await page.locator("#root").getByText("from paper", { exact: false }).nth(1).waitFor();
    assert.deepEqual(await flaws(page), []);
    const { repair } = await served.api.ask({ do: "repair", repair: walk.id });
    const [first] = Object.values(repair.attempts[0].answers);
    assert.equal(first.at.paper, true);
    assert.equal(Math.floor(first.at.moment.at_ms / 1000), Math.floor(opened.getTime() / 1000));
    assert.ok(first.at.ago_ms > 0, "how much later it was keyed in is kept");
    await goTo(page, `#/repair/${walk.id}/keyed`);
    await page.waitForTimeout(600);
    await page.locator("#root").getByText("No", { exact: true }).click();
    await goTo(page, `#/repair/${walk.id}`);
    assert.doesNotMatch(await page.locator("main").innerText(), /^From paper/);
    await close();
  });
}
