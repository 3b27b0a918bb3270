// What a person does with the device, and what the device says to them: taps, typing, held buttons; sound, notices, photos, position.
// The first screen stands without it, so it is fetched after that screen.

import { ask, phoneClock, watchPosition } from "./bridge.js";
import { createAnnouncer } from "./device/announce.js";
import { createBattery } from "./device/battery.js";
import { createCues } from "./device/cue.js";
import { createNotices } from "./device/notice.js";
import { createChosen, createPhotos } from "./device/photos.js";
import { createPosition } from "./device/position.js";
import { createWake } from "./device/wake.js";
import { typed } from "./format.js";
import { createLive } from "./live.js";
import { onPaper } from "./on-paper.js";
import { pick, usePerson } from "./reader.js";
import { createReminders, runs } from "./reminders.js";
import { createSending } from "./sending.js";
import { say } from "./text/say.js";
import { listenForSteps } from "./touch/entry.js";
import { listenForGhosts } from "./touch/ghost.js";
import { listenForHolds } from "./touch/hold.js";
import { listenForPads } from "./touch/pad.js";

/** A quarter of a second after a touch every engine still takes it for one. */
const WAKE_MS = 250;

const HELD = { held: "hold.started", armed: "hold.press_again", early: "hold.let_go", lapsed: "hold.not_confirmed" };

/**
 * Listens below `root`. `look()` asks the core for what is shown, `arrive()` brings a screen to its top when it is drawn next,
 * `light` is worn by the page, `touched` says whether somebody has touched it already.
 */
export function createHands({ root, store, look, arrive, light, touched }) {
  const later = (ms, run) => setTimeout(run, ms);
  const monotonic = () => performance.now();
  const announce = createAnnouncer(document.getElementById("said"), later);
  const cues = createCues(window);
  const wake = createWake(document, navigator);
  const battery = createBattery(navigator);
  const notices = createNotices(window, document, phoneClock());
  const reminders = createReminders({ play: cues.play, speak: (says) => cues.speak(says), notice: (says) => notices.give(say("app.name"), says) });
  const ghosts = listenForGhosts(root, { later, stop: clearTimeout.bind(window) });
  const position = createPosition({ watch: watchPosition, clock: () => Date.now() });
  const fetchPhotos = createPhotos(root, async (sha256, px) => (await ask({ id: crypto.randomUUID(), request: { do: "photo", sha256, longest_px: px } })).ok);
  const chosen = createChosen();
  // By the id of a field, what somebody has said to be meant.
  const sure = {};
  const live = createLive({ store, look, sure });
  const sending = createSending({ root, store, look, arrive, live, sure, chosen, announce, cues, notices });

  // What is keyed in from paper happened when the sheet says. Only a repair has a sheet.
  function written() {
    const at = store.state.route?.name === "repair" ? onPaper(store.draft("paper")) : undefined;
    return at === undefined ? {} : { on_paper_ms: at };
  }
  const keyed = () => written().on_paper_ms !== undefined;

  // What stands in the fields goes with the request as it was typed.
  function asTyped() {
    const typing = sending.typing();
    return Object.keys(typing).length > 0 ? { typed: typing } : {};
  }

  function keepTyped(control) {
    if (control.name === "light") light.set(control.value);
    else if (control.name === "person") { usePerson(control.value); look(); }
    else if (control.name === "units" || control.name === "language") { pick(control.name, control.value); look(); }
    else if (control.form?.id && control.name && control.type !== "file" && control.type !== "password") store.type(control.form.id, control.name, valueOf(control));
    if (control.type === "file" && control.accept === "image/*") chosen.take(control);
    store.redraw();
    // A label that is not read leaves nothing behind, so its picture needs no second tap.
    if (control.type === "file" && control.files.length > 0 && JSON.parse(control.form.dataset.request ?? "{}").do === "read_label") sending.submit(control.form);
    if (control.form?.dataset.live) live.again(control.form);
  }

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

  // What a button asks for itself.
  const sendHeld = ({ dataset: { request, then } }) => sending.send(JSON.parse(request), { then });

  const hears = {
    submit(event) {
      if (event.target.method === "dialog") return;
      event.preventDefault();
      sending.submit(event.target);
    },
    click(event) {
      const control = event.target.closest("[data-request], [data-opens], [data-jump], [data-sends], [data-print], [data-again], [data-means]");
      if (!control || control.dataset.hold || control.nodeName === "FORM") return;
      if (control.dataset.means) meant(control.dataset);
      else if (control.dataset.jump) { event.preventDefault(); jump(control.dataset.jump); }
      else if (control.dataset.print) print();
      else if (control.dataset.again) look();
      else if (control.dataset.opens) document.getElementById(control.dataset.opens)?.showModal();
      else if (control.dataset.sends) sending.submitAll(control.dataset.sends.split(" "));
      else if (live.rests()) live.now().then(() => announce(say("plan.computed")));
      else sendHeld(control);
    },
    input: (event) => keepTyped(event.target),
  };
  for (const [kind, hear] of Object.entries(hears)) root.addEventListener(kind, hear);

  root.addEventListener("toggle", fetchPhotos, true);

  listenForSteps(root, {
    later, stop: (handle) => clearTimeout(handle),
    changed: (input) => { keepTyped(input); cues.play("tap"); announce(say("step.value", { value: input.value, unit: document.getElementById(`${input.id}-unit`)?.textContent ?? "" })); },
  });

  listenForPads(root, (pen) => announce(say(`pad.${pen}`)));

  listenForHolds(root, {
    monotonic, frame: requestAnimationFrame.bind(window), stop: cancelAnimationFrame.bind(window),
    confirmed: (button) => (button.form ? sending.submit(button.form) : sendHeld(button)),
    tell: (kind, label) => { announce(say(HELD[kind], { label })); if (kind === "held") cues.play("tap"); },
  });

  // A device is silent until somebody has touched the page. To wake its sound takes longer than a tap may, so the tap is answered first.
  if (touched) cues.ready();
  for (const touch of ["pointerdown", "keydown"]) root.addEventListener(touch, () => later(WAKE_MS, cues.ready), { once: true });

  document.addEventListener("visibilitychange", () => {
    const now = store.now();
    if (document.visibilityState === "visible") notices.wake();
    // Nobody is woken by a rehearsal, nor by what stands on paper.
    else if (now && !store.state.answer?.practice && !keyed()) notices.sleep(say("app.name"), reminders.coming(now.at_ms), Date.now() - now.at_ms);
  });
  notices.wake();

  return {
    /** Does what was asked by an event that came before. */
    hear: (event) => hears[event.type](event),
    /** Returns what goes with every request. */
    facts: () => ({ ...written(), position: position.fact(), battery_pct: battery.percent(), ...asTyped() }),
    /** Returns what a screen is told: how far a file has come, which picture was chosen. */
    told: () => ({ moving: sending.moving(), chosen: chosen.now() }),
    /** By the id of a form, the fields with which the core was asked last. */
    asked: live.asked,
    /** Says what fell due by the core's moment `at_ms`. */
    tick: (at_ms) => { if (!keyed()) reminders.tick(at_ms); },
    /** Takes the clocks of an answer. */
    take: reminders.take,
    /** A new address: no picture stays chosen; the position is watched where a clock runs. */
    went(runsHere) {
      chosen.drop();
      position.follow(runsHere);
    },
    /** The screen was drawn with `answer`. */
    drawn(answer) {
      reminders.take(answer);
      if (answer) wake.keep(runs(answer));
      fetchPhotos();
      ghosts.shown();
    },
    /** A screen stands that was just opened: what was typed before and not yet sent is asked again. */
    stood() {
      for (const form of root.querySelectorAll("form[data-live]")) if (!live.asked[form.id] && Object.keys(store.draft(form.id)).length > 0) live.again(form);
    },
  };
}

// In the middle of the screen, so that the deck does not lie on it.
function jump(id) {
  const to = document.getElementById(id);
  to?.scrollIntoView({ block: "center" });
  to?.focus({ preventScroll: true });
}

function valueOf(control) {
  // In other units than the recorded ones a number is kept with its unit, so that it means the same after a switch.
  if (control.dataset.plus !== undefined && typed(control.value) !== null) return `${control.value} ${control.dataset.unit}`;
  if (control.type !== "checkbox") return control.value;
  return [...control.form.elements].filter((other) => other.name === control.name && other.checked).map(({ value }) => value);
}
