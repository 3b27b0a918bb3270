// The minutes of a followed hold, as its screen and the first one show them.

import { minutes } from "../../format.js";
import { say } from "../../text/say.js";

/** Returns whole minutes: counted, pending, needed. */
export const figures = (hold) => [minutes(hold.counted_ms), minutes(hold.pending_ms), Math.max(1, Math.ceil(hold.required_ms / 60e3))];

/** Returns in words what the tape of a followed hold draws. */
export function label(hold) {
  const [counted, waits, needed] = figures(hold);
  return say("followed.tape", { counted, needed, pending: waits });
}
