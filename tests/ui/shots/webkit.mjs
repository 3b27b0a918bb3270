// Pictures of the real window, through WebDriver. Needs a display.

import { setTimeout as pause } from "node:timers/promises";
import { openWindow, until } from "../driver.mjs";
import { inWindow } from "../hands.mjs";

/** Returns { api, take, end }. */
export async function inWindowShots() {
  const window = await openWindow();
  await until(async () => (await window.text("h1")) !== "");
  await window.run(`localStorage.setItem("mendline.person", "varga")`);
  let n = 0;
  const raw = async (request, person = "ekdal") => {
    n += 1;
    const envelope = JSON.stringify({ id: `shot-${Date.now()}-${n}`, person, request });
    return JSON.parse(await window.run(`return __TAURI__.core.invoke("ask", { envelope: args[0] })`, envelope));
  };
  const ask = async (request, person) => {
    const answer = await raw(request, person);
    if (!answer.ok) throw new Error(`${JSON.stringify(request).slice(0, 200)}: ${JSON.stringify(answer.refusal?.broken.map(({ says }) => says) ?? answer.error)}`);
    return answer.ok;
  };
  return { api: { ask, raw }, take: (shot, size, lights) => take(window, shot, size, lights), end: () => window.end() };
}

async function take(window, { hash, act }, { width, height }, lights) {
  await window.resize(width, height);
  await window.run(`for (const key of Object.keys(localStorage)) if (/draft|outbox/.test(key)) localStorage.removeItem(key); location.hash = args[0]; setTimeout(() => location.reload(), 0);`, hash);
  await pause(400);
  await until(() => window.run(`return document.readyState === "complete" && document.querySelector("h1") !== null && !document.title.startsWith("Opening")`));
  await pause(300);
  await act?.(inWindow(window));
  if (act) await pause(700);
  await window.run(`document.activeElement?.blur(); scrollTo(0, 0); await document.fonts.ready;`);
  const pictures = [];
  for (const light of lights) {
    await window.run(`document.documentElement.dataset.light = args[0]; await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));`, light);
    pictures.push({ light, png: await window.screenshot() });
  }
  const [wider, seen] = await window.run(`return [document.documentElement.scrollWidth - innerWidth, [innerWidth, innerHeight]]`);
  const wrong = seen[0] === width && seen[1] === height ? [] : [`the window is ${seen.join(" × ")}, not ${width} × ${height}`];
  return { pictures, problems: [...wrong, ...(wider > 0 ? [`${wider} px wider than the screen`] : [])] };
}
