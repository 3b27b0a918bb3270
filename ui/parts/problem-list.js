// Problem list: what keeps a form from being sent, at the top, each linked to its field.

import { html } from "../html.js";
import { say } from "../text/say.js";

/** Returns the list of { field, text, meant }, or nothing; `meant` are values of which one is taken instead. It takes the focus when it appears. */
export const problemList = (problems = []) => problems.length > 0 && html`<section class="problems note" aria-labelledby="problems" tabindex="-1" data-focus>
  <h2 id="problems">${say("problems.title", { n: problems.length })}</h2>
  <ul>${problems.map(({ field, text, meant }) => html`<li>${field ? html`<a href="#${field}" data-jump="${field}">${text}</a>` : text}${meant && html`<div class="pair">${meant.map((one) => html`<button type="button" data-means="${field}" data-value="${one}">${one}</button>`)}</div>`}</li>`)}</ul></section>`;

/** Returns the problem of one field, or nothing. */
export const problemOf = (problems = [], field) => problems.find((problem) => problem.field === field)?.text;

/** Returns what the core refused and how out of it: every rule that stands in the way, each with its sentence and its way out. */
export const refusalNote = (refusal) => refusal && html`<section class="note problems" aria-labelledby="refused" tabindex="-1" data-focus><h2 id="refused">${refusal.broken[0]?.says}</h2>${out(refusal.broken[0])}
  ${refusal.broken.length > 1 && html`<ul>${refusal.broken.slice(1).map((one) => html`<li>${one.says}${out(one)}</li>`)}</ul>`}</section>`;

const out = (one) => one?.way_out && html`<p><b>${say("refusal.way_out")}</b> ${one.way_out}</p>`;
