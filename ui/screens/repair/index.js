// One repair: the screen follows from what the core says is next. A word in the address opens a side screen.

import * as ago from "./ago.js";
import * as between from "./between.js";
import * as certificate from "./certificate.js";
import * as correct from "./correct.js";
import * as debrief from "./debrief.js";
import * as ended from "./ended.js";
import * as fillIn from "./fill-in.js";
import * as go from "./go.js";
import * as handOver from "./hand-over.js";
import * as hold from "./hold.js";
import * as join from "./join.js";
import * as keyed from "./keyed.js";
import * as label from "./label.js";
import * as laterals from "./laterals.js";
import * as mark from "./mark.js";
import * as measure from "./measure.js";
import * as note from "./note.js";
import * as photo from "./photo.js";
import * as planned from "./planned.js";
import * as pressure from "./pressure.js";
import * as push from "./push.js";
import * as reading from "./reading.js";
import * as rest from "./rest.js";
import * as review from "./review.js";
import * as runs from "./runs.js";
import * as sample from "./sample.js";
import * as sign from "./sign.js";
import * as stop from "./stop.js";
import * as takeOver from "./take-over.js";
import * as tasks from "./tasks.js";
import * as timeOver from "./time-over.js";
import * as verification from "./verification.js";

const SIDE = {
  ago, correct, ended, fill: fillIn, go, keyed, label, mark, measure, note, photo, review, rest, sign, certificate, stop, tasks,
  lateral: laterals, place: timeOver.place, verify: verification,
};

/** Side screens that need the hold: before target pressure there is nothing to show on them. */
const IN_HOLD = { hold, reading, sample, handover: handOver.ask };

const BY_ACT = {
  plan: planned, second_go: measure, join, target: runs, push_begun: push, mark_reached: push, packer_back: push,
  reading: hold, sample: hold, release: hold, new_attempt: between, sign, issue: certificate, certificate,
};

const BY_STAGE = { staging: tasks, test_push: tasks, sleeve_change: tasks, deflation: tasks, verification };

const TROUBLE = { time_over: timeOver, pressure };

/** Returns the screen that a view of a repair calls for. */
export function chosen(view) {
  if (view.params.sub === "debrief" && view.practice) return debrief;
  const side = SIDE[view.params.sub] ?? (view.hold && IN_HOLD[view.params.sub]);
  if (side) return side;
  if (view.handed?.offered) return takeOver;
  if (view.handed?.away) return handOver.given;
  if (view.trouble) return TROUBLE[view.trouble.kind];
  if (view.standing === "planned") return planned;
  return BY_ACT[view.next.act] ?? BY_STAGE[view.stage] ?? certificate;
}

export const title = (view) => chosen(view).title(view);
export const render = (view) => chosen(view).render(view);
