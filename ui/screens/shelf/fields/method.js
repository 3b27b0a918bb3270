// The fields of a method statement, and of one of its tasks.

import { STAGES } from "./shared.js";

export const METHOD = [{ title: "names", fields: [{ key: "id", as: "text" }, { key: "title", as: "text" }] }];

/** What a task asks for; the gates read the answers of the kinds that they need, `confirm` is for the rest. */
const KINDS = ["confirm", "suitability", "permit", "air", "flow", "cleaned", "viewed_again", "measured_diameter", "packer_test", "lots", "instruments", "temperatures", "battery",
  "bare_ends", "parts_used", "mixed", "soaked", "seam", "at_the_mark", "all_back", "packer_condition", "edges", "folds", "infiltration", "surface", "laterals", "tightness", "waste", "flow_restored"];

export const TASK = [
  { title: "wording", fields: [{ key: "label", as: "text" }, { key: "detail", as: "text", optional: true }, { key: "caution", as: "text", optional: true }] },
  { title: "asked", fields: [{ key: "mandatory", as: "yes" }, { key: "may_not_apply", as: "yes" }, { key: "stage", as: "choice", options: STAGES }, { key: "kind", as: "choice", options: KINDS }, { key: "key", as: "text" }] },
];
