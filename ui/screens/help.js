// Help: cautions first, then words, then the rules. All of it is here without a network.

import { html } from "../html.js";
import { mast } from "../parts/mast.js";
import { note } from "../parts/note.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { say } from "../text/say.js";

export const title = () => say("help.title");

const CAUTIONS = ["confined", "traffic", "air", "resin", "hot", "sewage", "wall"];
const WORDS = ["line", "node", "station", "upstream", "crown", "clock", "dn", "defect", "host_pipe", "lateral", "patch", "packer", "sleeve", "membrane", "binding", "bare_end", "parts", "joining", "wet_out", "working_time", "test_push", "mark", "reading_point", "hold", "full_cure", "fold", "data_sheet", "departure", "attempt", "rehearsal"];

export const render = (view) => page({
  mast: mast({ title: title(), where: say("app.name") }),
  main: html`<main class="stack">${section({ id: "cautions", title: say("help.cautions"), kind: "", inside: html`${CAUTIONS.map((code) => note({ lead: say(`caution.${code}`), text: say(`caution.${code}_text`) }))}<p><b>${say("help.decide")}</b></p>` })}
    ${section({ id: "how", title: say("help.how"), inside: html`<ol class="do-now">${["1", "2", "3", "4", "5"].map((n) => html`<li>${say(`help.how_${n}`)}</li>`)}</ol>` })}
    ${section({ id: "words", title: say("help.words"), inside: html`<dl class="facts glossary">${WORDS.map((code) => html`<div><dt>${say(`word.${code}`)}</dt><dd>${say(`word.${code}_text`)}</dd></div>`)}</dl>` })}
    ${section({ id: "rules", title: say("help.rules"), aside: String(view.rules.length), inside: html`<p class="soft">${say("help.rules_text")}</p><ul class="rule-list">${view.rules.map((one) => html`<li><b>${say(`kind.${one.kind}`)}</b> ${one.says} <span class="soft">${one.way_out}</span></li>`)}</ul>` })}</main>`,
});
