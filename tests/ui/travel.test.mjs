// Repairs from one device to another by the screens, at both sizes: sent, saved, taken in, refused, gone on with after a break.

import assert from "node:assert/strict";
import { mkdtemp, readFile, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { serveMendline } from "./mendline.mjs";
import { SIZES, flaws, goTo, onCore } from "./served.mjs";
import { Walk, asker } from "./walk.mjs";

/** Touches sooner than this after a screen came are taken for ghosts. */
const GHOSTS_MS = 500;

let sent, office, folder;
const street = onCore(async ({ api }) => {
  sent = await (await new Walk(api).open({ number: "R-31" })).plan();
  const photos = new URL("../../fixtures/photos/", import.meta.url);
  const name = (await readdir(photos)).find((one) => one.endsWith(".jpg"));
  await api.ask({ do: "keep_photo", repair: sent.id, label: "Crack", bytes: (await readFile(new URL(name, photos))).toString("base64") });
});
before(async () => {
  office = await serveMendline();
  folder = await mkdtemp(join(tmpdir(), "mendline-sent-"));
}, { timeout: 60_000 });
after(async () => { await office?.stop(); await rm(folder, { recursive: true, force: true }); });

/** Sends a repair by the screens and returns where its file lies. */
async function file(page) {
  await goTo(page, `#/repair/${sent.id}`);
  await page.getByRole("link", { name: /Send this repair/ }).click();
  await page.getByRole("checkbox", { name: /R-31/, checked: true }).waitFor();
  await page.waitForTimeout(GHOSTS_MS);
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: /Make the file/ }).click()]);
  await page.getByRole("heading", { level: 1, name: "The file is made" }).waitFor();
  await page.locator("#root").getByText("1 repair, 1 photo").waitFor();
  const path = join(folder, download.suggestedFilename());
  await download.saveAs(path);
  return path;
}

async function take(page, path) {
  await goTo(page, "#/take");
  await page.setInputFiles("#take-file", path);
  await page.waitForTimeout(GHOSTS_MS);
  await page.getByRole("button", { name: /Take the file in/ }).click();
}

for (const size of SIZES) {
  test(`a repair is sent and taken in on a ${size.name}`, { timeout: 60_000 }, async () => {
    const from = await street.open(size);
    const path = await file(from.page);
    assert.deepEqual(await flaws(from.page), []);
    await from.close();
    assert.match(path, /\.mendline$/);
    const first = size === SIZES[0];
    const to = await street.open(size, { core: office });
    await take(to.page, path);
    await to.page.getByRole("heading", { level: 1, name: first ? "Taken in" : "All of it was here already" }).waitFor();
    assert.equal(await to.page.locator("#root").getByText("This device is met for the first time.").count(), first ? 1 : 0);
    assert.deepEqual(await flaws(to.page), []);
    await to.page.getByRole("link", { name: /R-31/ }).click();
    await to.page.getByRole("link", { name: /Send this repair/ }).waitFor();
    await to.close();
  });

  test(`a changed file and half a file are refused in plain words on a ${size.name}`, { timeout: 60_000 }, async () => {
    const from = await street.open(size);
    const whole = await readFile(await file(from.page));
    await from.close();
    const changed = Buffer.from(whole);
    changed[changed.length - 200] ^= 1;
    for (const [name, bytes, says] of [["changed.mendline", changed, "Nothing was taken in"], ["half.mendline", whole.subarray(0, whole.length / 2), "did not arrive whole"]]) {
      await writeFile(join(folder, name), bytes);
      const to = await street.open(size, { core: office });
      await take(to.page, join(folder, name));
      await to.page.locator("#root").getByText(says).first().waitFor();
      await to.close();
    }
    assert.deepEqual((await readdir(office.data)).filter((name) => name === "arriving"), [], "nothing of them lies about");
  });
}

test("a file that stopped on its way goes on where it stopped", { timeout: 60_000 }, async () => {
  const from = await street.open(SIZES[0]);
  const path = await file(from.page);
  await from.close();
  const whole = await readFile(path);
  const name = path.split("/").at(-1);
  const { ask } = asker(office.address);
  const half = Math.floor(whole.length / 2);
  await ask({ do: "bring", name, of: whole.length, from: 0, bytes: whole.subarray(0, half).toString("base64") });
  const to = await street.open(SIZES[0], { core: office });
  const brought = [];
  to.page.on("request", (request) => { const asked = request.postDataJSON()?.request; if (asked?.do === "bring") brought.push(asked.from); });
  await take(to.page, path);
  await to.page.getByRole("heading", { level: 1, name: /here already|Taken in/ }).waitFor();
  assert.deepEqual(brought, [0, half], "only what was missing was sent");
  await to.close();
});
