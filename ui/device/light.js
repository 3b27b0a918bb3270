// Day, sun or night: kept on this device, worn by the whole page.

import { LIGHTS } from "../parts/light.js";

/** Returns the light of this device and puts it on `root`. */
export function createLight(root, storage) {
  const known = (name) => (LIGHTS.includes(name) ? name : "day");
  const wear = (name) => { root.dataset.light = name; return name; };
  wear(known(storage.getItem("mendline.light")));
  return {
    now: () => root.dataset.light,
    set(name) { storage.setItem("mendline.light", wear(known(name))); },
  };
}
