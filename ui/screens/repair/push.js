// The test push: the dry packer to the mark and back, never inflated. How long it takes decides the go.

import { html } from "../../html.js";
import { minSec, quantity, span } from "../../format.js";
import { clock } from "../../parts/clock.js";
import { conditions } from "../../parts/conditions.js";
import { act, deck, gate, small, usual } from "../../parts/deck.js";
import { facts } from "../../parts/facts.js";
import { note } from "../../parts/note.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { lineOf } from "./drawn.js";
import { agoLink, agoOf, at, attempt, computed, frame, nowOf, report, to } from "./frame.js";

export const title = () => say("stage.test_push");

export function render(view) {
  const { begun, reached } = attempt(view).test_push;
  const step = !begun ? begin : !reached ? pull : back;
  return frame(view, { title: title(), ...step(view) });
}

const begin = (view) => ({
  main: html`<p class="lead-in">${say("push.begin")}</p>${note({ lead: say("push.never"), text: say("push.never_text") })}${lineOf(view)}${mark(view)}`,
  foot: deck({ more: usual({ repair: view.repair.id, ago: agoLink(view, "push_begun") }), act: PUSH_ACTS.push_begun(view) }),
});

const pull = (view) => ({
  main: html`${clock({ what: say("push.pull"), ms: nowOf(view) - attempt(view).test_push.begun.moment.at_ms, rising: true, count: true })}<p class="soft">${since(view)}</p>
    ${lineOf(view, { patch: false, says: say(`push.way_${view.repair.plan.choice.way_in}`) })}${mark(view)}`,
  foot: deck({ more: usual({ repair: view.repair.id, ago: agoLink(view, "mark_reached") }), act: PUSH_ACTS.mark_reached(view) }),
});

const back = (view) => ({
  main: html`${pushed(view)}${way({ label: say("push.damaged"), note: say("push.damaged_note"), mark: "cross", does: report(view, { what: "packer_back", sound: false }) })}`,
  foot: deck({
    gate: gate({ reason: say("gate.shut", { name: say("next.sleeve_change") }), beside: small({ mark: "stop", label: say("deck.stop"), href: to(view, "stop") }) }),
    more: usual({ repair: view.repair.id, ago: agoLink(view, "packer_back") }), spare: true,
    act: PUSH_ACTS.packer_back(view),
  }),
});

/** The reports of the test push, each as the one act of its screen. */
export const PUSH_ACTS = {
  push_begun: (view) => act({ label: say("push.begin_act"), note: when(view, "push_begun") ?? say("push.begin_note"), does: report(view, { what: "push_begun" }), then: to(view) }),
  mark_reached: (view) => act({ label: say(`push.mark_${view.repair.plan.choice.reading_point.kind}`), note: when(view, "mark_reached") ?? say("push.mark_note"), does: report(view, { what: "mark_reached" }), then: to(view) }),
  packer_back: (view) => act({ label: say("push.back_act"), note: when(view, "packer_back") ?? say("push.back_act_note"), does: report(view, { what: "packer_back", sound: true }), then: to(view) }),
};

const when = (view, key) => (agoOf(view, key) > 0 ? say("ago.at", { at: at(view, nowOf(view) - agoOf(view, key)) }) : undefined);

/** Returns the three things that the sleeve change needs, met or open. */
export const pushed = (view) => html`<h2>${say("push.needs")}</h2>${conditions([reachedIn(view), ...go(view), backIn(view)], "")}`;

function reachedIn(view) {
  const { reached, begun, carried_from: carried } = attempt(view).test_push;
  if (!reached) return { state: "open", text: say("push.reached") };
  const where = say(`push.at_${view.repair.plan.choice.reading_point.kind}`);
  return { state: "met", text: say("push.reached"), note: carried ? say("task.carried", { n: carried }) : say("push.reached_note", { at: quantity("m", computed(view).mark.path_um), took: span(took(begun, reached), "up"), where }) };
}

const took = (begun, reached) => reached[0].moment.at_ms - (begun ?? reached[0]).moment.at_ms;

function go(view) {
  const { broken, budget } = view.go;
  if (broken.length > 0) return broken.map(({ says, way_out: out }) => ({ state: "failed", text: says, note: out }));
  return [{ state: "met", text: say("push.time_go", { spare: span(budget.spare_ms) }), note: say("push.time_note", { push: minSec(budget.push_ms, "up"), factor: view.repair.plan.contract.loading_factor_pct.value / 100, loaded: minSec(budget.loaded_push_ms, "up") }) }];
}

function backIn(view) {
  const { back: came } = attempt(view).test_push;
  if (came?.[1]) return { state: "met", text: say("push.back"), note: at(view, came[0].moment.at_ms) };
  return { state: came ? "failed" : "open", text: say(came ? "push.not_sound" : "push.back"), note: say("push.back_note") };
}

// The longest way in that still gives time enough, at the temperatures read last.
function since(view) {
  const from = at(view, attempt(view).test_push.begun.moment.at_ms, true);
  const { budget } = view.go;
  if (!budget) return say("push.since", { at: from });
  const most = Math.max(0, (budget.spare_ms + budget.loaded_push_ms) / (view.repair.plan.contract.loading_factor_pct.value / 100));
  return say("push.since_under", { at: from, most: minSec(most) });
}

const mark = (view) => section({ id: "mark", title: say("push.mark"), inside: facts([
  { label: say("push.path"), value: quantity("m", computed(view).mark.path_um) },
  ...(computed(view).mark.whole_rods > 0 ? [{ label: say("push.rods"), value: say("push.rods_value", { n: computed(view).mark.whole_rods, rest: quantity("m", computed(view).mark.remainder_um) }) }] : []),
  { label: say("push.read_at"), value: say(`reading_point.${view.repair.plan.choice.reading_point.kind}`) },
]) });
