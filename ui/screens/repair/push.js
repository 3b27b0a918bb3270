// The test push: the dry packer to the mark and back, never inflated. How long it takes decides the go.

import { html } from "../../html.js";
import { minSec, quantity } from "../../format.js";
import { clock } from "../../parts/clock.js";
import { conditions } from "../../parts/conditions.js";
import { act, deck, usual } from "../../parts/deck.js";
import { facts } from "../../parts/facts.js";
import { note } from "../../parts/note.js";
import { say } from "../../text/say.js";
import { lineOf } from "./drawn.js";
import { agoLink, at, attempt, computed, frame, report } from "./frame.js";

export const title = () => say("stage.test_push");

export function render(view) {
  const push = attempt(view).test_push;
  const step = steps[view.next.act](view, push);
  return frame(view, {
    title: title(view),
    main: html`${step.main}${lineOf(view)}${facts([
      { label: say("push.mark"), value: quantity("m", computed(view).mark.path_um) },
      { label: say("push.read_at"), value: say(`reading_point.${view.repair.plan.choice.reading_point.kind}`) },
    ])}${note({ lead: say("push.never"), text: say("push.never_text") })}`,
    foot: deck({ more: usual({ repair: view.repair.id, ago: agoLink(view) }), act: step.act }),
  });
}

const steps = {
  push_begun: (view) => ({
    main: html`<p class="lead">${say("push.begin")}</p>`,
    act: act({ label: say("push.begin_act"), note: say("push.begin_note"), does: report(view, { what: "push_begun" }) }),
  }),
  mark_reached: (view, push) => ({
    main: clock({ what: say("push.pull"), ms: (view.now?.at_ms ?? 0) - push.begun.moment.at_ms, rising: true, note: limit(view, push) }),
    act: act({ label: say("push.mark_act"), note: say("push.mark_note"), does: report(view, { what: "mark_reached" }) }),
  }),
  packer_back: (view, push) => ({
    main: html`<h2 class="head-row">${say("push.needs")}</h2>${conditions([
      { state: "met", text: say("push.reached"), note: say("push.reached_note", { took: minSec(push.reached[0].moment.at_ms - push.begun.moment.at_ms, "up") }) },
      ...goLine(view),
      { state: push.back && !push.back[1] ? "failed" : "open", text: say("push.back"), note: say("push.back_note") },
    ])}`,
    act: act({ label: say("push.back_act"), note: say("push.back_act_note"), does: report(view, { what: "packer_back", sound: true }) }),
  }),
};

const goLine = (view) => (view.go?.broken.length > 0
  ? view.go.broken.map((one) => ({ state: "failed", text: one.says, note: one.way_out }))
  : [{ state: "met", text: say("push.time_go", { spare: minSec(view.go?.budget?.spare_ms ?? 0) }), note: say("push.time_again") }]);

const limit = (view, push) => say("push.since", { at: at(view, push.begun.moment.at_ms, true) });
