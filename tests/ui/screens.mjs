// Takes pictures of every screen, for people to look at: `node screens.mjs FOLDER [chromium|webkit] [WORD …]`, as `make screens` does.
// In Chromium, and in the real window, whose engine is WebKit; at two sizes, in three lights. `index.html` in the folder shows them.

import { mkdir, readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { inBrowserShots } from "./shots/chromium.mjs";
import { inWindowShots } from "./shots/webkit.mjs";
import { shots } from "./shots.mjs";

const SIZES = [{ name: "phone", width: 360, height: 640 }, { name: "laptop", width: 1280, height: 800 }];
const LIGHTS = ["day", "sun", "night"];
const ENGINES = { chromium: inBrowserShots, webkit: inWindowShots };

const [folder = "out/screens", ...rest] = process.argv.slice(2);
const engines = Object.keys(ENGINES).filter((name) => rest.includes(name));
const words = rest.filter((word) => !(word in ENGINES));

await mkdir(folder, { recursive: true });
let wrong = 0;
for (const name of engines.length > 0 ? engines : Object.keys(ENGINES)) await take(name);
await writeFile(join(folder, "index.html"), index(await readdir(folder)));
process.exitCode = wrong > 0 ? 1 : 0;

async function take(engine) {
  const camera = await ENGINES[engine](SIZES);
  try {
    for await (const shot of shots(camera.api)) {
      if (words.length > 0 && !words.some((word) => shot.name.includes(word))) continue;
      for (const size of SIZES) {
        const { pictures, problems } = await camera.take(shot, size, LIGHTS).catch((problem) => ({ pictures: [], problems: [String(problem)] }));
        for (const { light, png, whole } of pictures) await writeFile(join(folder, `${shot.name}_${light}_${size.name}${whole ? "_whole" : ""}${engine === "webkit" ? "_webkit" : ""}.png`), png);
        for (const problem of problems) { wrong += 1; console.error(`${shot.name}, ${size.name}, ${engine}: ${problem}`); }
      }
    }
  } finally {
    await camera.end();
  }
}

// One row a screen and engine, the lights side by side.
function index(files) {
  const rows = new Map();
  for (const file of files.filter((one) => one.endsWith(".png")).sort()) {
    const [, name, size, more] = /^(.+)_(?:day|sun|night)_(phone|laptop)(.*)\.png$/.exec(file) ?? [];
    if (!name) continue;
    const key = `${name}, ${size}${more.replaceAll("_", ", ")}`;
    rows.set(key, [...(rows.get(key) ?? []), file]);
  }
  const row = ([key, all]) => `<h2>${key}</h2><p>${all.map((file) => `<a href="${file}"><img loading="lazy" src="${file}" alt="${file}"></a>`).join(" ")}</p>`;
  return `<!doctype html><meta charset="utf-8"><title>Screens</title><style>img { max-width: 32%; border: 1px solid }</style>${[...rows].map(row).join("\n")}\n`;
}
