// One Chromium and one server for a file of tests; a page fails its test when it logs an error or reaches outside.

import { after, before } from "node:test";
import assert from "node:assert/strict";
import { existsSync } from "node:fs";
import { chromium } from "playwright-core";
import { serve } from "../serve.mjs";
import { ENGLISH } from "../words.mjs";

const PATH = process.env.CHROMIUM ?? "/usr/bin/chromium";

/** Returns { skip, open }. `answer(envelope)` stands in for the core. */
export function inChromium(answer = () => ({})) {
  const at = { skip: existsSync(PATH) ? false : `no Chromium at ${PATH}: name one with CHROMIUM=…` };
  let browser, server;
  before(async () => {
    if (at.skip) return;
    server = await serve((envelope) => at.answer(envelope), () => at.words());
    browser = await chromium.launch({ executablePath: PATH, args: ["--no-sandbox"] });
  });
  after(async () => { await browser?.close(); server?.close(); });

  at.answer = answer;
  at.words = () => ENGLISH;
  /** Opens a path in a page of its own; returns { page, close } where close fails on what went wrong meanwhile. */
  at.open = async (path, options = {}) => {
    const context = await browser.newContext({ viewport: { width: 360, height: 640 }, ...options });
    const page = await context.newPage();
    const problems = [];
    page.on("console", (m) => { if (m.type() === "error") problems.push(m.text()); });
    page.on("pageerror", (problem) => problems.push(String(problem)));
    page.on("request", (request) => { if (!request.url().startsWith(server.url) && !/^(blob|data):/.test(request.url())) problems.push(`outside: ${request.url()}`); });
    await page.goto(server.url + path);
    return { page, context, url: server.url, close: async (expected = []) => { await context.close(); assert.deepEqual(problems.filter((p) => !expected.some((e) => p.includes(e))), []); } };
  };
  return at;
}
