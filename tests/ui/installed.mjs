// Opens the window that MENDLINE_BUILT holds, once, and prints what its first screen says and how long it took: for the test
// of the package, `node installed.mjs PICTURE`. Source of the times: W3C Paint Timing.

import assert from "node:assert/strict";
import { writeFile } from "node:fs/promises";
import { openWindow, until } from "./driver.mjs";

const [picture] = process.argv.slice(2);
const begun = Date.now();
const window = await openWindow();
try {
  const heading = await until(() => window.run(`return document.querySelector("main h2") && document.querySelector("h1").innerText`));
  const drawn = await window.run(`return performance.timeOrigin + performance.getEntriesByName("first-contentful-paint")[0].startTime`);
  const font = await window.run(`await document.fonts.ready; return document.fonts.check("1rem B612")`);
  assert.ok(font, "the letters are not the program’s own");
  await writeFile(picture, await window.screenshot());
  console.log(`the window says “${heading}”; from the start to the first thing drawn ${Math.round(drawn - begun)} ms, the driver's start in it`);
} finally {
  await window.end();
}
