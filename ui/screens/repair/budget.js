// The time budget of the resin as a cut tape with its parts.

import { budget } from "../../parts/budget.js";
import { number } from "../../format.js";
import { minSec } from "../../format.js";
import { say } from "../../text/say.js";

/** Returns the budget that the core computed. */
export const budgetOf = (shown) => budget({
  total_ms: shown.working_ms,
  parts: [
    { label: say("budget.wet_out"), ms: shown.wet_out_ms },
    { label: say("budget.push", { push: minSec(shown.push_ms, "up"), factor: number(shown.loaded_push_ms / shown.push_ms, 1) }), ms: shown.loaded_push_ms },
    { label: say("budget.connect"), ms: shown.connect_ms },
    { label: say("budget.margin"), ms: shown.margin_ms },
  ],
});
