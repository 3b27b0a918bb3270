// The window killed in the middle of a hold: it opens on it again, and its clock shows what is left. Of several holds the
// first screen names each.

import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { readFileSync, readdirSync } from "node:fs";
import { createInterface } from "node:readline";
import { once } from "node:events";
import { join } from "node:path";
import { test } from "node:test";
import { setTimeout as pause } from "node:timers/promises";
import { openWindow, until } from "./driver.mjs";
import { BUILT, emptyFolder } from "./mendline.mjs";
import { Walk, asker } from "./walk.mjs";

/** The screens count whole seconds, and answers come within two. */
const NEAR_S = 3;

/** Fills a folder through `mendline serve`, which lets go of it again. Returns what `fill` returns. */
async function filled(data, fill) {
  const child = spawn(join(BUILT, "mendline"), ["serve", "--port", "0", "--data", data], { stdio: ["ignore", "pipe", "inherit"] });
  const [line] = await once(createInterface(child.stdout), "line", { signal: AbortSignal.timeout(20_000) });
  const outcome = await fill(asker(/^Open (http:\S+)$/.exec(line)[1]));
  const ended = once(child, "exit");
  child.kill();
  await ended;
  return outcome;
}

/** Kills the window that works in this folder, and nothing else. Source: proc(5). */
function killWindow(data) {
  const is = (pid) => { try { return readFileSync(`/proc/${pid}/environ`, "utf8").includes(`MENDLINE_DATA=${data}\0`) && readFileSync(`/proc/${pid}/comm`, "utf8").startsWith("mendline-app"); } catch { return false; } };
  const found = readdirSync("/proc").filter((name) => /^\d+$/.test(name)).filter(is);
  assert.equal(found.length, 1, "one window works in the folder");
  process.kill(Number(found[0]), "SIGKILL");
}

/** The seconds to the next reading, of what the hold shows as minutes and seconds. */
const leftS = (text) => {
  const [, minutes, seconds] = /(\d+):(\d\d)/.exec(text).map(Number);
  return minutes * 60 + seconds;
};

test("a window killed in the hold leads back to the hold with the right time left", { timeout: 180_000 }, async () => {
  const folder = await emptyFolder();
  const repair = await filled(folder.path, async (api) => {
    const walk = await (await (await new Walk(api).open({ number: "R-07" })).plan()).to("hold");
    return walk.id;
  });
  let window = await openWindow({ data: folder.path });
  try {
    await window.run("location.hash = args[0]", `#/repair/${repair}`);
    const clock = () => until(async () => { const text = await window.run("return document.querySelector('.readings')?.innerText ?? ''"); return /\d:\d\d/.test(text) && text; });
    const [before, since] = [leftS(await clock()), performance.now()];
    await pause(1_500);
    killWindow(folder.path);
    await window.end();
    await pause(4_000);
    window = await openWindow({ data: folder.path });
    // Nobody taps: the only clock that runs is what whoever opens the window wants.
    await until(() => window.run("return location.hash === args[0]", `#/repair/${repair}`));
    assert.equal(await until(() => window.run("return document.querySelector('h1')?.textContent === 'Hold' && 'Hold'")), "Hold");
    const after = leftS(await clock());
    const passed = (performance.now() - since) / 1000;
    killWindow(folder.path);
    await window.end();
    await filled(folder.path, async (api) => (await (await new Walk(api).open({ number: "R-08" })).plan()).to("hold"));
    window = await openWindow({ data: folder.path });
    await until(() => window.run("return document.querySelectorAll('.live').length === 2"));
    await pause(1_000);
    assert.ok(["", "#/"].includes(await window.run("return location.hash")), "with two holds the first screen stays");
    await window.click(`a[href="#/repair/${repair}"]`);
    assert.ok(Math.abs(before - passed - after) < NEAR_S, `${before} s left, ${passed.toFixed(1)} s passed, then ${after} s left`);
  } finally {
    await window.end();
    await folder.remove();
  }
});
