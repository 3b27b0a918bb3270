// The whole job, from the first start to the certificate, without a pointer: by keyboard alone, and by the names that a reader says.

import assert from "node:assert/strict";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { wholeJob } from "./job.mjs";
import { byKeys, byNames } from "./keys.mjs";
import { SIZES, onCore } from "./served.mjs";
import { serveMendline } from "./mendline.mjs";

const served = onCore();
const path = (name) => fileURLToPath(new URL(`../../fixtures/${name}`, import.meta.url));

for (const [how, hands, size] of [["by keyboard alone", byKeys, SIZES[1]], ["by the names that a reader says", byNames, SIZES[0]]]) {
  test(`the whole job ${how}`, { timeout: 600_000 }, async () => {
    const own = await serveMendline();
    try {
      const { page, close } = await served.open(size, { core: own, person: null });
      // Nothing here may use a pointer.
      await page.evaluate(() => { globalThis.pointed = 0; addEventListener("pointerdown", () => { globalThis.pointed += 1; }, true); });
      const number = await wholeJob(hands(page), path("inspections/quillmere.txt"), path("photos/cover.jpg"));
      assert.match(number, /^[0-9A-F]{3}-0001$/);
      assert.equal(await page.evaluate(() => globalThis.pointed), 0);
      await close();
    } finally {
      await own.stop();
    }
  });
}
