// Tape: a measure that empties or fills, one tick a unit. Solid certain, hatched waiting, ruled curing, empty gone.

import { html, vars } from "../html.js";

/**
 * Returns the tape of `n` units (minutes, hours). `parts` are { kind, m }: a kind is full, pend, done, gone, now or trouble,
 * `m` its length in units. `label` says in words what is drawn; `marks` are { at, n } needles below it, in units from the left.
 */
export const tape = ({ n, parts, label, marks }) => {
  const bar = html`<div class="tape" ${vars({ n: short(n) })} role="img" aria-label="${label}">${parts.map(({ kind, m }) => length(kind, m))}</div>`;
  return marks ? html`<div class="flags">${bar}<ol class="flag-row" ${vars({ n: short(n) })} aria-hidden="true">${marks.map(({ at, name }) => html`<li ${vars({ at: short(at) })}>${name}</li>`)}</ol></div>` : bar;
};

/** Returns one length of a tape. */
export const length = (kind, m) => html`<i class="${kind}" ${vars({ m: short(Math.max(0, m)) })}></i>`;

/** Returns the words below a tape, from its left end to its right. A word may be { strong }. */
export const ends = (words) => html`<p class="tape-ends">${words.map((word) => (word.strong ? html`<b>${word.strong}</b>` : html`<span>${word}</span>`))}</p>`;

/** Returns what hatched means, in words. */
export const pending = (text) => html`<p class="tape-note"><i class="pend-key"></i>${text}</p>`;

const short = (value) => Number(value.toFixed(3));
