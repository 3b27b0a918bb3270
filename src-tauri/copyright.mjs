// Writes the copyright file of the Debian package to standard output: whose work is in the programs, and on what terms.
// The fonts' terms stand beside the fonts; those of the libraries are read where Cargo has unpacked them.

import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const RULE = "-".repeat(72);
const NOTICE = /^(licen[cs]e|copying|copyright|notice|unlicense)/i;
const NAMES = /^\W*(copyright\b.*(\d{4}|\(c\)|©)|\(c\) \d{4}|© )/i;
/** Debian carries these texts itself. The second is only offered beside the first, and not taken. */
const APACHE = /^[^\n]*Apache License\s+Version 2\.0, January 2004.*?(END OF TERMS AND CONDITIONS(.*?limitations under the License\.)?|$(?![^]))/gms;
const GPL = /^\s*GNU GENERAL PUBLIC LICENSE/;

const read = (path) => readFileSync(join(ROOT, path), "utf8").trim();
const used = libraries();
const terms = grouped(used);

process.stdout.write(`Mendline is made by the authors of Mendline, on the terms of the Apache License, version 2.0.
On Debian its text is in /usr/share/common-licenses/Apache-2.0.

The programs hold two families of fonts, unmodified, and the libraries that are listed below. Whose they are, and on what
terms, follows in their own words. Where a library leaves the choice, the Apache License or else the first of the others is taken.

${RULE}
${read("core/fonts/LICENSE.txt")}

${RULE}
${read("ui/fonts/B612-LICENSE.txt")}

${RULE}
${used.map(({ name, version, license }) => `${name} ${version}: ${license ?? "its terms follow"}`).join("\n")}

${terms.map(({ text, by }) => `${RULE}\n${[...by].map(([name, people]) => [name, ...people].join("\n    ")).join("\n")}\n\n${text}`).join("\n\n")}
`);

/** Returns the packages that are compiled into the programs for this processor, without those that only build or test. */
function libraries() {
  const host = execFileSync("rustc", ["--print", "host-tuple"], { encoding: "utf8" }).trim();
  const { packages, resolve } = JSON.parse(execFileSync("cargo", ["metadata", "--format-version", "1", "--locked", "--filter-platform", host], { cwd: ROOT, encoding: "utf8", maxBuffer: 2 ** 28 }));
  const nodes = new Map(resolve.nodes.map((node) => [node.id, node]));
  const reached = new Set();
  const todo = packages.filter(({ name }) => ["mendline-core", "mendline-app"].includes(name)).map(({ id }) => id);
  while (todo.length > 0) {
    const id = todo.pop();
    if (reached.has(id)) continue;
    reached.add(id);
    for (const { pkg, dep_kinds } of nodes.get(id).deps) if (dep_kinds.some(({ kind }) => kind === null)) todo.push(pkg);
  }
  return packages.filter(({ id, source }) => source && reached.has(id));
}

/** Returns each text once: most libraries carry the same few and differ only in the lines that name people. */
function grouped(packages) {
  const found = new Map();
  for (const { name, manifest_path } of packages) {
    for (const text of notices(dirname(manifest_path))) {
      const lines = text.split("\n");
      const rest = lines.filter((line) => !NAMES.test(line)).join("\n").trim();
      const key = rest.replace(/\W+/g, "").toLowerCase();
      if (!found.has(key)) found.set(key, { text: rest, by: new Map() });
      const { by } = found.get(key);
      by.set(name, new Set([...(by.get(name) ?? []), ...lines.filter((line) => NAMES.test(line)).map((line) => line.trim())]));
    }
  }
  return [...found.values()];
}

function notices(folder) {
  const names = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isFile() && NOTICE.test(entry.name)).map(({ name }) => name);
  return names.map((name) => readFileSync(join(folder, name), "utf8").replace(APACHE, "").trim()).filter((text) => text && !GPL.test(text));
}
