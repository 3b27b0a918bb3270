// The screens as they stand in the folder instead of those in the built program, for whoever draws: MENDLINE_UI=ui.

import { readFile } from "node:fs/promises";
import { extname, join, resolve } from "node:path";

const TYPES = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css", ".woff2": "font/woff2" };

/** Lets a page read the screens from the folder that MENDLINE_UI names, if it names one. All else comes from the core. */
export async function fromFolder(page) {
  const folder = process.env.MENDLINE_UI && resolve(process.env.MENDLINE_UI);
  if (!folder) return;
  await page.route((url) => url.pathname === "/" || extname(url.pathname) in TYPES, async (route) => {
    const { pathname } = new URL(route.request().url());
    const path = join(folder, pathname === "/" ? "index.html" : pathname);
    const body = await readFile(path).catch(() => null);
    return body === null ? route.fallback() : route.fulfill({ body, contentType: TYPES[extname(path)] });
  });
}
