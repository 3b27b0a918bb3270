// The real window, as the person at the laptop has it. Needs a display: the Makefile gives it one of its own.

import assert from "node:assert/strict";
import { existsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { openWindow, until } from "./driver.mjs";
import { inWindow } from "./hands.mjs";
import { wholeJob } from "./job.mjs";
import { emptyFolder } from "./mendline.mjs";

let window;
before(async () => { window = await openWindow(); }, { timeout: 60_000 });
after(() => window?.end());

test("the window opens on the first screen", { timeout: 30_000 }, async () => {
  await until(async () => (await window.text("h1")) === "Today");
  await until(async () => (await window.run("return document.title")).includes("Mendline"));
});

test("the core answers, from the folder that was named", { timeout: 30_000 }, async () => {
  const envelope = JSON.stringify({ id: "window-test", request: { do: "today" } });
  const response = JSON.parse(await window.run("return __TAURI__.core.invoke('ask', { envelope: args[0] })", envelope));
  assert.ok(!("error" in response), JSON.stringify(response));
  assert.ok(existsSync(join(window.data, "device")));
});

test("the page can do no more than it was allowed", { timeout: 30_000 }, async () => {
  const refused = (command, args) => window.run("return __TAURI__.core.invoke(args[0], args[1]).then(() => 'allowed', String)", command, args);
  assert.match(await refused("plugin:fs|read_text_file", { path: "/etc/passwd" }), /not allowed/);
  assert.match(await refused("plugin:fs|read_file", { path: "/etc/passwd" }), /not allowed|forbidden/);
  assert.match(await refused("plugin:fs|remove", { path: "/tmp/none" }), /not allowed/);
  const outside = await window.run("return fetch('http://127.0.0.1:9/').then(() => 'allowed', String)");
  assert.notEqual(outside, "allowed");
  assert.equal(await window.run("try { return new Function('return 1')() } catch (problem) { return problem.name }"), "EvalError");
});

test("what saves a file and gives a notice is there", { timeout: 30_000 }, async () => {
  const kinds = await window.run("const { dialog, fs, notification } = __TAURI__; return [dialog.save, fs.writeFile, fs.readFile, notification.sendNotification].map((piece) => typeof piece)");
  assert.deepEqual(kinds, ["function", "function", "function", "function"]);
});

test("a folder that can't be opened gets a window that says so, and no question counts as answered", { timeout: 60_000 }, async () => {
  const folder = await emptyFolder();
  const taken = join(folder.path, "taken");
  writeFileSync(taken, "a file, not a folder");
  const closed = await openWindow({ data: taken });
  try {
    const says = await closed.run("return __TAURI__.core.invoke('ask', { envelope: '{}' }).then(() => 'answered', ({ says }) => says)");
    assert.match(says, /taken can't be opened/);
    await until(async () => /does not answer/.test(await closed.text("body")));
  } finally {
    await closed.end();
    await folder.remove();
  }
});

test("the whole job by clicks, keys and a drawn line", { timeout: 300_000 }, async () => {
  const own = await openWindow();
  try {
    const path = (name) => fileURLToPath(new URL(`../../fixtures/${name}`, import.meta.url));
    const number = await wholeJob(inWindow(own), path("inspections/quillmere.txt"), path("photos/cover.jpg"));
    assert.match(number, /^[0-9A-F]{3}-0001$/);
    const pdf = await own.run(`const ask = (request) => __TAURI__.core.invoke("ask", { envelope: JSON.stringify({ id: crypto.randomUUID(), request }) }).then(JSON.parse);
      const { ok } = await ask({ do: "list" });
      const file = await ask({ do: "certificate", repair: ok.repairs[0].repair });
      return { name: file.ok.name, head: atob(file.ok.bytes).slice(0, 5) };`);
    assert.deepEqual(pdf, { name: `${number}.pdf`, head: "%PDF-" });
  } finally {
    await own.end();
  }
});
