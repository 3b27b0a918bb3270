// The whole job, tapped through the screens from the first start to the certificate. `hands` is a browser or the window.

import assert from "node:assert/strict";

/** What the crew of the test writes into a field, by the last word of its name. */
const ENTRIES = {
  number: "CS-1014-1", how: "jetted twice", oxygen_permille: "20.9", flammable_pct: "0", hydrogen_sulfide_ppm: "0", carbon_monoxide_ppm: "2",
  least_um: "196.5", most_um: "199", gauge_pa: "0.5", held_ms: "5", drop_pa: "0", lot_a: "26-0811-A", lot_b: "26-0809-B", expires_a: "2031-02-11", expires_b: "2031-02-09",
  stored_least_mc: "10", stored_most_mc: "20", lot_patch: "GM-5512", resin_mc: "19.2", air_mc: "13.1", pipe_mc: "12.8", pct: "88", front_um: "198", rear_um: "202",
  mass_a_mg: "812", mass_b_mg: "406", mixed_ms: "190", hour: "5", height_um: "0", coupons: "1", what: "gloves and wipes", mass_g: "2", where_to: "Quillmere yard", plugs: "0", found: "nothing new",
};

/** Taps through the whole job. Returns the certificate's number as the last screen says it. */
export async function wholeJob(hands, inspection, photo) {
  await hands.click(".way[data-request]");
  await hands.go("#/people");
  await pick(hands, "Tomas Ekdal");
  await hands.go("#/intake");
  await hands.file("#inspection-file", inspection);
  await act(hands, "Take it in", false);
  await hands.clickText("a.way b", "MH 031 to MH 032");
  await heading(hands, "Which is the defect?");
  await hands.clickText(".choice label b", "Crack, lengthwise");
  await act(hands, "Take 1 as the defect");
  await heading(hands, "Plan");
  for (const [place, degrees] of [["resin", "19.2"], ["air", "13.1"], ["pipe", "12.8"]]) await hands.type(`#${place}_mc`, degrees);
  await act(hands, "Accept this plan");
  await heading(hands, "Planned");
  await act(hands, "Begin staging");
  await stage(hands, "Staging", photo);
  await act(hands, "Test push begins");
  await act(hands, "Mark is at the pipe mouth");
  await act(hands, "Packer is back and sound");
  await stage(hands, "Test push", photo);
  await stage(hands, "Sleeve change", photo);
  await heading(hands, "Go or no-go");
  for (const [place, degrees] of [["resin", "19.2"], ["air", "13.1"], ["pipe", "12.8"]]) await hands.type(`#${place}_mc`, degrees);
  await act(hands, "Ask for the go");
  await act(hands, "Go: ready to join");
  await held(hands, "Parts joined");
  await held(hands, "Target pressure reached");
  await holding(hands);
  await stage(hands, "Deflation", photo);
  await verification(hands, photo);
  await review(hands);
  await sign(hands, "Technician");
  await person(hands, "Ines Varga");
  await sign(hands, "Foreman");
  await act(hands, "Issue the certificate");
  await heading(hands, "Certificate");
  return hands.text(".act small");
}

/** Waits for the heading of a screen. */
export const heading = (hands, text) => hands.until(async () => (await hands.text("h1")) === text, `the heading ${text}`);
/** Returns what the act at the foot says. */
export const label = (hands) => hands.run(`return document.querySelector(".deck > .act b")?.textContent.trim() ?? ""`);

// What has just appeared takes no touch.
const settled = (hands) => hands.until(() => hands.run(`return document.querySelector("[data-fresh]") === null`), "the screen takes a touch");
async function tap(hands) { await settled(hands); await hands.click(".deck > .act"); }

/** Taps the act that says `text`. */
export async function act(hands, text, once = true) {
  await hands.until(async () => (await label(hands)).includes(text), `the act ${text}`);
  await tap(hands);
  if (once) await hands.until(async () => (await label(hands)) !== text, `${text} was recorded`);
}

/** Holds the act: what can't be undone takes two seconds. */
export async function held(hands, text) {
  await hands.until(async () => (await label(hands)).includes(text), `the held act ${text}`);
  await hands.hold(".deck > .act");
  await hands.until(async () => !(await label(hands)).includes(text), `${text} was recorded`);
}

const pick = (hands, name) => hands.clickText(".choice label b", name);

async function person(hands, name) {
  const here = await hands.run("return location.hash");
  await hands.go("#/people");
  await pick(hands, name);
  await hands.go(here);
}

/** Answers every task of a stage and takes its photos, until the act leads on. */
export async function stage(hands, name, photo) {
  await heading(hands, name);
  for (let taps = 0; taps < 60; taps += 1) {
    const what = await open(hands);
    if (what === "photo") await take(hands, photo);
    else if (what === "task") await answer(hands);
    else { await tap(hands); return; }
  }
  assert.fail(`${name} never ends`);
}

// Between two screens there is no act for a moment.
const open = (hands) => hands.until(() => hands.run(`const act = document.querySelector(".deck > .act");
  if (!act) return "";
  if (act.hash?.includes("/photo/")) return "photo";
  return act.getAttribute("form")?.startsWith("task-") ? "task" : "on";`), "an act");

async function take(hands, photo) {
  const before = await label(hands);
  await tap(hands);
  await heading(hands, "Photo");
  const kept = await hands.text(".lead");
  await hands.file("#photo-file", photo);
  await act(hands, "Keep the photo");
  await hands.until(async () => (await hands.text("h1")) !== "Photo", `${before}: ${kept} was kept`);
}

// The act names the form that it sends.
async function answer(hands) {
  const task = await hands.run(`return document.querySelector(".deck > .act").getAttribute("form")`);
  await fields(hands, task);
  await tap(hands);
  await hands.until(async () => (await hands.run(`return document.querySelector(".deck > .act")?.getAttribute("form")`)) !== task, `${task} was recorded; the screen says: ${await hands.text("body").then((text) => text.slice(0, 300))}`);
}

async function fields(hands, task) {
  const empty = await hands.run(`return [...document.querySelectorAll("#${task} :is(input, select)")].filter((one) => !["radio", "hidden", "datetime-local"].includes(one.type) && one.value === "")
    .map((one) => ({ id: one.id, name: one.name.split(".").at(-1), kind: one.type, options: one.options ? [...one.options].map((option) => option.value) : [] }));`);
  for (const { id, name, kind, options } of empty) {
    if (options.length > 0) await hands.choose(`#${id}`, options[1]);
    else if (ENTRIES[name] !== undefined) await hands.type(`#${id}`, ENTRIES[name], kind);
  }
  // A choice of two stands as a pair; the first answer is the one that goes on.
  const pairs = await hands.run(`return [...new Set([...document.querySelectorAll("#${task} input[type=radio]")].map((one) => one.name))].filter((name) => !document.querySelector("#${task} input[name='" + name + "']:checked"))`);
  for (const name of pairs) await hands.click(`#${task} label:has(input[name="${name}"])`);
}

async function holding(hands) {
  await heading(hands, "Hold");
  await act(hands, "Take a reading");
  await heading(hands, "Reading");
  for (const [id, value] of [["gauge_pa", "1.30"], ["pipe_mc", "12.8"], ["upstream_um", "0.35"]]) await hands.type(`#${id}`, value);
  await act(hands, "Record the three");
  await heading(hands, "Hold");
  await hands.clickText("a.way b", "Feel the sample");
  await hands.clickText(".choice label", "Hard");
  await act(hands, "Record the sample");
  await heading(hands, "Hold");
  await waive(hands, "The hose must be out before the street opens.");
  await held(hands, "Release");
}

/** Asks the foreman, who waives what stands in the way. */
export async function waive(hands, reason, called = "Ask the foreman") {
  await hands.clickText("button.way b", called);
  await hands.type("dialog[open] textarea", reason);
  // A touch on an act that has just appeared counts as a ghost.
  await new Promise((done) => setTimeout(done, 500));
  await hands.click("dialog[open] .act");
  await hands.until(async () => (await hands.run(`return document.querySelector("dialog[open]") === null`)), "the waiver was recorded");
}

/** Does what the verification asks for, until the act says something else or `stop`. */
export async function verification(hands, photo, stop) {
  await heading(hands, "Verification");
  for (let taps = 0; taps < 60; taps += 1) {
    const what = await open(hands);
    const says = await label(hands);
    if (says === stop) return;
    if (what === "photo") await take(hands, photo);
    else if (what === "task") await answer(hands);
    else if (says === "Say where it came to rest") await rest(hands);
    else if (says === "Open the lateral") await lateral(hands);
    else if (says === "Fill in what is open") await fill(hands);
    else return;
    await heading(hands, "Verification");
  }
}

async function fill(hands) {
  await tap(hands);
  await fillIn(hands);
}

/** Answers what was left while the resin ran: all of it on one screen, recorded by one act. */
export async function fillIn(hands) {
  await heading(hands, "Fill in now");
  const forms = await hands.run(`return [...document.querySelectorAll("form[id^=task-]")].map((form) => form.id)`);
  for (const form of forms) await fields(hands, form);
  await act(hands, "Record, marked late", false);
  await act(hands, "Back to the stage");
}

export async function rest(hands) {
  await tap(hands);
  await heading(hands, "Where it came to rest");
  await act(hands, "Record where it rests");
}

async function lateral(hands) {
  await tap(hands);
  await heading(hands, "Open the lateral");
  await hands.clickText(".pair label", "Yes");
  await act(hands, "Record the opening");
}

async function review(hands) {
  await person(hands, "Ines Varga");
  await act(hands, "To the foreman’s review");
  await hands.until(async () => /^Accept/.test(await label(hands)), "the review");
  for (let says = await label(hands); /^Accept \d+$/.test(says); says = await label(hands)) {
    const waiver = await hands.run(`return document.querySelector(".deck > .act").getAttribute("form")`);
    await hands.type(`#${waiver}-why`, "Looked at on camera; no lift, no fold.");
    await act(hands, says);
  }
  await act(hands, "Accept the repair");
  await heading(hands, "Sign");
  await person(hands, "Tomas Ekdal");
}

/** Draws a line and signs, with the PIN of the key where one is asked for. */
export async function sign(hands, role, pin) {
  await heading(hands, "Sign");
  await hands.until(async () => (await hands.text("#pad")).startsWith(role), `${role} signs`);
  await hands.draw("canvas.pad", [[100, 500], [300, 200], [450, 750], [650, 300], [900, 600]]);
  if (pin) await hands.type("#sign-pin", pin);
  await act(hands, "Sign", false);
  await hands.until(async () => !(await hands.run(`return document.querySelector("#pad")?.textContent ?? ""`)).startsWith(role), `${role} has signed`);
}
