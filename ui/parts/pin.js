// The PIN of somebody's key. It goes with the request and is kept nowhere: not in what was typed, not in what waits to be sent.

import { field } from "./field.js";
import { say } from "../text/say.js";

/** Returns the key that a person signs with, if there is one. */
export const keyOf = (person) => {
  const last = person?.keys?.at(-1);
  return last && !last.revoked ? last : undefined;
};

/** Returns the field for the PIN of an existing key. */
export const pin = (id, label = say("key.pin")) => field({ id, name: "pin", label, type: "password", mode: "numeric", needed: true });

/** Parts what is secret from the fields of a form. */
export function parted({ pin: pinned, password, ...fields }) {
  return { fields, secrets: { ...(pinned && { pin: pinned }), ...(password && { password }) } };
}
