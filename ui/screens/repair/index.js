// One repair: the screen follows from what the core says is next. A word in the address opens a side screen.

import * as aside from "./aside.js";
import * as between from "./between.js";
import * as certificate from "./certificate.js";
import * as correct from "./correct.js";
import * as fillIn from "./fill-in.js";
import * as go from "./go.js";
import * as hold from "./hold.js";
import * as join from "./join.js";
import * as laterals from "./laterals.js";
import * as planned from "./planned.js";
import * as push from "./push.js";
import * as rest from "./rest.js";
import * as reading from "./reading.js";
import * as review from "./review.js";
import * as runs from "./runs.js";
import * as sign from "./sign.js";
import * as stop from "./stop.js";
import * as tasks from "./tasks.js";
import * as trouble from "./trouble.js";
import * as verification from "./verification.js";

const SIDE = {
  stop, reading, review, correct, sign, certificate, verify: verification,
  lateral: laterals,
  rest,
  photo: aside.photo,
  note: aside.note,
  ago: aside.ago,
  ended: aside.ended,
  fill: fillIn,
  tasks,
  sample: hold.sample,
  hold,
  place: trouble.place,
  go,
};

const BY_ACT = {
  plan: planned, second_go: go, join, target: runs, push_begun: push, mark_reached: push, packer_back: push,
  reading: hold, sample: hold, release: hold, new_attempt: between, sign, issue: certificate, certificate,
};

const BY_STAGE = { staging: tasks, test_push: tasks, sleeve_change: tasks, deflation: tasks, verification };

/** Returns the screen that a view of a repair calls for. */
export function chosen(view) {
  const side = SIDE[view.params.sub];
  if (side) return side;
  if (view.trouble) return trouble;
  if (view.standing === "planned") return planned;
  return BY_ACT[view.next.act] ?? BY_STAGE[view.stage] ?? certificate;
}

export const title = (view) => chosen(view).title(view);
export const render = (view) => chosen(view).render(view);
