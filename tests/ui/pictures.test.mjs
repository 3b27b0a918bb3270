// Photos, marked-up copies and labels in a browser on the real core.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { SIZES, flaws, goTo, onCore } from "./served.mjs";
import { Walk } from "./walk.mjs";

const LABELS = new URL("../../fixtures/labels/", import.meta.url);
const file = async (name) => ({ name, mimeType: name.endsWith("png") ? "image/png" : "image/jpeg", buffer: await readFile(new URL(name, LABELS)) });

let walk;
const served = onCore(async ({ api }) => { walk = await (await (await new Walk(api).open({ number: "R-01" })).plan()).to("staging"); });

const photosNow = async () => (await served.api.ask({ do: "repair", repair: walk.id })).repair.photos;
const seen = (image) => image.evaluate((one) => one.naturalWidth > 0);

test("a photo is chosen, seen, kept as it is, and shown among those of the attempt", { timeout: 60_000 }, async () => {
  const { page, close } = await served.open(SIZES[0], { hash: `#/repair/${walk.id}/photo` });
  await page.fill("#photo-label", "Containers on the table");
  // A touch on an act that has just appeared counts as a ghost.
  await page.waitForTimeout(500);
  await page.locator(".deck > .act").click();
  await page.locator("#root").getByText("Take or choose a picture first.").waitFor();
  const taken = await file("code-128-askew.jpg");
  await page.locator("#photo-file").setInputFiles(taken);
  await page.locator(".chosen img").waitFor();
  assert.ok(await seen(page.locator(".chosen img")));
  assert.deepEqual(await flaws(page), []);
  await page.locator(".deck > .act").click();
  await page.waitForFunction((to) => location.hash === to, `#/repair/${walk.id}`);
  const [kept] = await photosNow();
  assert.equal(kept.label, "Containers on the table");
  const { bytes } = await served.api.ask({ do: "photo", sha256: kept.sha256 });
  assert.deepEqual(Buffer.from(bytes, "base64"), taken.buffer, "the original bytes");
  await goTo(page, `#/repair/${walk.id}/photo`);
  assert.equal(await page.locator(".chosen").count(), 0, "what was sent is no longer chosen");
  await page.waitForFunction(() => document.querySelector(".photos img")?.naturalWidth === 480);
  await close();
});

for (const size of SIZES) {
  test(`a photo is marked up on a copy on a ${size.name}, and the original stays`, { timeout: 60_000 }, async () => {
    const [original] = await photosNow();
    const { page, close } = await served.open(size, { hash: `#/repair/${walk.id}/mark/${original.sha256}` });
    await page.waitForFunction(() => document.querySelector(".mark img")?.naturalWidth === 1600);
    await page.locator(".deck > .act").click();
    await page.locator("#root").getByText("Draw on the photo first.").waitFor();
    const pad = page.locator(".mark-pad");
    await pad.scrollIntoViewIfNeeded();
    const box = await pad.boundingBox();
    await page.mouse.move(box.x + box.width * 0.2, box.y + box.height * 0.2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.8, box.y + box.height * 0.3, { steps: 8 });
    await page.mouse.up();
    assert.deepEqual(await flaws(page), []);
    await page.fill("#mark-label", `The lot, seen on a ${size.name}`);
    await page.locator(".deck > .act").click();
    await page.locator(".photos figcaption", { hasText: `The lot, seen on a ${size.name}` }).waitFor();
    const copy = (await photosNow()).at(-1);
    assert.equal(copy.copy_of, original.sha256);
    const bytes = async ({ sha256 }) => Buffer.from((await served.api.ask({ do: "photo", sha256 })).bytes, "base64");
    assert.deepEqual(await bytes(original), (await file("code-128-askew.jpg")).buffer);
    assert.equal((await bytes(copy)).readUInt16BE(0), 0xffd8, "a JPEG");
    const red = await page.evaluate(async (jpeg) => {
      const picture = await createImageBitmap(new Blob([Uint8Array.from(atob(jpeg), (letter) => letter.charCodeAt(0))]));
      const canvas = new OffscreenCanvas(picture.width, picture.height);
      const ink = canvas.getContext("2d");
      ink.drawImage(picture, 0, 0);
      const [r, g, b] = ink.getImageData(picture.width * 0.5, picture.height * 0.25, 1, 1).data;
      return { r, g, b, width: picture.width };
    }, (await bytes(copy)).toString("base64"));
    assert.ok(red.r > red.g + 60 && red.width === 1600, `the line is on the copy: ${JSON.stringify(red)}`);
    await close();
  });
}

test("labels fill the lots, a wrong one says why and leaves nothing behind", { timeout: 120_000 }, async () => {
  const { page, close } = await served.open(SIZES[0], { hash: `#/repair/${walk.id}/label` });
  assert.deepEqual(await flaws(page), []);
  const before = (await photosNow()).length;
  const choose = async (name) => page.locator("main form input[type=file]").last().setInputFiles(await file(name));
  await choose("wrong-check-digit.png");
  await page.locator("#root").getByText("has a wrong check digit: 0 stands there, 2 is right").waitFor();
  await choose("too-blurred.jpg");
  await page.locator("#root").getByText("No code was found in the picture.").waitFor();
  assert.equal((await photosNow()).length, before);
  await choose("data-matrix-askew.jpg");
  await page.locator("#root").getByText("product 09506000134352, lot 26-0811-A, good until 2027-02-28").waitFor();
  await page.locator("#root").getByText("Label of part B", { exact: true }).first().waitFor();
  await choose("day-left-open.png");
  await page.locator("#root").getByText("lot 26/0809-B, good until 2028-02-29").waitFor();
  await page.getByRole("link", { name: "Photograph it" }).first().waitFor();
  await choose("lot-only.png");
  await page.locator(".conditions p", { hasText: /^lot GM-5512$/ }).waitFor();
  assert.equal((await photosNow()).at(-1).label, "Label of the patch: lot GM-5512");
  await page.locator(".deck > .act").click();
  await page.locator("[name='command.answer.values.lot_a']").waitFor();
  const value = (key) => page.locator(`[name='command.answer.values.${key}']`).inputValue();
  assert.deepEqual([await value("lot_a"), await value("expires_a"), await value("lot_b"), await value("expires_b"), await value("lot_patch")], ["26-0811-A", "2027-02-28", "26/0809-B", "2028-02-29", "GM-5512"]);
  await close();
});
