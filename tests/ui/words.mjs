// The words of the screens, as the program gives them out. Whoever imports this speaks English from then on.

import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { useLanguage } from "../../ui/format.js";
import { speak } from "../../ui/text/say.js";
import { BUILT } from "./mendline.mjs";

/** Returns the answer to `words` in a language: { kind, language, messages }. */
export function wordsOf(language) {
  const data = mkdtempSync(join(tmpdir(), "mendline-words-"));
  const envelope = JSON.stringify({ id: "words", reader: { language }, request: { do: "words" } });
  const { stdout, stderr } = spawnSync(join(BUILT, "mendline"), ["ask", "--data", data], { input: `${envelope}\n`, encoding: "utf8", maxBuffer: 1e8 });
  rmSync(data, { recursive: true, force: true });
  if (!stdout) throw new Error(`mendline ask gave no words: ${stderr}`);
  return JSON.parse(stdout).ok;
}

export const ENGLISH = wordsOf("en");

/** Speaks a language. Returns its words. */
export function speakIn(language) {
  const words = language === "en" ? ENGLISH : wordsOf(language);
  speak(words);
  useLanguage(language);
  return words;
}

speakIn("en");
