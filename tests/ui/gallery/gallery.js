// Shows one sample by its name behind the #, in the light behind the slash: #hold/night. Buttons work, and what they would
// have done is kept in `happened` for tests.

import { patch } from "/patch.js";
import { controlsOf, readForm } from "/form.js";
import { listenForHolds } from "/touch/hold.js";
import { listenForSteps } from "/touch/entry.js";
import { speak } from "/text/say.js";
import { SAMPLES } from "./samples.js";

const root = document.getElementById("root");
globalThis.happened = [];
globalThis.SAMPLES = SAMPLES;
globalThis.fieldsOf = (form) => readForm(controlsOf(form));

globalThis.show = () => {
  const [name, light = "day"] = decodeURI(location.hash.slice(1) || "parts").split("/");
  document.documentElement.dataset.light = light;
  patch(root, SAMPLES[name]?.() ?? "");
  for (const dialog of document.querySelectorAll("dialog:not([open])")) dialog.showModal();
};

listenForHolds(root, {
  monotonic: () => performance.now(), frame: requestAnimationFrame.bind(window), stop: cancelAnimationFrame.bind(window),
  confirmed: (button) => { happened.push(`confirmed ${button.dataset.hold}`); },
  tell: (kind) => happened.push(kind),
});
listenForSteps(root, { later: (ms, run) => setTimeout(run, ms), stop: (handle) => clearTimeout(handle), changed: (input) => happened.push(input.value) });
addEventListener("hashchange", show);
const words = await fetch("/ask", { method: "POST", body: JSON.stringify({ request: { do: "words" } }) });
speak((await words.json()).ok);
show();
