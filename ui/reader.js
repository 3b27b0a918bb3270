// Who uses this device, what they picked, and the words in which the screens speak to them.

import { useLanguage, useUnits } from "./format.js";
import { language, nearest, speak } from "./text/say.js";

/** Returns the id of the person who taps, or null. */
export const person = () => localStorage.getItem("mendline.person");

export const usePerson = (id) => localStorage.setItem("mendline.person", id);

/** Keeps what a person picked: their `units` or their `language`. */
export const pick = (what, value) => localStorage.setItem(`mendline.${what}.${person()}`, value);

// What was picked before anybody was, holds for everybody who has not picked.
const pickedOf = (what) => localStorage.getItem(`mendline.${what}.${person()}`) ?? localStorage.getItem(`mendline.${what}.null`);

/** Returns the units in which is read and typed: "si" or "us". */
export const unitsOf = () => pickedOf("units") ?? "si";

const languageOf = () => pickedOf("language") ?? nearest(navigator.languages ?? []);

/** Returns who reads, as the core is told. */
export const reader = () => ({ language: languageOf(), units: unitsOf() });

/** Returns the words of the screens. `ask(request)` puts a question to the core, `changed()` draws anew. */
export function createWords({ ask, changed }) {
  let spoken = false;
  let heard = null;

  function speakAs(words) {
    speak(words);
    spoken = true;
    useLanguage(words.language);
    document.documentElement.lang = words.language;
  }

  function speakKept(wanted) {
    const kept = JSON.parse(localStorage.getItem("mendline.words") ?? "null");
    if (kept?.language === wanted) speakAs(kept);
  }

  return {
    /** Says whether there are words yet. */
    here: () => spoken,
    /**
     * Speaks the words of who reads: those that were kept at once, those of the core when they come. Kept words do until the
     * first screen `stands`; only then those of the core, which may be newer, are asked for.
     */
    async take(stands) {
      useUnits(unitsOf());
      const wanted = languageOf();
      if (heard === wanted) return;
      if (!spoken) speakKept(wanted);
      if (spoken && language() === wanted && !stands) return;
      const answer = (await ask({ do: "words" }))?.ok;
      if (answer?.kind !== "words" || answer.language !== languageOf()) return;
      heard = wanted;
      const fresh = JSON.stringify(answer);
      if (fresh === localStorage.getItem("mendline.words")) return;
      speakAs(answer);
      changed();
      localStorage.setItem("mendline.words", fresh);
    },
  };
}
