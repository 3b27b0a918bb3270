// The program itself with a stand-in for the core: start, arrival, silence of the core, light, position.

import test from "node:test";
import assert from "node:assert/strict";
import { ENGLISH } from "../words.mjs";
import { inChromium } from "./kit.mjs";

const AT = Date.UTC(2026, 9, 14, 9, 24);
const asked = [];
const NOTHING = { kind: "today", mixed: [], holding: [], curing: [], underway: [], next: [], taken: [], review: [], done: [], damaged: [], owner: "", crew: "", who: null };
const chromium = inChromium();
const { skip } = chromium;
const answer = (envelope) => { asked.push(envelope); return { id: envelope.id, now: { at_ms: AT, offset_min: 120 }, ok: NOTHING }; };
chromium.answer = answer;

test("it starts at today, asks once with an id of its own, and the heading has the focus", { skip }, async () => {
  asked.length = 0;
  const { page, close } = await chromium.open("#token=0123abcd");
  await page.getByRole("heading", { level: 1, name: /Today/ }).waitFor();
  assert.equal(await page.evaluate(() => document.activeElement.tagName), "H1");
  assert.match(page.url(), /#\/$/, "the token has left the address");
  assert.deepEqual(asked[0].request, { do: "today" });
  assert.match(asked[0].id, /^[0-9a-f-]{36}$/);
  assert.equal(await page.locator("h1").count(), 1);
  assert.equal(await page.locator("main").count(), 1);
  await close();
});

test("an address that nothing stands behind says so and leads back", { skip }, async () => {
  const { page, close } = await chromium.open("#/no/such/place");
  await page.locator("#root").getByText("No screen stands behind /no/such/place.").waitFor();
  await page.getByRole("link", { name: "Back to today" }).click();
  await page.getByRole("heading", { level: 1, name: /Today/ }).waitFor();
  await close();
});

test("when the core is silent the screen says so, and goes on by itself", { skip }, async () => {
  chromium.words = chromium.answer = () => { throw new Error("silent"); };
  const { page, close } = await chromium.open("");
  await page.locator("#root").getByText("The record does not answer").waitFor();
  [chromium.words, chromium.answer] = [() => ENGLISH, answer];
  await page.getByRole("heading", { level: 1, name: /Today/ }).waitFor({ timeout: 20_000 });
  assert.equal(await page.locator("#root").getByText("The record does not answer").count(), 0);
  await close(["404"]);
});

test("the position goes with a request when it is there, and its absence says why", { skip }, async () => {
  asked.length = 0;
  const known = await chromium.open("", { geolocation: { latitude: 59.33258, longitude: 18.0649, accuracy: 7 }, permissions: ["geolocation"] });
  await known.page.getByRole("heading", { level: 1, name: /Today/ }).waitFor();
  await known.page.waitForTimeout(300);
  await known.page.reload();
  await known.page.getByRole("heading", { level: 1, name: /Today/ }).waitFor();
  assert.ok(asked.every(({ position }) => position.kind === "absent" || position.lat_e7 === 593_325_800), "a tap never waits for a position");
  assert.equal(asked[0].position.kind, "absent");
  await known.close();
});

test("a screen that can't be drawn says so, and the way back is there", { skip }, async () => {
  chromium.answer = (envelope) => ({ ...answer(envelope), ok: envelope.request.do === "today" ? NOTHING : { kind: "shelf" } });
  const { page, close } = await chromium.open("#/shelf");
  await page.getByRole("heading", { level: 1, name: "This screen can’t be drawn" }).waitFor();
  await page.getByRole("link", { name: "Back to today" }).click();
  await page.getByRole("heading", { level: 1, name: /Today/ }).waitFor();
  chromium.answer = answer;
  await close(["TypeError"]);
});

test("the first screen waits for no other one, and all others come when it stands", { skip }, async () => {
  const { page, close } = await chromium.open("");
  await page.getByRole("heading", { level: 1, name: /Today/ }).waitFor();
  const fetched = () => page.evaluate(() => performance.getEntriesByType("resource").map(({ name }) => new URL(name).pathname));
  while (!(await fetched()).includes("/screens/lost.js")) await page.waitForTimeout(100);
  const inOrder = await fetched();
  for (const other of ["repair/index", "plan", "setup", "lost"]) assert.ok(inOrder.indexOf(`/screens/${other}.js`) > inOrder.indexOf("/ask"), other);
  await close();
});

test("what is tapped before the hands are here is done when they are", { skip }, async () => {
  const { page, close } = await chromium.open("");
  let letGo;
  const held = new Promise((go) => { letGo = go; });
  await page.route("**/hands.js", async (route) => { await held; await route.continue(); });
  await page.reload();
  await page.getByRole("heading", { level: 1, name: /Today/ }).waitFor();
  await page.locator(".light label").nth(2).click();
  await page.waitForTimeout(300);
  assert.equal(await page.evaluate(() => document.documentElement.dataset.light), "day");
  letGo();
  await page.locator("html[data-light=night]").waitFor();
  await close();
});

test("a start whose hands do not come says so, and can be tried again", { skip }, async () => {
  const { page, close } = await chromium.open("");
  await page.route("**/hands.js", (route) => route.abort());
  await page.evaluate(() => { location.hash = "#/practice"; });
  await page.reload();
  await page.locator("#root").getByText("It did not come.").waitFor();
  await page.unroute("**/hands.js");
  await page.getByRole("button", { name: "Try again" }).click();
  await page.getByRole("heading", { level: 1, name: "Rehearse the job" }).waitFor();
  await close(["ERR_FAILED"]);
});

test("a screen that does not come says so, and comes when it is asked for again", { skip }, async () => {
  const { page, close } = await chromium.open("");
  await page.route("**/screens/practice.js", (route) => route.abort());
  await page.reload();
  await page.getByRole("heading", { level: 1, name: /Today/ }).waitFor();
  const go = () => page.evaluate(() => { location.hash = "#/practice"; });
  await go();
  await page.locator("#root").getByText("It did not come.").waitFor();
  await page.getByRole("link", { name: "Back to today" }).click();
  await page.getByRole("heading", { level: 1, name: /Today/ }).waitFor();
  await go();
  await page.locator("#root").getByText("It did not come.").waitFor();
  await page.unroute("**/screens/practice.js");
  await page.getByRole("button", { name: "Try again" }).click();
  await page.getByRole("heading", { level: 1, name: "Rehearse the job" }).waitFor();
  await close(["ERR_FAILED"]);
});
