// Help: cautions first, then how it works, the words, and the rules as the core has them. All of it is here without a network.

import { html } from "../html.js";
import { doNow, note } from "../parts/note.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { section } from "../parts/section.js";
import { way } from "../parts/way.js";
import { STAGES } from "../parts/stages.js";
import { say } from "../text/say.js";

export const title = () => say("help.title");

const CAUTIONS = ["confined", "traffic", "air", "resin", "hot", "sewage", "wall"];
const HOW = ["1", "2", "3", "4", "5"];
const WORDS = ["line", "node", "station", "upstream", "crown", "clock", "dn", "defect", "host_pipe", "lateral", "patch", "packer", "sleeve", "membrane", "binding", "bare_end", "parts", "joining", "wet_out", "working_time", "test_push", "push_rod", "mark", "reading_point", "hold", "full_cure", "fold", "data_sheet", "contract", "departure", "attempt", "certificate", "rehearsal"];

export const render = (view) => page({
  mast: mast({ title: title(), where: say("app.name") }),
  main: html`<main class="help"><div>${section({ id: "cautions", title: say("help.cautions"), kind: "", inside: html`${CAUTIONS.map((code) => note({ lead: say(`caution.${code}`), text: say(`caution.${code}_text`) }))}<p class="lead"><b>${say("help.decide")}</b></p>` })}
    ${section({ id: "how", title: say("help.how"), inside: doNow(HOW.map((n) => say(`help.how_${n}`))) })}
    ${section({ id: "words", title: say("help.words"), inside: html`<dl class="glossary">${WORDS.map((code) => html`<div><dt>${say(`word.${code}`)}</dt><dd>${say(`word.${code}_text`)}</dd></div>`)}</dl>` })}${section({ id: "support", title: say("support.title"), inside: html`<p class="soft">${say("support.text")}</p>${way({ label: say("support.save"), note: say("support.save_note"), does: { do: "diagnostics" } })}` })}</div>
    <div>${section({ id: "rules", title: say("help.rules"), aside: String(view.rules.length), kind: "", inside: html`<p class="soft">${say("help.rules_text")}</p>${groups(view.rules).map(group)}` })}</div></main>`,
});

// In the order of the stages: a rule that is looked at in every stage stands under its own heading.
function groups(rules) {
  const place = (stage) => (stage === null ? STAGES.length : STAGES.indexOf(stage));
  const stages = [...new Set(rules.map(({ stage }) => stage))].sort((a, b) => place(a) - place(b));
  return stages.map((stage) => ({ stage, rules: rules.filter((one) => one.stage === stage) }));
}

const group = ({ stage, rules }) => html`<details class="rule-group"><summary><h3>${stage === null ? say("help.every_stage") : say(`stage.${stage}`)} <small>${rules.length}</small></h3></summary>
  <ul class="rule-list">${rules.map(({ rule, kind, says, way_out: out }) => html`<li><b>${say(`rule.name.${rule}`)}</b> <span class="kind">${say(`kind.${kind}`)}</span><br>${says}${out && html`<br><span class="soft">${out}</span>`}</li>`)}</ul></details>`;
