// Keeps the screen lit while a clock runs, where the device allows it.

/** Returns { keep(on) }. The lock is lost whenever the page is hidden, and taken again when it comes back. */
export function createWake(document, navigator) {
  let wanted = false;
  let lock = null;

  async function take() {
    if (!wanted || lock || document.visibilityState !== "visible" || !navigator.wakeLock) return;
    try {
      lock = await navigator.wakeLock.request("screen");
      lock.addEventListener("release", () => { lock = null; });
      if (!wanted) lock?.release();
    } catch {
      lock = null;   // the battery is low, or the system says no: the record does not depend on it
    }
  }

  document.addEventListener("visibilitychange", take);
  return {
    keep(on) {
      if (on === wanted) return;
      wanted = on;
      if (on) take();
      else lock?.release();
    },
  };
}
