// A notice on the device while the program is not in front, where the platform has notices.

/** As many are handed to a phone for the time that it sleeps, under these numbers. */
const FIRST = 7_000;
const MOST = 32;

/**
 * Returns the notices of a device. `scope` is the window: in the app a plugin stands in for what it lacks. On a phone `later`
 * { ring(notices), cancel(ids) } is its own clock, which rings while the program sleeps or was killed; elsewhere there is none.
 */
export function createNotices(scope, document, later) {
  const known = () => scope.Notification;
  const inFront = () => document.visibilityState === "visible" && (document.hasFocus?.() ?? true);
  return {
    /** Asks for the permission, once, from within a tap. */
    allow() {
      if (known()?.permission === "default") Promise.resolve(known().requestPermission()).catch(() => {});
    },
    /** Shows the sentence if the program is not in front. Returns whether the device took it. */
    give(title, sentence) {
      if (later || inFront() || known()?.permission !== "granted") return false;
      try {
        new scope.Notification(title, { body: sentence, tag: title });
        return true;
      } catch {
        return false;   // phones refuse the constructor in a browser; sound and vibration remain
      }
    },
    /** Hands what is to come, { at_ms, says }, to the phone; `skew_ms` is how far its clock is ahead of the core's. */
    sleep(title, coming, skew_ms = 0) {
      later?.ring(coming.slice(0, MOST).map(({ at_ms, says }, i) => ({ id: FIRST + i, title, body: says, at_ms: at_ms + skew_ms })));
    },
    /** Takes back what was handed over: somebody looks again. */
    wake() { later?.cancel(Array.from({ length: MOST }, (_, i) => FIRST + i)); },
  };
}
