// Stages: a rule with ten divisions; the needle stands under the present one.

import { html } from "../html.js";
import { say } from "../text/say.js";

/** The ten divisions, in order; the last one is the end of the repair. */
export const STAGES = ["staging", "test_push", "sleeve_change", "wet_out", "placement", "inflation", "hold", "deflation", "verification", "complete"];

/** Returns the rule for the stage numbered `at` (0 to 9). */
export const stages = (at) => html`<ol class="stages" aria-label="${say("stages.label", { n: at + 1, of: STAGES.length, name: say(`stage.${STAGES[at]}`) })}">${STAGES.map((name, i) =>
  html`<li${i < at && html` class="past"`}${i === at && html` aria-current="step"`}><span class="unseen">${say(`stage.${name}`)}</span></li>`)}</ol>`;
