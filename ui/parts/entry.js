// Entry: a number between a large − and +, its unit inside. Typed or stepped, both are the same.

import { localEntry } from "../format.js";
import { attr, html } from "../html.js";
import { say } from "../text/say.js";
import { icon } from "./icon.js";

/**
 * Returns the entry. `value` is the text in it, perhaps what was typed and is no number yet; `step`, `min`, `max` are in
 * the unit shown; `steps` is how many wire steps make one unit; `spanned` takes min:s (unit shown: seconds);
 * `aside` stands at the label's end (the last value, the limit); `problem` is said and linked; `needed` must be filled in; `likely` is the
 * least and most, in wire steps, outside which a slip of the unit is asked about. Shown in the person's own units.
 */
export function entry({ id, name = id, label, aside, value = "", unit, step = 1, min, max, digits = 0, steps = 1, start, spanned = false, problem, needed = false, likely }) {
  const own = localEntry({ unit, steps, value, step, min, max, digits, start });
  return drawn({ id, name, label, aside, spanned, problem, needed, likely, ...own, recorded: own.own });
}

const drawn = ({ id, name, label, aside, value, unit, step, min, max, digits, steps, plus, start, recorded, spanned, problem, needed, likely }) => html`<div class="entry">
  <label for="${id}">${label}${aside && html` <small>${aside}</small>`}</label>
  <div class="entry-row"><button type="button" data-step="-1" data-for="${id}" aria-label="${say("entry.less", { label, step, unit })}">${icon("minus")}</button>
  <span class="value"><input id="${id}" name="${name}" type="text" inputmode="decimal" enterkeyhint="done" autocomplete="off" value="${value}" data-as="number"
    data-step-by="${step}" data-digits="${digits}" data-steps="${steps}" ${attr("data-unit", unit)} ${attr("data-plus", plus)} ${recorded !== undefined && html`data-shown="${value}" data-recorded="${recorded}"`} ${attr("data-likely", likely?.join(","))} ${attr("data-min", min)} ${attr("data-max", max)} ${attr("data-start", start)}
    ${spanned && html`data-spanned="yes"`} ${needed && html`data-needed="yes" aria-required="true"`} aria-describedby="${id}-unit${problem ? ` ${id}-problem` : ""}" ${problem && html`aria-invalid="true"`}><span class="unit" id="${id}-unit">${unit}</span></span>
  <button type="button" data-step="1" data-for="${id}" aria-label="${say("entry.more", { label, step, unit })}">${icon("plus")}</button></div>
  ${problem && html`<p class="problem" id="${id}-problem">${problem}</p>`}
</div>`;
