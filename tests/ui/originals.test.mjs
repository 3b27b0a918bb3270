// Original photos beside a certificate, in a browser on the real core: all there, one missing, one changed.

import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { readFile, readdir } from "node:fs/promises";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { promisify } from "node:util";
import { BUILT, emptyFolder } from "./mendline.mjs";
import { SIZES, flaws, onCore } from "./served.mjs";

const REHEARSAL = "A sound rehearsal, not a record";

let folder, certificate, photos;
const served = onCore();
before(async () => {
  folder = await emptyFolder();
  await promisify(execFile)(join(BUILT, "mendline"), ["demo", "--out", folder.path]);
  certificate = { name: "certificate.pdf", mimeType: "application/pdf", buffer: await readFile(join(folder.path, "certificate.pdf")) };
  const all = await readdir(join(folder.path, "data/photos"), { withFileTypes: true, recursive: true });
  photos = await Promise.all(all.filter((one) => one.isFile()).map(async ({ name, parentPath, path }) => ({ name, mimeType: "image/jpeg", buffer: await readFile(join(parentPath ?? path, name)) })));
  assert.ok(photos.length > 1, "the rehearsal has photos");
}, { timeout: 120_000 });
after(() => folder?.remove());

/** Checks the certificate and returns { page, compare, verdict, close }. */
async function checked(size) {
  const { page, close } = await served.open(size, { hash: "#/check" });
  await page.locator("#record").setInputFiles(certificate);
  // A touch on an act that has just appeared counts as a ghost.
  await page.waitForTimeout(500);
  await page.locator(".deck > .act").click();
  await page.locator("#root").getByText(`The record names ${photos.length} photos by their SHA-256.`).waitFor();
  const verdict = () => page.locator(".verdict h2").innerText();
  assert.equal(await verdict(), REHEARSAL);
  /** Brings files, and waits for the sum of all that were brought so far. */
  const compare = async (files, found, changed, missing) => {
    await page.locator("#original-files").setInputFiles(files);
    await page.waitForTimeout(500);
    await page.getByRole("button", { name: /Compare them/ }).click();
    await page.locator("#root").getByText(`Of ${photos.length} photos ${found} are there byte for byte, ${changed} changed, ${missing} not brought yet.`).waitFor({ timeout: 30_000 });
  };
  return { page, close, verdict, compare };
}

for (const size of SIZES) {
  test(`all originals are there byte for byte, and one that is nobody's is named, on a ${size.name}`, { timeout: 90_000 }, async () => {
    const { page, close, verdict, compare } = await checked(size);
    await compare([...photos, { name: "holiday.jpg", mimeType: "image/jpeg", buffer: Buffer.from([0xff, 0xd8, 0xff, 0xd9]) }], photos.length, 0, 0);
    assert.equal(await verdict(), REHEARSAL);
    await page.locator("#root").getByText("No original photo was changed").waitFor();
    await page.locator("#root").getByText("not named in the record").waitFor();
    assert.deepEqual(await flaws(page), []);
    await close();
  });
}

test("a photo that is missing says nothing about the certificate, and may come later", { timeout: 90_000 }, async () => {
  const { page, close, verdict, compare } = await checked(SIZES[1]);
  await compare(photos.slice(1), photos.length - 1, 0, 1);
  assert.equal(await verdict(), REHEARSAL);
  await page.locator("#root").getByText("not among the files that were brought").waitFor();
  await page.locator("#root").getByText("No original photo was changed").waitFor();
  await compare(photos.slice(0, 1), photos.length, 0, 0);
  assert.equal(await page.locator("#root").getByText("not among the files that were brought").count(), 0);
  await close();
});

test("a changed photo changes the finding but not the file's, until the right one comes", { timeout: 90_000 }, async () => {
  const { page, close, verdict, compare } = await checked(SIZES[0]);
  const [first, ...rest] = photos;
  const spoiled = { ...first, buffer: Buffer.from(first.buffer) };
  spoiled.buffer[spoiled.buffer.length - 1] ^= 1;
  await compare([spoiled, ...rest], photos.length - 1, 1, 0);
  assert.equal(await verdict(), "Changed, or not complete");
  const lead = await page.locator(".verdict-lead").innerText();
  assert.match(lead, /1 were changed since they were recorded\. The file itself was not changed\. Ask for the photo as it was taken\.$/);
  await page.locator("#root").getByText("An original photo was changed").waitFor();
  await page.locator("#root").getByText("Unchanged since it was signed").waitFor();
  await page.locator("#root").getByText("changed: the file bears its name and holds something else").waitFor();
  assert.deepEqual(await flaws(page), []);
  await compare([first], photos.length, 0, 0);
  assert.equal(await verdict(), REHEARSAL);
  await close();
});
