// Shows one sample by its name behind the #, in the light behind the slash: #hold/night.

import { patch } from "/patch.js";
import { SAMPLES } from "./samples.js";

function show() {
  const [name, light = "day"] = decodeURI(location.hash.slice(1) || "parts").split("/");
  document.documentElement.dataset.light = light;
  patch(document.getElementById("root"), SAMPLES[name]());
  for (const dialog of document.querySelectorAll("dialog")) dialog.showModal();
}

addEventListener("hashchange", show);
show();
