// Sound and vibration, where the device has them. A cue always stands beside words on the screen.

/** Tones as [hertz, seconds] and the matching vibration in ms. */
const CUES = {
  tap: { tones: [[880, 0.05]], buzz: [20] },
  done: { tones: [[660, 0.09], [990, 0.14]], buzz: [60, 40, 120] },
  warn: { tones: [[740, 0.18], [0, 0.08], [740, 0.18]], buzz: [200, 100, 200] },
  alarm: { tones: [[960, 0.25], [640, 0.25], [960, 0.25], [640, 0.25]], buzz: [400, 150, 400, 150, 400] },
};

/** Returns the cues of a device. `scope` is the window: what it lacks is left out without a word. */
export function createCues(scope) {
  let context = null;

  function awake() {
    const Audio = scope.AudioContext ?? scope.webkitAudioContext;
    if (!Audio) return false;
    context ??= new Audio();
    context.resume?.();
    return true;
  }

  function play(tones) {
    if (!awake()) return false;
    let at = context.currentTime;
    for (const [hertz, seconds] of tones) {
      if (hertz > 0) tone(hertz, at, seconds);
      at += seconds;
    }
    return true;
  }

  // Rises and falls in 10 ms: a hard edge would crackle.
  function tone(hertz, at, seconds) {
    const source = context.createOscillator();
    const gain = context.createGain();
    source.type = "square";
    source.frequency.value = hertz;
    gain.gain.setValueAtTime(0, at);
    gain.gain.linearRampToValueAtTime(0.3, at + 0.01);
    gain.gain.setValueAtTime(0.3, at + seconds - 0.01);
    gain.gain.linearRampToValueAtTime(0, at + seconds);
    source.connect(gain).connect(context.destination);
    source.start(at);
    source.stop(at + seconds);
  }

  // Before the first touch a page may not, and would only be told off for trying.
  const shake = (pattern) => (scope.navigator.userActivation?.hasBeenActive === false ? false : scope.navigator.vibrate?.(pattern) ?? false);

  return {
    /** Wakes the sound after a touch: before one a page may make none. Returns whether there is any. */
    ready() { try { return awake(); } catch { return false; } },
    /** Plays a cue: tap, done, warn or alarm. Returns what the device could do: { sound, buzz }. */
    play(name) {
      const { tones, buzz } = CUES[name];
      try {
        return { sound: play(tones), buzz: shake(buzz) };
      } catch {
        return { sound: false, buzz: false };
      }
    },
    /** Says a sentence aloud where the platform has speech. */
    speak(sentence, language = "en") {
      if (!scope.speechSynthesis || !scope.SpeechSynthesisUtterance) return false;
      const words = new scope.SpeechSynthesisUtterance(sentence);
      words.lang = language;
      scope.speechSynthesis.cancel();
      scope.speechSynthesis.speak(words);
      return true;
    },
  };
}
