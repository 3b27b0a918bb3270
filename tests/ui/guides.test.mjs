// The guides, played word for word by the three people they are written for: what a guide names is tapped in its order, on a
// phone for the technician, on a laptop for foreman and owner, from empty data folders to a certificate that is checked.

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { labelsOf } from "./guides.mjs";
import { inBrowser } from "./hands.mjs";
import { act, fillIn, heading, held, label, rest, sign, stage, verification, waive } from "./job.mjs";
import { BUILT, serveMendline } from "./mendline.mjs";
import { SIZES, onCore } from "./served.mjs";
import { Walk, asker } from "./walk.mjs";

const PHONE = { width: 360, height: 740 };
const LAPTOP = SIZES.find(({ name }) => name === "laptop");
const INSPECTION = fileURLToPath(new URL("../../fixtures/inspections/quillmere.txt", import.meta.url));
const PHOTO = fileURLToPath(new URL("../../fixtures/photos/before.jpg", import.meta.url));
const TEMPERATURES = { resin: "19.2", air: "13.1", pipe: "12.8" };
const TECHNICIAN = { id: "lea-brandt", name: "Lea Brandt", pin: "lantern-5" };
const FOREMAN = { id: "varga", name: "Ines Varga", pin: "kettle-77" };

let folder, office, other, owner;
const files = {};
const phone = onCore();
before(async () => {
  folder = await mkdtemp(join(tmpdir(), "mendline-guides-"));
  [office, other, owner] = [await serveMendline(), await serveMendline(), await serveMendline()];
}, { timeout: 60_000 });
after(async () => {
  for (const core of [office, other, owner]) await core?.stop();
  await rm(folder, { recursive: true, force: true });
});

/** A person at a screen: taps by what is written there. */
async function person(core, size) {
  const { page, close } = await phone.open(size, { core, person: null });
  const hands = inBrowser(page);
  const settled = () => page.waitForFunction(() => document.querySelector("[data-fresh]") === null);
  const tap = async (text) => {
    await settled();
    await page.locator("a, button, summary").filter({ hasText: text, visible: true }).first().click();
  };
  const fill = (called, value) => page.getByRole("textbox", { name: called }).fill(value);
  const titled = (name) => page.getByRole("heading", { level: 1, name, exact: true }).waitFor();
  const home = async () => {
    if (!(await page.evaluate(() => ["", "#/"].includes(location.hash)))) await page.locator(".mast-home, .deck > a[href='#/']").first().click();
    await page.waitForFunction(() => ["", "#/"].includes(location.hash) && !document.title.startsWith("Opening"));
  };
  const choose = async (css, path) => page.locator(css).first().setInputFiles(path);
  const saved = async (kind, tapped) => {
    const [download] = await Promise.all([page.waitForEvent("download"), tapped()]);
    files[kind] = join(folder, `${kind}-${download.suggestedFilename()}`);
    await download.saveAs(files[kind]);
  };
  const taps = async (name) => { await page.locator("button.mast-side").click(); await page.locator("dialog[open]").getByText(name).click(); };
  return { page, close, hands, settled, tap, fill, titled, home, choose, saved, taps };
}

/** Does what each label says, in the guide's order; a label without a deed of its own is tapped where it stands. */
async function follow(labels, deeds, tap) {
  for (const called of labels) await (deeds[called] ?? tap)(called);
}

const known = async ({ page, tap, fill }, { id, name }, role) => {
  await tap("Somebody new");
  await fill("Short id", id);
  await fill("Name", name);
  await page.getByLabel("Role").selectOption(role);
  await tap("Keep it");
};

const measured = async (hands) => { for (const [place, degrees] of Object.entries(TEMPERATURES)) await hands.type(`#${place}_mc`, degrees); };

test("the foreman prepares one file for all phones", { timeout: 120_000 }, async () => {
  const at = await person(office, LAPTOP);
  await at.tap("Take the invented examples");
  await at.page.locator(".choice label b", { hasText: FOREMAN.name }).click();
  await known(at, TECHNICIAN, "technician");
  await at.home();
  let there = 0;
  await follow(labelsOf("foreman.md", "One file for all phones"), {
    "Contract and sheets": async (called) => { there += 1; if (there === 1) await at.tap(called); },
    "Save all as one file": (called) => at.saved("sheets", () => at.tap(called)),
    "A file from the office": (called) => at.page.getByRole("heading", { name: called }).waitFor(),
  }, at.tap);
  await at.close();
});

test("the technician does the job by the guide, from an empty phone to the foreman’s review", { timeout: 300_000 }, async () => {
  const at = await person(phone.core, PHONE);
  const { hands, page } = at;
  await follow(labelsOf("technician.md", "Before you go out"), {
    Today: at.home,
    "Set this device up": async (called) => { await at.tap(called); await at.titled("In which language?"); },
    Later: async (called) => {
      await at.tap(called);
      await page.locator('a[href="#/setup"]').click();
      await act(hands, "Go on", false);
      await at.titled("In which units?");
      await act(hands, "Go on", false);
      await at.fill("Your name", TECHNICIAN.name);
      await act(hands, "That is me");
      await at.choose("#sheets-file", files.sheets);
      await at.tap("Take it in");
      await page.getByText("Already here").waitFor();
      await act(hands, "Go on", false);
      await at.titled("Which sheets?");
      await act(hands, "Back to today", false);
    },
    People: async (called) => { await at.tap(called); await page.locator(".choice label b", { hasText: TECHNICIAN.name }).click(); },
    "Somebody new": () => known(at, FOREMAN, "foreman"),
    "Take it in": async (called) => { await at.choose("#inspection-file", INSPECTION); await act(hands, called, false); await page.getByText("7 lines").waitFor(); },
    "Enter a defect by hand": (called) => page.getByRole("link", { name: called }).waitFor(),
    "Accept this plan": async (called) => {
      await hands.clickText("a.way b", "MH 031 to MH 032");
      await hands.clickText(".choice label b", "Crack, lengthwise");
      await act(hands, "Take 1 as the defect");
      await heading(hands, "Plan");
      await measured(hands);
      await act(hands, called);
    },
    "Begin staging": async (called) => { await act(hands, called); await stage(hands, "Staging", PHOTO); },
  }, at.tap);
  const read = async (called) => {
    await act(hands, called);
    for (const [id, value] of [["gauge_pa", "1.30"], ["pipe_mc", "12.8"], ["upstream_um", "0.35"]]) await hands.type(`#${id}`, value);
    await act(hands, "Record the");
    await heading(hands, "Hold");
  };
  await follow(labelsOf("technician.md", "In the street"), {
    "Packer is back and sound": async (called) => { await act(hands, called); await stage(hands, "Test push", PHOTO); await stage(hands, "Sleeve change", PHOTO); },
    "Ask for the go": async (called) => { await heading(hands, "Go or no-go"); await measured(hands); await act(hands, called); },
    "Parts joined": (called) => held(hands, called),
    "Target pressure reached": (called) => held(hands, called),
    "Take a reading": read,
    "Fill in what the resin left no time for": async (called) => { await at.tap(called); await fillIn(hands); await heading(hands, "Hold"); },
    "Feel the sample": async (called) => { await at.tap(called); await hands.clickText(".choice label", "Hard"); await act(hands, "Record the sample"); await heading(hands, "Hold"); },
    "Ask the foreman": (called) => waive(hands, "The hose must be out before the street opens.", called),
    Release: async (called) => { await held(hands, called); await stage(hands, "Deflation", PHOTO); },
    "Say where it came to rest": async (called) => { await verification(hands, PHOTO, called); await rest(hands); await verification(hands, PHOTO); },
    "To the foreman’s review": async (called) => { await act(hands, called, false); await page.waitForFunction(() => location.hash.endsWith("/review")); },
    "n min ago": () => {},
    "Correct a value": async (called) => {
      await at.tap(called);
      await at.tap("Bare end, front");
      await hands.type("#corrected-value", "199");
      await hands.type("#correct-why", "Read at the wrong edge.");
      await act(hands, "Record the correction");
      await page.getByText("199 mm").first().waitFor();
    },
    Sign: () => {},
    "Send this repair": async (called) => {
      await act(hands, "Back", false);
      await at.tap(called);
      await at.saved("job", () => act(hands, "Make the file"));
      await act(hands, "Back to the repair", false);
    },
  }, (called) => act(hands, called));
  await at.close();
});

test("a late tap, another phone, an emergency, the diagnostics file and a rehearsal go by the guide", { timeout: 300_000 }, async () => {
  const at = await person(phone.core, PHONE);
  const second = await person(other, PHONE);
  await asker(other.address).ask({ do: "take_examples" });
  for (const [{ page }, id] of [[at, TECHNICIAN.id], [second, "ekdal"]]) { await page.evaluate((picked) => localStorage.setItem("mendline.person", picked), id); await page.reload(); }
  const api = phone.api;
  const walk = await (await new Walk(api).open({ number: "R-30" })).plan();
  const joined = await (await (await new Walk(api).open({ number: "R-31" })).plan()).to("wet_out");
  await joined.go();
  await walk.to("hold");

  assert.ok(labelsOf("technician.md", "In the street").includes("n min ago"));
  await at.hands.go(`#/repair/${joined.id}`);
  await at.tap(/\d\smin ago/);
  for (let n = 0; n < 3; n += 1) await at.page.locator("[data-step]").last().click();
  await at.settled();
  await held(at.hands, "Parts joined at");
  await heading(at.hands, "Wet-out");
  const { repair } = await api.ask({ do: "repair", repair: joined.id });
  assert.equal(Math.round(repair.attempts[0].joined.ago_ms / 60_000), 3);

  await at.hands.go(`#/repair/${walk.id}`);
  let sent = 0;
  await follow(labelsOf("technician.md", "When something goes wrong"), {
    Stop: async (called) => { await heading(at.hands, "Hold"); await at.tap(called); await heading(at.hands, called); },
    "Emergency release": async (called) => {
      await at.page.getByRole("button", { name: called }).first().waitFor();
      await at.tap("Back to the hold");
      await heading(at.hands, "Hold");
    },
    "Hand it over": async (called) => { await act(at.hands, called); await heading(at.hands, "Handed over"); },
    "Send this repair": async (called) => { sent += 1; await at.tap(called); await at.saved("hold", () => act(at.hands, "Make the file")); await act(at.hands, "Back to the repair", false); },
    "Take repairs in": async (called) => { await second.home(); await second.tap(called); await second.choose("input[type=file]", files.hold); await act(second.hands, "Take the file in"); await second.tap("R-30"); },
    "Take the hold over": async (called) => {
      await heading(second.hands, called);
      await at.page.setViewportSize({ ...PHONE, height: 2_000 });
      const code = await at.page.locator("svg.code").screenshot({ type: "png" });
      await second.page.setInputFiles("#by-code-camera", { name: "code.png", mimeType: "image/png", buffer: code });
      await act(second.hands, "Take it over");
      await heading(second.hands, "Hold");
      await at.page.setViewportSize(PHONE);
    },
    "Follow a hold by its code": async (called) => { await second.home(); await second.tap(called); await heading(second.hands, called); await second.hands.go(`#/repair/${walk.id}`); },
    Help: async (called) => { await at.home(); await at.tap(called); },
    "Save the diagnostics file": (called) => at.saved("diagnostics", () => at.tap(called)),
  }, at.tap);
  assert.equal(sent, 1);
  // Any minute, no PIN: on the phone that has the hold now.
  await second.tap("Stop");
  await held(second.hands, "Emergency release");
  await heading(second.hands, "Deflation");

  await follow(labelsOf("technician.md", "Practise"), { Today: at.home }, at.tap);
  await act(at.hands, "Begin the rehearsal");
  await at.page.locator(".rehearsal-word").waitFor();
  await Promise.all([at.close(), second.close()]);
});

test("the foreman reviews, signs with a key, issues, voids and issues again by the guide", { timeout: 300_000 }, async () => {
  const at = await person(office, LAPTOP);
  const { hands, page } = at;
  await page.evaluate((id) => localStorage.setItem("mendline.person", id), FOREMAN.id);
  await page.reload();
  await follow(labelsOf("foreman.md", "Between phone and office"), {
    "Send this repair": () => assert.ok(files.job),
    "Send repairs": (called) => page.getByRole("link", { name: called }).waitFor(),
    "Take repairs in": async (called) => { await at.tap(called); await at.choose("input[type=file]", files.job); await act(hands, "Take the file in"); await at.titled("Taken in"); },
  }, at.tap);

  await at.home();
  await at.tap("MH 031 to MH 032");
  await follow(labelsOf("foreman.md", "The review"), {
    "To the foreman’s review": async (called) => { await act(hands, called, false); await page.waitForFunction(() => location.hash.endsWith("/review")); },
    Accept: async (called) => {
      for (let says = await label(hands); new RegExp(`^${called} \\d+$`).test(says); says = await label(hands)) {
        await hands.type(`#${await page.locator(".deck > .act").getAttribute("form")}-why`, "Looked at on camera; no lift, no fold.");
        await act(hands, says);
      }
    },
    "Don’t accept": () => {},
    "Accept the repair": async (called) => { await act(hands, called); await heading(hands, "Sign"); },
  }, at.tap);
  const here = await page.evaluate(() => location.hash);

  const keyed = async ({ name, pin }, called) => {
    await page.locator(".choice label b", { hasText: name }).click();
    await page.getByRole("heading", { name: `Key of ${name}` }).waitFor();
    await page.locator("#make-pin").pressSequentially(pin);
    await at.tap(called);
    await page.getByText("compare it on the telephone").waitFor();
  };
  const both = async (sealing) => {
    for (const { name, pin } of [TECHNICIAN, FOREMAN]) {
      await at.taps(name);
      await hands.until(async () => (await page.locator("#seal-pin").count()) === 1, `${name} signs with a key`);
      assert.equal(await page.locator("#seal-pin").inputValue(), "", "a PIN is left for who comes next");
      await hands.type("#seal-pin", pin);
      await act(hands, sealing);
    }
    await page.getByText("Both keys have signed.").waitFor();
  };
  const drawn = async () => {
    for (const [{ name, pin }, role] of [[TECHNICIAN, "Technician"], [FOREMAN, "Foreman"]]) { await at.taps(name); await sign(hands, role, pin); }
  };
  await follow(labelsOf("foreman.md", "Sign and issue"), {
    Today: at.home,
    "Make a key": async (called) => { await keyed(TECHNICIAN, called); await keyed(FOREMAN, called); },
    "Hand out the certificate": async (called) => {
      for (const { id, name } of [TECHNICIAN, FOREMAN]) { await page.locator(".choice label b", { hasText: name }).click(); await page.getByRole("heading", { name: `Key of ${name}` }).waitFor(); await at.saved(id, () => at.tap(called)); }
      await hands.go(here);
    },
    Sign: async (called) => { await heading(hands, called); await drawn(); },
    "Send this repair": () => {},
    "Sign with my key": both,
    "Save the certificate": (called) => at.saved("first", () => at.tap(called)),
    "Save the record": (called) => at.saved("record", () => at.tap(called)),
    "Void this certificate": async (called) => {
      await at.tap(called);
      await page.locator("#void-why").pressSequentially("The order number was wrong.");
      await page.locator("#void-pin").pressSequentially(FOREMAN.pin);
      await at.tap(/^Void \S+\d/);
      await heading(hands, "Sign");
      await drawn();
      await act(hands, "Issue the certificate");
      await both("Sign with my key");
      await page.getByText(/takes the place of|supersedes/i).first().waitFor();
      await at.saved("second", () => at.tap("Save the certificate"));
    },
    "Numbers of this device": async (called) => { await at.tap(called); await page.getByText("The order number was wrong.").first().waitFor(); },
  }, (called) => (["People"].includes(called) ? at.tap(called) : act(hands, called)));
  await at.close();
});

test("the owner checks the certificate by the guide: on the screen, on the command line, and by another reader", { timeout: 120_000 }, async () => {
  const at = await person(owner, LAPTOP);
  await follow(labelsOf("owner.md", "Check it"), {
    "Check it": async (called) => { await at.choose("#record", files.second); await act(at.hands, called, false); await at.page.locator(".verdict").waitFor(); },
    "Compare them": async (called) => { await at.choose("#original-files", PHOTO); await at.tap(called); await at.page.getByText(/same|byte for byte/).first().waitFor(); },
  }, at.tap);
  assert.match(await at.page.locator(".verdict").innerText(), /Unchanged since it was written/);
  await at.close();

  const run = (...words) => spawnSync(join(BUILT, "mendline"), ["verify", ...words], { encoding: "utf8" });
  const trust = [TECHNICIAN, FOREMAN].flatMap(({ id }) => ["--trust", files[id]]);
  const trusted = run(files.second, ...trust);
  assert.equal(trusted.status, 0, trusted.stdout + trusted.stderr);
  assert.match(trusted.stdout, /with keys that you trust/);
  assert.match(run(files.first, "--beside", files.second).stdout, /Superseded by/);
  assert.equal(run(files.record).status, 0);
  // Source: pdfsig of poppler-utils.
  const { stdout } = spawnSync("pdfsig", ["-nocert", files.second], { encoding: "utf8" });
  assert.equal(stdout.match(/Signature is Valid/g)?.length, 2, stdout);
});
