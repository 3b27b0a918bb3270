// The tasks of a stage: what is open comes first, each with its answers; below it the air, the photos and what is answered.

import { html } from "../../html.js";
import { conditions } from "../../parts/conditions.js";
import { act, deck, small, usual } from "../../parts/deck.js";
import { section } from "../../parts/section.js";
import { way } from "../../parts/way.js";
import { say } from "../../text/say.js";
import { frame, sending, tell, to } from "./frame.js";
import { inTheWay, strip, withoutTasks } from "./gate.js";
import { air } from "./air.js";
import { photosAsked } from "./photo.js";
import { pushed } from "./push.js";
import { spot, worked } from "./worked.js";
import { answeredTask, asked, begun, formOf, openTask } from "./task.js";

export { asked };

const NEXT = { staging: "test_push", test_push: "sleeve_change", sleeve_change: "wet_out", deflation: "verification" };

export const title = (view) => say(`stage.${view.stage}`);

export function render(view) {
  const shown = view.tasks.filter(({ stage }) => stage === view.stage);
  const open = shown.filter((task) => !task.answer && task.mandatory);
  const one = current(view, shown, open);
  const done = shown.filter((task) => task.answer && task !== one);
  return frame(view, {
    title: title(view),
    main: html`${view.stage === "test_push" && pushed(view)}${late(view)}
      ${one && html`<h2 class="head-row">${say("tasks.title")} <small>${say("tasks.open", { n: open.length, of: shown.filter(({ mandatory, answer }) => mandatory || answer).length })}</small></h2>
        ${conditions([...(open.includes(one) ? [] : [one]), ...open].map((task) => openTask(view, task, task === one)), "tasks")}`}
      ${inTheWay(view, withoutTasks(view.next.gate?.broken ?? []))}
      ${view.stage === "staging" && air(view)}${photosAsked(view, view.stage)}
      ${done.length > 0 && section({ id: "answered", title: say("tasks.answered"), aside: String(done.length), inside: conditions(done.map((task) => answeredTask(view, task))) })}
      ${view.stage === "staging" && html`${spot(view.spot)}${worked(view, "staging")}`}${more(view)}`,
    foot: foot(view, one),
  });
}

// What somebody has begun to answer, or else the first that is open.
function current(view, shown, open) {
  const named = shown.find(({ key }) => key === view.params.key);
  return named ?? open.find((task) => begun(view, task)) ?? open[0];
}

// What was left while the resin ran.
const late = (view) => {
  const n = view.tasks.filter(({ overdue }) => overdue).length;
  return n > 0 && way({ label: say("verify.earlier", { n }), note: say("verify.earlier_note"), kind: "later", href: to(view, "fill") });
};

// Where the screen is low, the row of small actions stands at the end.
const more = (view) => section({ id: "more", title: say("today.more"), inside: html`${["photo", "note"].map((name) => way({ label: say(`${name}.title`), note: say(`${name}.about`), href: to(view, name) }))}
  ${way({ label: say("stop.title"), note: say("stop.about"), href: to(view, "stop") })}${sending(view)}` });

/** Returns the foot of a stage: the gate, Stop, and the next thing to do. */
function foot(view, one) {
  const next = say(`next.${NEXT[view.stage]}`);
  return deck({ gate: strip(view, next, small({ mark: "stop", label: say("deck.stop"), href: to(view, "stop") })), more: usual({ repair: view.repair.id }), spare: !view.next.gate?.open, act: step(view, one, next) });
}

function step(view, one, next) {
  if (one) return act({ label: one.label, note: say("tasks.records"), mark: "tick", form: formOf(one) });
  const photo = view.photos.find(({ taken, stage }) => !taken && stage === view.stage);
  if (photo && waits(view, photo)) return act({ label: say("photos.take"), note: photo.label, mark: "photo", href: to(view, `photo/${photo.key}`) });
  if (!view.next.gate?.open) return act({ label: say("gate.see"), note: view.next.gate?.broken[0]?.says, mark: "lock", href: "#in-the-way", more: html`data-jump="in-the-way"` });
  return act({ label: next, note: say("tasks.go_on_note"), does: tell(view, { command: "go_on" }), then: to(view) });
}

// A photo that the foreman waived is not asked for any more.
const waits = (view, photo) => view.next.gate?.broken.some(({ rule, subject, waived }) => rule === "photo_missing" && subject === photo.key && !waived);
