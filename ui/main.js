// Start: goes where the address leads, shows it, and keeps the clock. What hands do comes with `hands.js`.

import { ask } from "./bridge.js";
import { createLight } from "./device/light.js";
import { createDrawing } from "./drawing.js";
import { createWords, person, reader, unitsOf } from "./reader.js";
import { route } from "./route.js";
import { SCREENS, fetchAll, fetchScreen } from "./screens.js";
import { createStore } from "./store.js";

const LOOK_AGAIN_MS = 15_000;
const SILENT_AGAIN_MS = 2_000;
/** What there is to see in a rehearsal that is played changes fast, and the code of a hand-over shows this moment. */
const CLOSELY_AGAIN_MS = 1_500;
/** Where an engine does not say when it is idle (WebKit). */
const IDLE_MS = 100;

const root = document.getElementById("root");
const later = (ms, run) => setTimeout(run, ms);
const monotonic = () => performance.now();
const light = createLight(document.documentElement, localStorage);
let hands = null;

const store = createStore({
  ask, monotonic, later, wall: () => Date.now(),
  storage: localStorage,
  newId: () => crypto.randomUUID(),
  facts: () => ({ person: person(), reader: reader(), position: { kind: "absent", why: "not_asked" }, ...hands?.facts() }),
});
const words = createWords({ ask: store.ask, changed: store.redraw });
const drawing = createDrawing({
  root, store, words: words.here, usable: (name) => !wantsHands(name),
  more: () => ({ light: light.now(), person: person(), set_up: localStorage.getItem("mendline.setup"), units: unitsOf(), came, ...hands?.told() }),
  drawn: (answer) => hands?.drawn(answer),
  stands() {
    if (!stands) fetchRest();
    hands?.stood();
  },
});

// Only the first screen does without hands: it has links, and little to tap.
const wantsHands = (name) => !hands && name !== "today";

// What is tapped before the hands are here is done when they are.
let touched = false;
const early = [];
for (const kind of ["pointerdown", "keydown"]) root.addEventListener(kind, () => { touched = true; }, { once: true });
for (const kind of ["submit", "click", "input"]) {
  root.addEventListener(kind, (event) => {
    if (hands) return;
    if (event.target.closest("[data-again]")) { look(); return; }
    if (kind === "submit" && event.target.method !== "dialog") event.preventDefault();
    early.push(event);
  });
}

// One fetch, however many wait for it; one that fails is tried again.
let coming = null;
const fetchHands = () => (coming ??= import("./hands.js").then(takeHands, (why) => { coming = null; throw why; }));

function takeHands({ createHands }) {
  hands = createHands({ root, store, look, arrive: drawing.arrive, light, touched });
  hands.went(SCREENS[store.state.route.name].live ?? false);
  early.splice(0).forEach(hands.hear);
  hands.drawn(store.state.answer);
}

// The route whose screen could not be fetched.
let unfetched = null;

/** Fetches the screen of a route and draws it when it is here, or says that it did not come. */
async function fetchShown(name) {
  const all = [fetchScreen(name), wantsHands(name) && fetchHands()];
  unfetched = await Promise.all(all).then(() => null, () => name);
  store.redraw();
}

// When the first screen stands, the hands, the words of the core and then all other screens are fetched while nothing else is to be
// done, so that a tap need not wait for them. What does not come is fetched again, and said to be missing, when it is needed.
const whenIdle = () => new Promise((go) => (globalThis.requestIdleCallback ?? ((run) => later(IDLE_MS, run)))(go));
let stands = false;
async function fetchRest() {
  stands = true;
  await whenIdle();
  await fetchHands().catch(() => {});
  await words.take(stands);
  await fetchAll(whenIdle).catch(() => {});
}

// Where the person came from, so that a side way leads back.
let [came, here] = ["#/", location.hash || "#/"];

function arrive() {
  if (location.hash !== here) [came, here] = [here, location.hash];
  drawing.arrive();
  const before = store.state.route;
  const next = route(location.hash);
  unfetched = null;
  store.go(next, before?.name === next.name && before.params.id === next.params.id && next.name === "repair");
  // A set-up that is left is taken up at the same question.
  if (next.name === "setup" && next.params.step) localStorage.setItem("mendline.setup", next.params.step);
  hands?.went(SCREENS[next.name].live ?? false);
  return look();
}

// Whoever opens the program while one clock runs and no other, wants that one. A hold that another phone has is not here.
async function leadBack(looked) {
  const begun = location.hash;
  await looked;
  const { answer: today } = store.state;
  const { mixed = [], holding = [], followed = [] } = today ?? {};
  const running = [...[...mixed, ...holding.filter(({ handed }) => !handed?.away)].map(({ summary }) => `#/repair/${summary.repair}`), ...followed.map(({ repair }) => `#/follow/${repair.id}`)];
  // Nobody is led away who has gone somewhere meanwhile.
  if (running.length === 1 && location.hash === begun && !touched) [location.hash] = running;
}

let ticked = { second: null, wall: Date.now(), since: monotonic(), looked: 0 };

/** Asks the core for what the screen shows. */
function look() {
  const { name, params } = store.state.route;
  ticked.looked = monotonic();
  const looked = SCREENS[name].asks && store.look(SCREENS[name].asks(params, store.draft, hands?.asked ?? {}));
  words.take(stands);
  if (!SCREENS[name].screen || wantsHands(name)) fetchShown(name);
  return looked;
}

const closely = () => Boolean(store.state.answer?.practice) || Boolean(store.state.answer?.handed?.code);

// Clocks run on the core's moment. When this device's clocks disagree, it slept or was set: the core is asked again.
setInterval(() => {
  const now = store.now();
  if (now) hands?.tick(now.at_ms);
  const second = Math.floor((now?.at_ms ?? Date.now()) / 1000);
  if (second === ticked.second) return;
  const jump = Math.abs(Date.now() - ticked.wall - (monotonic() - ticked.since));
  ticked = { ...ticked, second, wall: Date.now(), since: monotonic() };
  const seen = document.visibilityState === "visible";
  const wait = store.state.unreachable ? SILENT_AGAIN_MS : SCREENS[store.state.route.name].live ? (closely() ? CLOSELY_AGAIN_MS : LOOK_AGAIN_MS) : Infinity;
  if (jump > 1500 || (seen && monotonic() - ticked.looked > wait)) look();
  if (seen) store.redraw();
}, 200);

document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible") { look(); store.flush(); }
});

store.subscribe(() => drawing.show(unfetched === store.state.route.name));
addEventListener("hashchange", arrive);
const atFirst = ["", "#", "#/"].includes(location.hash);
const looked = arrive();
if (atFirst) leadBack(looked);
store.flush();
// Wherever the program begins, it knows the clocks that run.
if (!SCREENS[store.state.route.name].live) store.ask({ do: "today" }).then(async (answer) => { await fetchHands(); hands.take(answer?.ok); }).catch(() => {});
