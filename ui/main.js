// Start, route, one submit listener, one click listener. The only file that touches the document outside a screen.

import { ask, phoneClock, watchPosition } from "./bridge.js";
import { createAnnouncer } from "./device/announce.js";
import { createBattery } from "./device/battery.js";
import { createCues } from "./device/cue.js";
import { createLight } from "./device/light.js";
import { createNotices } from "./device/notice.js";
import { createChosen, createPhotos, marked } from "./device/photos.js";
import { compare } from "./device/originals.js";
import { bring, pieces } from "./device/pieces.js";
import { createPosition } from "./device/position.js";
import { createWake } from "./device/wake.js";
import { saveFile, saveLarge } from "./device/save.js";
import { chosenFile, controlsOf, merged, readForm, tidied } from "./form.js";
import { asTyped, hear } from "./heard.js";
import { date, typed, useLanguage, useUnits } from "./format.js";
import { patch } from "./patch.js";
import { banner } from "./parts/banner.js";
import { html } from "./html.js";
import { filled, words } from "./label.js";
import { createReminders, runs } from "./reminders.js";
import { route } from "./route.js";
import { onPaper } from "./on-paper.js";
import { SCREENS, fetchAll, fetchScreen } from "./screens.js";
import { createStore } from "./store.js";
import { language, nearest, say, speak } from "./text/say.js";
import { listenForSteps } from "./touch/entry.js";
import { listenForGhosts } from "./touch/ghost.js";
import { listenForHolds } from "./touch/hold.js";
import { listenForPads } from "./touch/pad.js";
import { parted } from "./parts/pin.js";

const LOOK_AGAIN_MS = 15_000;
const SILENT_AGAIN_MS = 2_000;
/** What there is to see in a rehearsal that is played changes fast, and the code of a hand-over shows this moment. */
const CLOSELY_AGAIN_MS = 1_500;
const LIVE_REST_MS = 300;
/** Where an engine does not say when it is idle (WebKit). */
const IDLE_MS = 100;

const root = document.getElementById("root");
const later = (ms, run) => setTimeout(run, ms);
const monotonic = () => performance.now();
const announce = createAnnouncer(document.getElementById("said"), later);
const cues = createCues(window);
const light = createLight(document.documentElement, localStorage);
const wake = createWake(document, navigator);
const battery = createBattery(navigator);
const notices = createNotices(window, document, phoneClock());
const reminders = createReminders({ play: cues.play, speak: (says) => cues.speak(says), notice: (says) => notices.give(say("app.name"), says) });
const ghosts = listenForGhosts(root, { later, stop: clearTimeout.bind(window) });
const person = () => localStorage.getItem("mendline.person");
const position = createPosition({ watch: watchPosition, clock: () => Date.now() });

const store = createStore({
  ask, monotonic, later, wall: () => Date.now(),
  storage: localStorage,
  newId: () => crypto.randomUUID(),
  facts: () => ({ ...written(), person: person(), reader: reader(), position: position.fact(), battery_pct: battery.percent(), ...(Object.keys(typing).length > 0 && { typed: typing }) }),
});

// What is keyed in from paper happened when the sheet says. Only a repair has a sheet.
function written() {
  const at = store.state.route?.name === "repair" ? onPaper(store.draft("paper")) : undefined;
  return at === undefined ? {} : { on_paper_ms: at };
}

// In which language and units a person reads and types; what stands in the fields goes with the next request as it was typed.
// What was picked before anybody was, holds for everybody who has not picked.
const pickedOf = (what) => localStorage.getItem(`mendline.${what}.${person()}`) ?? localStorage.getItem(`mendline.${what}.null`);
const unitsOf = () => pickedOf("units") ?? "si";
const languageOf = () => pickedOf("language") ?? nearest(navigator.languages ?? []);
const reader = () => ({ language: languageOf(), units: unitsOf() });
let typing = {};
const sure = {};
let heard = null;

/** Speaks the words of who reads: those that were kept at once, those of the core when they come. */
async function readIn() {
  useUnits(unitsOf());
  const wanted = languageOf();
  if (heard === wanted) return;
  if (!worded) speakKept(wanted);
  // Kept words do for the first screen. Those of the core, which may be newer, are asked for when it stands.
  if (worded && language() === wanted && !stands) return;
  const answer = (await store.ask({ do: "words" }))?.ok;
  if (answer?.kind !== "words" || answer.language !== languageOf()) return;
  heard = wanted;
  const fresh = JSON.stringify(answer);
  if (fresh === localStorage.getItem("mendline.words")) return;
  speakAs(answer);
  store.redraw();
  localStorage.setItem("mendline.words", fresh);
}

function speakKept(wanted) {
  const kept = JSON.parse(localStorage.getItem("mendline.words") ?? "null");
  if (kept?.language === wanted) speakAs(kept);
}

let worded = false;
function speakAs(words) {
  speak(words);
  worded = true;
  useLanguage(words.language);
  document.documentElement.lang = words.language;
}

const fetchPhotos = createPhotos(root, async (sha256, px) => (await ask({ id: crypto.randomUUID(), request: { do: "photo", sha256, longest_px: px } })).ok);
const chosen = createChosen();

// The route whose screen could not be fetched.
let unfetched = null;

/** Fetches the screen of a route and draws it when it is here, or says that it did not come. */
async function fetchShown(name) {
  unfetched = await fetchScreen(name).then(() => null, () => name);
  store.redraw();
}

// When the first screen stands, the words of the core and then all other screens are fetched while nothing else is to be done, so
// that a tap need not wait for them. A screen that does not come is fetched again, and said to be missing, when it is opened.
const whenIdle = () => new Promise((go) => (globalThis.requestIdleCallback ?? ((run) => later(IDLE_MS, run)))(go));
let stands = false;
async function fetchRest() {
  stands = true;
  await whenIdle();
  await readIn();
  await fetchAll(whenIdle).catch(() => {});
}

let arriving = true;
let headed = null;
let drawn = { second: null, wall: Date.now(), since: monotonic(), looked: 0 };

function show() {
  const { name, params } = store.state.route;
  const { asks, tells = false } = SCREENS[name];
  const away = unfetched === name;
  const screen = away ? SCREENS.broken.screen : SCREENS[name].screen;
  const ready = worded && screen && (away || !asks || store.state.answer !== null);
  const shown = ready ? screen : SCREENS.opening.screen;
  const { answer, refusal, problems, error } = store.state;
  const view = { ...answer, params, now: store.now(), light: light.now(), person: person(), set_up: localStorage.getItem("mendline.setup"), units: unitsOf(), drafts: store.drafts(), refusal, problems, error, away, came, moving, chosen: chosen.now() };
  reminders.take(answer);
  if (answer) wake.keep(runs(answer));
  const { title, body } = drawnOf(shown, view);
  // A screen of a repair says itself what was refused, beside the way out.
  patch(root, html`${banner(tells ? { ...store.state, refusal: null } : store.state)}${body}`);
  document.title = `${title} · ${say("app.name")}`;
  fetchPhotos();
  ghosts.shown();
  // The next stage begins at its top like a new screen, though its address is the same.
  const head = `${title} ${view.next?.act === "join"}`;
  if (ready && name === "repair" && !view.params.sub && head !== headed) arriving = true;
  headed = head;
  if (ready && arriving) arrived();
  focusNew();
}

// A screen with a fault must not take the clocks and the way back with it.
function drawnOf(screen, view) {
  try { return { title: screen.title(view), body: screen.render(view) }; } catch (problem) {
    console.error(problem);
    return { title: SCREENS.broken.screen.title(view), body: SCREENS.broken.screen.render(view) };
  }
}

// On arrival the heading takes the focus, so that a reader begins there.
function arrived() {
  arriving = false;
  if (!stands) fetchRest();
  scrollTo(0, 0);
  root.querySelector("h1")?.focus({ preventScroll: true });
  // What was typed before and not yet sent is asked again.
  for (const form of root.querySelectorAll("form[data-live]")) if (!asked[form.id] && Object.keys(store.draft(form.id)).length > 0) askAgain(form);
}

let focused = null;
function focusNew() {
  const wanted = root.querySelector("[data-focus]");
  if (wanted && wanted.textContent !== focused) wanted.focus();
  focused = wanted?.textContent ?? null;
}

// Where the person came from, so that a side way leads back.
let [came, here] = ["#/", location.hash || "#/"];

function arrive() {
  if (location.hash !== here) [came, here] = [here, location.hash];
  chosen.drop();
  arriving = true;
  const before = store.state.route;
  const next = route(location.hash);
  unfetched = null;
  store.go(next, before?.name === next.name && before.params.id === next.params.id && next.name === "repair");
  // A set-up that is left is taken up at the same question.
  if (next.name === "setup" && next.params.step) localStorage.setItem("mendline.setup", next.params.step);
  const { live = false } = SCREENS[store.state.route.name];
  position.follow(live);
  return look();
}

// Whoever opens the program while one clock runs and no other, wants that one. A hold that another phone has is not here.
async function leadBack(looked) {
  const begun = location.hash;
  await looked;
  const { answer: today } = store.state;
  const { mixed = [], holding = [], followed = [] } = today ?? {};
  const live = [...[...mixed, ...holding.filter(({ handed }) => !handed?.away)].map(({ summary }) => `#/repair/${summary.repair}`), ...followed.map(({ repair }) => `#/follow/${repair.id}`)];
  // Nobody is led away who has gone somewhere meanwhile.
  if (live.length === 1 && location.hash === begun && !touched) [location.hash] = live;
}

function look() {
  const { name, params } = store.state.route;
  drawn.looked = monotonic();
  if (!SCREENS[name].screen) fetchShown(name);
  const looked = SCREENS[name].asks && store.look(SCREENS[name].asks(params, store.draft, asked));
  readIn();
  return looked;
}

// What writes nothing needs no outbox, and is not said to be recorded.
const READS = ["diagnostics", "hand_out_sheets", "certificate", "record", "check_record", "person_certificate", "pack", "back_up"];

// How far a large file has come, while it moves.
let moving = null;
const move = (done, of) => { moving = { done, of }; store.redraw(); };
const moved = () => { moving = null; store.redraw(); };

/** Saves a file that the core made, piece by piece. */
async function saveMade(made) {
  try {
    const { says, saved } = await saveLarge(made.name, () => pieces(store.ask, made, move));
    announce(says);
    if (saved && made.name.endsWith(".age")) await store.ask({ do: "note_backup", name: made.name, bytes: made.bytes });
  } catch { cues.play("warn"); announce(say("send.broke_off")); } finally { moved(); }
  return true;
}

/** Brings the file of a form to the core, then asks what is to be done with it. */
async function sendLarge(form, request, secrets) {
  const input = form.querySelector("input[type=file]");
  const [picked] = input.files;
  if (!picked) return store.fault([{ field: input.id, text: say("problem.file") }]);
  store.fault([]);
  const whole = await bring(store.ask, picked, move).finally(moved);
  if (!whole) { cues.play("warn"); if (!store.state.error) store.fault([{ field: input.id, text: say("take.stopped") }]); return false; }
  const response = await store.ask({ ...request, name: picked.name, of: picked.size }, secrets);
  if (!response?.ok) { cues.play("warn"); return false; }
  store.forget(form.id);
  cues.play("done");
  store.show(response.ok);
  arriving = true;
  store.redraw();
  return true;
}

/** Brings the photos of a form to the core one by one, and shows what it found. */
async function sendOriginals(form, { head }) {
  const input = form.querySelector("input[type=file]");
  if (input.files.length === 0) return store.fault([{ field: input.id, text: say("problem.file") }]);
  store.fault([]);
  const found = await compare(store.ask, head, [...input.files], move).finally(moved);
  if (!found) { cues.play("warn"); if (!store.state.error) store.fault([{ field: input.id, text: say("take.stopped") }]); return false; }
  cues.play("done");
  store.show(found);
  return true;
}

/** Sends what a control or a form asks for, and goes on when it was recorded. Returns whether it was. */
async function send(request, { then, form, stay = false, secrets } = {}) {
  if (request.do === "piece") return saveMade(request);
  if (wantsName(request) && askWho(() => send(request, { then, form, stay, secrets }))) return false;
  store.fault([]);
  const scope = store.scope();
  const begun = location.hash;
  if (request.command?.command === "second_go") notices.allow();
  const response = await (READS.includes(request.do) ? store.ask(request, secrets) : store.send(request, secrets));
  if (!response?.ok) { cues.play("warn"); return false; }
  if (form) { store.forget(form, scope); forgetSecrets(form); chosen.drop(); }
  // Who names the first person of a device is that person.
  if (form === "setup-person") localStorage.setItem("mendline.person", request.document.sheet.id);
  if (request.do === "accept_plan") { store.forget(`plan-${request.repair}`, scope); delete asked[`plan-${request.repair}`]; }
  if (request.command?.command === "report") store.forget(`ago-${request.command.happening.what}`, scope);
  cues.play(response.ok.trouble && request.command?.command === "report" ? "alarm" : "done");
  if (response.ok.kind === "file") { announce(await saveFile(response.ok)); return true; }
  if (response.ok.kind === "made") { store.show(response.ok); arriving = true; store.redraw(); return saveMade(response.ok); }
  if (response.ok.kind === "checked") { store.show(response.ok); return true; }
  announce(say(response.ok.kind === "followed" ? "followed.title" : "recorded"));
  if (stay || scope === store.scope()) takeShown(response.ok);
  if (stay) return true;
  if (form?.startsWith("task-")) toTask();
  // A repair that was just opened has an id only now.
  const next = then?.replace("{repair}", response.ok.repair?.id);
  // Nobody is led away who has gone somewhere meanwhile.
  if (next && next !== begun && location.hash === begun) location.hash = next;
  else await look();
  return true;
}

// The task that the act names comes into sight.
function toTask() {
  scrollTo(0, 0);
  const form = document.getElementById(root.querySelector(".deck > .act")?.getAttribute("form"));
  (form?.closest("li") ?? form)?.scrollIntoView({ block: "nearest" });
}

// A PIN that was used is not left for whoever has the device next.
function forgetSecrets(form) {
  for (const field of document.getElementById(form)?.querySelectorAll("input[type=password]") ?? []) field.value = "";
}

// What came of a tap is shown at once, if the screen still asks for it.
function takeShown(ok) {
  const { name, params } = store.state.route;
  if (name === "repair" && ok.kind === "repair" && ok.repair.id === params.id) store.show(ok);
}

async function submit(form, { stay } = {}) {
  const raw = controlsOf(form);
  const heard = await hear(raw, store.ask, sure);
  if (heard.problems.length > 0) return store.fault(heard.problems);
  const { fields: all, problems } = readForm(heard.controls);
  if (problems.length > 0) return store.fault(problems);
  const { fields, secrets } = parted(all);
  const whole = merged(JSON.parse(form.dataset.request), fields);
  const request = form.dataset.tidy ? tidied(whole) : whole;
  if (form.dataset.live) { asked[form.id] = fields; return look(); }
  const options = { then: form.dataset.then, form: form.id, stay, secrets };
  if (request.copy_of) return sendMarked(form, request);
  if (request.do === "check_original") return sendOriginals(form, request);
  if (form.dataset.large) return sendLarge(form, request, secrets);
  typing = asTyped(raw);
  const sent = form.querySelector("input[type=file]") ? null : send(request, options);
  typing = {};
  if (sent) return sent;
  const file = await chosenFile(form);
  if (!file) return store.fault([{ field: form.querySelector("input[type=file]").id, text: say(form.querySelector("[capture]") ? "problem.photo" : "problem.file") }]);
  if (request.do === "read_label") return readLabel(file.bytes, request.fills, form.dataset.then);
  const named = form.querySelector("[data-filename]") ? { name: file.name } : {};
  // How long ago the picture was taken counts where it shows a clock.
  const aged = ["take_over", "follow"].includes(request.do) ? { age_ms: Math.max(0, Math.round(Date.now() - file.taken_ms)) } : {};
  return send({ ...request, ...named, ...aged, [file.field]: file.bytes }, options);
}

// Several forms by one act, in their order; what can't be sent stays and says why.
async function submitAll(ids) {
  for (const id of ids) {
    const form = document.getElementById(id);
    if (form && !(await submit(form, { stay: true }))) return;
  }
  await look();
}

// What is asked wants a name, once; a report never waits for one.
const REPORTS = ["report", "end_attempt"];
const NAMED = ["tell", "keep_photo", "accept_plan", "issue", "take_over"];
const wantsName = ({ do: what, command }) => !person() && NAMED.includes(what) && !REPORTS.includes(command?.command);

let whoWaits = null;
let whoAsked = false;
function askWho(next) {
  const dialog = document.getElementById("who");
  if (!dialog || whoAsked) return false;
  [whoWaits, whoAsked] = [next, true];
  dialog.showModal();
  return true;
}

root.addEventListener("close", ({ target }) => {
  if (target.id !== "who") return;
  const picked = target.returnValue && target.returnValue !== "close";
  if (picked) localStorage.setItem("mendline.person", target.returnValue);
  const next = whoWaits;
  whoWaits = null;
  store.redraw();
  if (picked) next?.();
}, true);

/** Sends a copy of the photo with the lines that were drawn over it. */
function sendMarked(form, { strokes, ...request }) {
  const pad = form.querySelector("canvas[data-pad]");
  const image = form.querySelector("img[data-photo]");
  if (strokes.length === 0 || !image.naturalWidth) return store.fault([{ text: say(image.naturalWidth ? "mark.nothing" : "mark.not_there") }]);
  return send({ ...request, label: request.label ?? image.alt, bytes: marked(image, strokes, getComputedStyle(pad).color) }, { then: form.dataset.then, form: form.id });
}

/** Fills the fields of a task from a label, and keeps the photo of it. */
async function readLabel(bytes, { form, repair, called, names }, then) {
  store.fault([]);
  const response = await store.ask({ do: "read_label", bytes });
  if (!response?.ok) { cues.play("warn"); return false; }
  for (const [name, value] of filled(response.ok, names)) store.type(form, name, value);
  announce(words(response.ok));
  return send({ do: "keep_photo", repair, label: say("label.photo", { called, says: words(response.ok) }), bytes }, { then });
}

function keepTyped(control) {
  if (control.name === "light") light.set(control.value);
  else if (control.name === "person") { localStorage.setItem("mendline.person", control.value); look(); }
  else if (control.name === "units") { localStorage.setItem(`mendline.units.${person()}`, control.value); look(); }
  else if (control.name === "language") { localStorage.setItem(`mendline.language.${person()}`, control.value); look(); }
  else if (control.form?.id && control.name && control.type !== "file" && control.type !== "password") store.type(control.form.id, control.name, valueOf(control));
  if (control.type === "file" && control.accept === "image/*") chosen.take(control);
  store.redraw();
  // A label that is not read leaves nothing behind, so its picture needs no second tap.
  if (control.type === "file" && control.files.length > 0 && JSON.parse(control.form.dataset.request ?? "{}").do === "read_label") submit(control.form);
  if (control.form?.dataset.live) askAgain(control.form);
}

// A form that computes asks the core again when the fingers rest. Nothing is written.
const asked = {};
let resting = null;
function askAgain(form) {
  clearTimeout(resting?.timer);
  const run = async () => {
    resting = null;
    const heard = await hear(controlsOf(form), store.ask, sure);
    if (heard.problems.length > 0) return store.fault(heard.problems);
    const { fields, problems } = readForm(heard.controls);
    if (problems.length > 0) return store.fault(problems);
    store.fault([]);
    asked[form.id] = fields;
    return look();
  };
  resting = { run, timer: setTimeout(run, LIVE_REST_MS) };
}

// Nobody accepts what was computed from something else than what stands in the fields.
async function askNow() {
  clearTimeout(resting.timer);
  await resting.run();
  announce(say("plan.computed"));
}

function valueOf(control) {
  // In other units than the recorded ones a number is kept with its unit, so that it means the same after a switch.
  if (control.dataset.plus !== undefined && typed(control.value) !== null) return `${control.value} ${control.dataset.unit}`;
  if (control.type !== "checkbox") return control.value;
  return [...control.form.elements].filter((other) => other.name === control.name && other.checked).map(({ value }) => value);
}

root.addEventListener("submit", (event) => {
  if (event.target.method === "dialog") return;
  event.preventDefault();
  submit(event.target);
});

root.addEventListener("click", (event) => {
  const control = event.target.closest("[data-request], [data-opens], [data-jump], [data-sends], [data-print], [data-again], [data-means]");
  if (!control || control.dataset.hold || control.nodeName === "FORM") return;
  if (control.dataset.means) meant(control.dataset);
  else if (control.dataset.jump) { event.preventDefault(); jump(control.dataset.jump); }
  else if (control.dataset.print) print();
  else if (control.dataset.again) look();
  else if (control.dataset.opens) document.getElementById(control.dataset.opens)?.showModal();
  else if (control.dataset.sends) submitAll(control.dataset.sends.split(" "));
  else if (resting !== null) askNow();
  else send(JSON.parse(control.dataset.request), { then: control.dataset.then });
});

// A field takes what was meant; the person sends it again.
function meant({ means, value }) {
  const input = document.getElementById(means);
  if (!input) return;
  sure[means] = value;
  input.value = value;
  keepTyped(input);
  store.fault([]);
  jump(means);
}

// In the middle of the screen, so that the deck does not lie on it.
function jump(id) {
  const to = document.getElementById(id);
  to?.scrollIntoView({ block: "center" });
  to?.focus({ preventScroll: true });
}

root.addEventListener("toggle", fetchPhotos, true);

root.addEventListener("input", (event) => keepTyped(event.target));

listenForSteps(root, {
  later, stop: (handle) => clearTimeout(handle),
  changed: (input) => { keepTyped(input); cues.play("tap"); announce(say("step.value", { value: input.value, unit: document.getElementById(`${input.id}-unit`)?.textContent ?? "" })); },
});

listenForPads(root, (pen) => announce(say(`pad.${pen}`)));

const HELD = { held: "hold.started", armed: "hold.press_again", early: "hold.let_go", lapsed: "hold.not_confirmed" };
listenForHolds(root, {
  monotonic, frame: requestAnimationFrame.bind(window), stop: cancelAnimationFrame.bind(window),
  confirmed: (button) => (button.form ? submit(button.form) : send(JSON.parse(button.dataset.request), { then: button.dataset.then })),
  tell: (kind, label) => { announce(say(HELD[kind], { label })); if (kind === "held") cues.play("tap"); },
});

const played = () => Boolean(store.state.answer?.practice);
const closely = () => played() || Boolean(store.state.answer?.handed?.code);
const keyed = () => written().on_paper_ms !== undefined;

// Clocks run on the core's moment. When this device's clocks disagree, it slept or was set: the core is asked again.
setInterval(() => {
  const now = store.now();
  if (now && !keyed()) reminders.tick(now.at_ms);
  const second = Math.floor((now?.at_ms ?? Date.now()) / 1000);
  if (second === drawn.second) return;
  const jump = Math.abs(Date.now() - drawn.wall - (monotonic() - drawn.since));
  drawn = { ...drawn, second, wall: Date.now(), since: monotonic() };
  const seen = document.visibilityState === "visible";
  const wait = store.state.unreachable ? SILENT_AGAIN_MS : SCREENS[store.state.route.name].live ? (closely() ? CLOSELY_AGAIN_MS : LOOK_AGAIN_MS) : Infinity;
  if (jump > 1500 || (seen && monotonic() - drawn.looked > wait)) look();
  if (seen) store.redraw();
}, 200);

document.addEventListener("visibilitychange", () => {
  const now = store.now();
  if (document.visibilityState === "visible") { notices.wake(); look(); store.flush(); }
  // Nobody is woken by a rehearsal, nor by what stands on paper.
  else if (now && !played() && !keyed()) notices.sleep(say("app.name"), reminders.coming(now.at_ms), Date.now() - now.at_ms);
});

// A device is silent until somebody has touched the page.
let touched = false;
for (const touch of ["pointerdown", "keydown"]) root.addEventListener(touch, () => { touched = true; cues.ready(); }, { once: true });

store.subscribe(show);
addEventListener("hashchange", arrive);
const atFirst = ["", "#", "#/"].includes(location.hash);
const looked = arrive();
// An engine reads its tables when it writes the first date, which takes as long as a screen: done while the core answers.
date(0, 0);
if (atFirst) leadBack(looked);
store.flush();
// Wherever the program begins, it knows the clocks that run.
if (!SCREENS[store.state.route.name].live) store.ask({ do: "today" }).then((answer) => reminders.take(answer?.ok));
notices.wake();
