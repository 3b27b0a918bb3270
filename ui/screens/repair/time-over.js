// The working time is over: where is the patch? Each answer has its do-now, and how it ends.

import { html } from "../../html.js";
import { minSec, quantity, range } from "../../format.js";
import { places } from "../../drawings/places.js";
import { alarm } from "../../parts/alarm.js";
import { form } from "../../parts/action.js";
import { count } from "../../parts/count.js";
import { deck, usual } from "../../parts/deck.js";
import { hold } from "../../parts/hold.js";
import { doNow, note } from "../../parts/note.js";
import { say } from "../../text/say.js";
import { at, computed, foreman, frame, nowOf, report, tell, to, where } from "./frame.js";
import { lineOf } from "./drawn.js";
import { inPipe } from "./ended.js";
import { pressure, targetAct } from "./runs.js";
import { short } from "./who.js";

const CORE = { table: "on_table", in_pipe: "in_pipe", at_wall: "touching_wall", stuck: "stuck" };

export const title = ({ trouble }) => say(trouble?.place ? `trouble.${trouble.place}` : "trouble.where");

export const render = (view) => (view.trouble?.place ? answered(view, view.trouble.place) : asked(view));

/** The question again, where the first answer was wrong. */
export const place = { title: () => say("trouble.where"), render: (view) => (view.trouble?.kind === "time_over" ? asked(view) : render(view)) };

const deadline = (view) => view.trouble?.deadline_ms ?? view.clock?.deadline_ms ?? nowOf(view);
const over = (view) => Math.max(0, nowOf(view) - deadline(view));
const strong = (view) => ({ ...where(view), where: `${view.repair.line.street} · ${view.repair.number}` });

function asked(view) {
  const since = at(view, deadline(view));
  return frame(view, {
    kind: "troubled", mainKind: "stage over-main",
    top: alarm({ ...strong(view), what: say("trouble.over"), title: say("trouble.where"), beside: count({ figure: `+${minSec(over(view), "up")}`, lines: [say("trouble.since", { at: since })] }) }),
    main: html`${places((one) => ({ does: report(view, { what: "patch_is", place: CORE[one] }), then: to(view) }))}<p class="soft">${say("trouble.doubtful", { at: since })}</p>`,
    foot: deck({ more: usual({ repair: view.repair.id }) }),
  });
}

function answered(view, said) {
  const { steps = {}, more, act } = ANSWERS[said](view);
  return frame(view, {
    kind: "troubled",
    top: alarm({ ...strong(view), what: say("trouble.over_by", { by: minSec(over(view), "up") }), title: say(`trouble.${said}`) }),
    main: html`${doNow([1, 2, 3].map((n) => steps[n] ?? say(`trouble.${said}_${n}`)))}${note({ lead: said === "stuck" ? say("trouble.if_it_sets") : said === "touching_wall" ? say("trouble.in_doubt") : undefined, text: say(`trouble.${said}_note`, { n: view.attempt + 1 }) })}
      ${more}${said !== "on_table" && lineOf(view, { kind: "only-tall" })}<p class="answered"><a href="${to(view, "place")}">${say("trouble.elsewhere")}</a></p>`,
    foot: deck({ more: usual({ repair: view.repair.id }), act }),
  });
}

const callForeman = (view) => (foreman(view) ? say("trouble.call", { name: short(foreman(view)) }) : say("trouble.call_foreman"));

const ANSWERS = {
  on_table: (view) => ({ act: ends(view, { outcome: "discarded", label: say("trouble.discarded"), reason: say("trouble.reason_table"), in_pipe: say("ended.says_nothing") }) }),
  in_pipe: (view) => ({
    more: form({ id: "over", then: to(view), does: ending(view, { outcome: "discarded", reason: say("trouble.reason_pipe"), in_pipe: say("ended.says_nobody") }), kind: "section-gap", inside: html`<p class="entry-label">${say("ended.in_pipe")}</p>${inPipe(view, view.drafts?.over ?? {})}` }),
    act: hold({ label: say("trouble.discarded"), note: say("trouble.ends", { n: view.attempt }), form: "over" }),
  }),
  touching_wall: (view) => {
    const { window } = computed(view);
    return {
      steps: { 2: say("trouble.keep", { target: quantity("bar", window.target_pa), range: range("bar", window.lower_pa, window.upper_pa) }), 3: callForeman(view) },
      more: pressure(view), act: targetAct(view, say("trouble.late_kept", { by: minSec(over(view), "up") })),
    };
  },
  stuck: (view) => ({ steps: { 3: callForeman(view) }, act: ends(view, { outcome: "left_in_pipe", label: say("trouble.left"), reason: say("trouble.reason_stuck"), in_pipe: say("ended.says_still") }) }),
};

const ending = (view, { outcome, reason, in_pipe }) => tell(view, { command: "end_attempt", outcome, reasons: [reason], in_pipe });
const ends = (view, { label, ...end }) => hold({ label, note: say("trouble.ends", { n: view.attempt }), then: to(view), does: ending(view, end) });
