// From a tap to the core: forms, files and photos are sent, and what came of it is shown, heard and said.

import { chosenFile, controlsOf, merged, readForm, tidied } from "./form.js";
import { compare } from "./device/originals.js";
import { marked } from "./device/photos.js";
import { bring, pieces } from "./device/pieces.js";
import { saveFile, saveLarge } from "./device/save.js";
import { asTyped, hear } from "./heard.js";
import { filled, words } from "./label.js";
import { parted } from "./parts/pin.js";
import { person, usePerson } from "./reader.js";
import { say } from "./text/say.js";

// What writes nothing needs no outbox, and is not said to be recorded.
const READS = ["diagnostics", "hand_out_sheets", "certificate", "record", "check_record", "person_certificate", "pack", "back_up"];

// What is asked wants a name, once; a report never waits for one.
const REPORTS = ["report", "end_attempt"];
const NAMED = ["tell", "keep_photo", "accept_plan", "issue", "take_over"];
const wantsName = ({ do: what, command }) => !person() && NAMED.includes(what) && !REPORTS.includes(command?.command);

/**
 * Returns what sends. `look()` asks for what is shown, `arrive()` brings a screen to its top when it is drawn next, `live` holds
 * the forms that compute, `sure` by a field's id what was said to be meant.
 */
export function createSending({ root, store, look, arrive, live, sure, chosen, announce, cues, notices }) {
  let typing = {};
  // How far a large file has come, while it moves.
  let moving = null;
  const move = (done, of) => { moving = { done, of }; store.redraw(); };
  const moved = () => { moving = null; store.redraw(); };

  const failed = () => { cues.play("warn"); return false; };

  function show(answer) {
    store.show(answer);
    arrive();
    store.redraw();
  }

  /** Saves a file that the core made, piece by piece. */
  async function saveMade(made) {
    try {
      const { says, saved } = await saveLarge(made.name, () => pieces(store.ask, made, move));
      announce(says);
      if (saved && made.name.endsWith(".age")) await store.ask({ do: "note_backup", name: made.name, bytes: made.bytes });
    } catch { cues.play("warn"); announce(say("send.broke_off")); } finally { moved(); }
    return true;
  }

  // A file that did not come whole, where nothing else says why.
  function stopped(input) {
    if (!store.state.error) store.fault([{ field: input.id, text: say("take.stopped") }]);
    return failed();
  }

  /** Brings the file of a form to the core, then asks what is to be done with it. */
  async function sendLarge(form, request, secrets) {
    const input = form.querySelector("input[type=file]");
    const [picked] = input.files;
    if (!picked) return store.fault([{ field: input.id, text: say("problem.file") }]);
    store.fault([]);
    const whole = await bring(store.ask, picked, move).finally(moved);
    if (!whole) return stopped(input);
    const response = await store.ask({ ...request, name: picked.name, of: picked.size }, secrets);
    if (!response?.ok) return failed();
    store.forget(form.id);
    cues.play("done");
    show(response.ok);
    return true;
  }

  /** Brings the photos of a form to the core one by one, and shows what it found. */
  async function sendOriginals(form, { head }) {
    const input = form.querySelector("input[type=file]");
    if (input.files.length === 0) return store.fault([{ field: input.id, text: say("problem.file") }]);
    store.fault([]);
    const found = await compare(store.ask, head, [...input.files], move).finally(moved);
    if (!found) return stopped(input);
    cues.play("done");
    store.show(found);
    return true;
  }

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
    if (!response?.ok) return failed();
    for (const [name, value] of filled(response.ok, names)) store.type(form, name, value);
    announce(words(response.ok));
    return send({ do: "keep_photo", repair, label: say("label.photo", { called, says: words(response.ok) }), bytes }, { then });
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
    if (!response?.ok) return failed();
    if (form) { store.forget(form, scope); forgetSecrets(form); chosen.drop(); }
    // Who names the first person of a device is that person.
    if (form === "setup-person") usePerson(request.document.sheet.id);
    if (request.do === "accept_plan") { store.forget(`plan-${request.repair}`, scope); delete live.asked[`plan-${request.repair}`]; }
    if (request.command?.command === "report") store.forget(`ago-${request.command.happening.what}`, scope);
    cues.play(response.ok.trouble && request.command?.command === "report" ? "alarm" : "done");
    if (response.ok.kind === "file") { announce(await saveFile(response.ok)); return true; }
    if (response.ok.kind === "made") { show(response.ok); return saveMade(response.ok); }
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

  /** Sends a form. `stay` keeps its screen. Returns whether it was recorded. */
  async function submit(form, { stay } = {}) {
    const raw = controlsOf(form);
    const heard = await hear(raw, store.ask, sure);
    if (heard.problems.length > 0) return store.fault(heard.problems);
    const { fields: all, problems } = readForm(heard.controls);
    if (problems.length > 0) return store.fault(problems);
    const { fields, secrets } = parted(all);
    const whole = merged(JSON.parse(form.dataset.request), fields);
    const request = form.dataset.tidy ? tidied(whole) : whole;
    if (form.dataset.live) { live.asked[form.id] = fields; return look(); }
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

  /** Sends several forms by one act, in their order; what can't be sent stays and says why. */
  async function submitAll(ids) {
    for (const id of ids) {
      const form = document.getElementById(id);
      if (form && !(await submit(form, { stay: true }))) return;
    }
    await look();
  }

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
    if (picked) usePerson(target.returnValue);
    const next = whoWaits;
    whoWaits = null;
    store.redraw();
    if (picked) next?.();
  }, true);

  return {
    send,
    submit,
    submitAll,
    /** Returns how far a large file has come, { done, of }, or null. */
    moving: () => moving,
    /** Returns what stands in the fields of the form that is being sent as it was typed, by name. */
    typing: () => typing,
  };
}
