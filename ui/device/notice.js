// A notice on the device while the program is out of sight, where the platform has notices.

/** Returns the notices of a device. `scope` is the window: in the app a plugin stands in for what it lacks. */
export function createNotices(scope, document) {
  const known = () => scope.Notification;
  return {
    /** Asks for the permission, once, from within a tap. */
    allow() {
      if (known()?.permission === "default") Promise.resolve(known().requestPermission()).catch(() => {});
    },
    /** Shows the sentence if nobody looks at the program. Returns whether the device took it. */
    give(title, sentence) {
      if (document.visibilityState === "visible" || known()?.permission !== "granted") return false;
      try {
        new scope.Notification(title, { body: sentence, tag: title });
        return true;
      } catch {
        return false;   // phones refuse the constructor in a browser; sound and vibration remain
      }
    },
  };
}
