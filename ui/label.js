// What a photographed label said: into the fields of the task, and in words beside its photo.

import { say } from "./text/say.js";

/** Returns what the label says, in words. */
export const words = ({ product, lot, expires }) => [
  product && say("label.product", { product }), lot && say("label.lot", { lot }), expires && say("label.expires", { expires }),
].filter(Boolean).join(", ");

/** Returns [name, value] for each field that the label fills; `names` says which field takes the lot, which the last day, which the words. */
export const filled = (label, names) => [[names.lot, label.lot], [names.expires, label.expires], [names.read, words(label)]]
  .filter(([name, value]) => name && value);
