// Live: one hold or cure that runs, named by its manhole, on the first screen.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { tape } from "./tape.js";

/**
 * Returns the article of a hold: `counted` and `pending` of `needed` whole minutes, `items` are { label, value, note, wide }.
 * `chart` is drawn below on a wide screen, `label` says in words what the tape draws.
 */
export const liveHold = ({ href, manhole, where, counted, pending, needed, items, chart, label = say("hold.tape", { counted, needed, pending }) }) => html`<article class="live">
  <div class="live-head"><div><h3><a href="${href}">${manhole}</a></h3><p class="soft">${where}</p></div><p class="live-count"><b>${counted}</b> ${say("hold.of", { n: needed })}</p></div>
  ${tape({ n: needed, label, parts: [{ kind: "full", m: Math.min(counted, needed) }, { kind: "pend", m: Math.min(pending, Math.max(0, needed - counted)) }] })}
  <dl class="live-facts">${items.map(({ label, value, note, wide }) => html`<div${wide && html` class="only-wide"`}><dt>${label}</dt> <dd>${value}${note && html` <small>${note}</small>`}</dd></div>`)}</dl>${chart}</article>`;

/** Returns the article of a full cure: `gone` of `needed` hours, until `when`, on another `day` than today. */
export const liveCure = ({ href, manhole, where, gone, needed, when, day, label }) => html`<article class="live cure">
  <div class="live-head"><div><h3><a href="${href}">${manhole}</a></h3><p class="soft">${where}</p></div><p class="cure-when">${say("cure.full")}<br>${say("cure.from")} <b>${when}</b>${day && html`<br>${day}`}</p></div>
  ${tape({ n: needed, label, parts: [{ kind: "done", m: Math.min(gone, needed) }] })}<p class="cure-say"><b>${say("cure.caution")}</b></p></article>`;
