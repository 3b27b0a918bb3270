// The last position, watched while a repair is open. A tap takes what is there and never waits.

const E7 = 1e7;

/** Returns the watch. `watch(found, failed)` starts the receiver and returns how to stop it; `clock()` is wall time in ms. */
export function createPosition({ watch, clock }) {
  let stop = null;
  let fix = null;
  let why = "not_asked";

  return {
    /** Starts or stops watching. A position that is known stays, growing older. */
    follow(on) {
      if (on && !stop) {
        if (!fix) why = "not_yet";
        stop = watch((found, source) => { fix = { ...found, source }; }, (reason) => { why = reason; });
      } else if (!on && stop) {
        stop();
        stop = null;
      }
    },
    /** Returns the position as a fact: where, how sure, how old, or why there is none. */
    fact() {
      if (!fix) return { kind: "absent", why };
      return {
        kind: "fix",
        lat_e7: Math.round(fix.latitude * E7),
        lon_e7: Math.round(fix.longitude * E7),
        accuracy_mm: Number.isFinite(fix.accuracy) ? Math.round(fix.accuracy * 1000) : null,
        age_ms: Math.max(0, Math.round(clock() - fix.timestamp)),
        source: fix.source,
      };
    },
  };
}
