// Saving a file that the core made: the system's dialog in the window and on the phone, a download in a browser.

import { saveBytes, saveParts } from "../bridge.js";
import { say } from "../text/say.js";

/** Saves { name, media_type, bytes } with bytes in base64. Returns what to say about it. */
export async function saveFile({ name, media_type: type, bytes }) {
  const raw = Uint8Array.from(atob(bytes), (letter) => letter.charCodeAt(0));
  const saved = await saveBytes(name, raw);
  if (saved === undefined) return download(name, new Blob([raw], { type }));
  return say(saved ? "saved" : "saved.not", { name });
}

/** Saves a large file whose bytes `parts()` yields one part after the other. Returns { says, saved }: what to say about it. */
export async function saveLarge(name, parts) {
  const saved = await saveParts(name, parts);
  if (saved !== undefined) return { saved, says: say(saved ? "saved" : "saved.not", { name }) };
  const all = [];
  for await (const part of parts()) all.push(part);
  // A browser does not tell where it went, or whether it did.
  return { saved: true, says: download(name, new Blob(all)) };
}

function download(name, blob) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  return say("saved.download", { name });
}
