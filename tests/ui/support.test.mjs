// The file for support holds what helps, and nobody's name and no place. The file of sheets is taken in whole or not at all.

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { BUILT } from "./mendline.mjs";

const run = (...words) => spawnSync(join(BUILT, "mendline"), words, { encoding: "utf8", maxBuffer: 1e9 });
let out, data;
before(() => {
  out = mkdtempSync(join(tmpdir(), "mendline-support-"));
  data = join(out, "data");
  const { status, stderr } = run("demo", "--out", out);
  assert.equal(status, 0, stderr);
}, { timeout: 120_000 });
after(() => rmSync(out, { recursive: true, force: true }));

let n = 0;
function ask(folder, request) {
  n += 1;
  const { stdout, stderr } = spawnSync(join(BUILT, "mendline"), ["ask", "--data", folder], { input: `${JSON.stringify({ id: `s${n}`, person: "varga", request })}\n`, encoding: "utf8", maxBuffer: 1e9 });
  assert.ok(stdout, stderr);
  return JSON.parse(stdout);
}
const empty = () => mkdtempSync(join(out, "folder-"));

const PLACES = /lat|lon|east|north/;
const NAMES = ["id", "name", "street", "person", "device"];

/**
 * Every text that is more than a small word of the program, and every number of four digits or more that places
 * something.
 */
function told(value, key, texts) {
  if (typeof value === "string") {
    const anybodys = /[\p{Lu}\s\p{N}]/u.test(value);
    if (value.length >= 3 && (anybodys || NAMES.includes(key))) for (const text of [value, ...value.split(/\s+/).filter((word) => word.length >= 5 && /[\p{Lu}\p{N}]/u.test(word))]) texts.add(text);
  } else if (typeof value === "number") {
    if (PLACES.test(key) && String(value).length >= 4) texts.add(String(value));
  } else if (Array.isArray(value)) value.forEach((one) => told(one, key, texts));
  else if (value) for (const [inner, one] of Object.entries(value)) told(one, inner, texts);
}

/** Says whether `one` stands in `text` as a word of its own: 12 is not in 3120. */
function names(text, one) {
  const letter = /[\p{L}\p{N}]/u;
  for (let at = text.indexOf(one); at >= 0; at = text.indexOf(one, at + 1)) if (!letter.test(text[at - 1] ?? " ") && !letter.test(text[at + one.length] ?? " ")) return true;
  return false;
}

test("no name and no coordinate of the folder stands in it, printed or saved", { timeout: 120_000 }, () => {
  const texts = new Set();
  told(ask(data, { do: "shelf" }).ok, "", texts);
  told(ask(data, { do: "inspections" }).ok, "", texts);
  for (const { repair } of ask(data, { do: "list" }).ok.repairs) {
    const record = JSON.parse(Buffer.from(ask(data, { do: "record", repair }).ok.bytes, "base64"));
    told(record, "", texts);
    for (const entry of record.entries) if (entry.body) told(typeof entry.body === "string" ? read(entry.body) : entry.body, "", texts);
  }
  assert.ok(texts.size > 500, `${texts.size} is too little to look for`);
  for (const sure of ["Quillmere", "Ekdal", "Kettle"]) assert.ok([...texts].some((text) => text.includes(sure)), `${sure} is not among what is looked for`);
  const places = [...texts].filter((text) => /^-?\d+\.?\d*$/.test(text) && text.length >= 5);
  assert.ok(places.length >= 2, "no coordinate is looked for");

  const printed = run("diagnostics", "--data", data);
  assert.equal(printed.status, 0, printed.stderr);
  const saved = Buffer.from(ask(data, { do: "diagnostics" }).ok.bytes, "base64").toString();
  const known = JSON.parse(printed.stdout);
  for (const text of [printed.stdout, saved]) {
    // What the program says of itself and of the machine may stand in the data as well.
    const rest = [known.version, known.day, known.platform].reduce((left, own) => left.replace(own, ""), text);
    assert.deepEqual([...texts].filter((one) => names(rest, one)), []);
  }
  // And the search would find them: with one name put in, it does.
  assert.ok([...texts].some((one) => names(`${saved} Quillmere`, one)));
  assert.equal(known.documents.contracts, 1);
  assert.equal(known.people.foreman, 1);
  assert.deepEqual(known.faults, {});
  assert.ok(known.files.photos.files > 0);
});

const read = (text) => { try { return JSON.parse(text); } catch { try { return JSON.parse(Buffer.from(text, "base64")); } catch { return text; } } };

test("a folder that is no record is told of by a code and left alone", () => {
  const folder = empty();
  writeFileSync(join(folder, "journal.sqlite"), "Lantern Lane 12, not a database at all");
  writeFileSync(join(folder, "Lantern Lane.txt"), "x");
  const { status, stdout } = run("diagnostics", "--data", folder);
  assert.equal(status, 0);
  assert.deepEqual(JSON.parse(stdout).faults, { not_a_database: 1 });
  assert.equal(JSON.parse(stdout).files.other.files, 1);
  assert.ok(!stdout.includes("Lantern"));
  assert.match(readFileSync(join(folder, "journal.sqlite"), "utf8"), /^Lantern Lane/);

  const nowhere = run("diagnostics", "--data", join(folder, "nowhere"));
  assert.equal(nowhere.status, 1);
  assert.match(nowhere.stderr, /is not a folder/);
  assert.ok(!existsSync(join(folder, "nowhere")));
});

test("an empty folder stays empty", () => {
  const folder = empty();
  assert.equal(run("diagnostics", "--data", folder).status, 0);
  assert.deepEqual(readdirSync(folder), []);
});

test("the sheets of one folder are taken in by another, and people stay", () => {
  const folder = empty();
  const there = ask(data, { do: "shelf" }).ok;
  const here = ask(folder, { do: "take_sheets", name: "s.json", bytes: ask(data, { do: "hand_out_sheets" }).ok.bytes }).ok;
  for (const list of ["contracts", "resins", "patches", "packers", "instruments", "methods"]) {
    assert.ok(here[list].length > 0, list);
    assert.deepEqual(here[list], there[list]);
  }
  assert.deepEqual(here.people, []);
  assert.deepEqual(ask(folder, { do: "today" }).ok.lacks, ["person"]);
});

test("a file of anything else, of another form or cut short changes nothing", () => {
  const folder = empty();
  const whole = Buffer.from(ask(data, { do: "hand_out_sheets" }).ok.bytes, "base64").toString();
  for (const text of ["", "{}", whole.slice(0, -20), whole.replace("sheets/1", "sheets/9"), JSON.stringify({ form: "mendline-sheets/1", documents: [] })]) {
    const answer = ask(folder, { do: "take_sheets", bytes: Buffer.from(text).toString("base64") });
    assert.equal(answer.error?.code, "bad_sheets", JSON.stringify(answer).slice(0, 200));
  }
  assert.deepEqual(ask(folder, { do: "shelf" }).ok.contracts, []);
});
