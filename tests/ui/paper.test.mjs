// The job on paper: every field of the screens is on it, and it prints without the screen's furniture. Read back by poppler.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { test } from "node:test";
import { SIZES, onCore } from "./served.mjs";
import { Walk } from "./walk.mjs";

let walk;
const served = onCore(async ({ api }) => { walk = await (await new Walk(api).open({ number: "R-01" })).plan(); });

test("the paper asks for every field and photo of every stage, on pages without buttons", { timeout: 90_000 }, async () => {
  const { page, close } = await served.open(SIZES[1], { hash: `#/repair/${walk.id}/paper` });
  const { paper } = await served.api.ask({ do: "paper", repair: walk.id });
  assert.ok(paper.tasks.length > 20);
  const printed = await page.pdf({ format: "A4" });
  const read = execFileSync("pdftotext", ["-layout", "-", "-"], { input: printed }).toString().replace(/\s+/g, " ");
  const words = [...paper.tasks.flatMap(({ label, fields }) => [label, ...fields.map((one) => one.label)]), ...paper.photos.map(({ label }) => label)];
  const flat = read.replaceAll(" ", "");
  const missing = words.filter((text) => !flat.includes(text.replace(/\s+/g, "").replace("₂S", "2S")) && !flat.includes(text.replace(/\s+/g, "")) && !/₂/.test(text));
  // A long label is set beside its line over several lines, which the layout of the text may part: its words are there.
  assert.deepEqual(missing.filter((text) => !text.split(/\s+/).every((word) => read.includes(word))), []);
  for (const button of ["Print it", "A4 or Letter"]) assert.ok(!read.includes(button), button);
  assert.match(read, /Joined|Parts joined/);
  assert.match(read, /Gauge, bar/);
  const pages = Number(/Pages:\s+(\d+)/.exec(execFileSync("pdfinfo", ["-"], { input: printed }).toString())[1]);
  assert.ok(pages >= 2 && pages <= 8, `${pages} pages`);
  await close();
});
