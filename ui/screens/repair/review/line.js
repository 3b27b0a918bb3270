// Both attempts on a line of time, with a numbered mark where something went off the plan.

import { timeLine } from "../../../drawings/time-line.js";
import { figure } from "../../../drawings/svg.js";
import { say, within } from "../../../text/say.js";

/** Room left and right of the first and the last moment, as a share of the whole. */
const ROOM = 0.04;

/** Returns the drawing, or nothing before the first attempt. */
export function timeOf({ repair, review, now }) {
  const attempts = repair.attempts.filter(({ spans }) => spans.length > 0).map(attempt(now?.at_ms ?? repair.last_moment.at_ms));
  if (attempts.length === 0) return "";
  const moments = attempts.flatMap(({ spans }) => spans.flatMap(({ from_ms, to_ms }) => [from_ms, to_ms]));
  const room = (Math.max(...moments) - Math.min(...moments)) * ROOM || 60_000;
  const [from, to] = [Math.min(...moments) - room, Math.max(...moments) + room];
  return figure({ inside: timeLine({
    id: "attempts", from_ms: from, to_ms: to, offset_min: now?.offset_min ?? 0, attempts, gaps: review.off.filter(({ what }) => what.kind === "gap").map(({ what }) => what),
    marks: review.off.filter(({ at_ms: at }) => at !== null && at >= from && at <= to).map(({ at_ms, n, open: needs }) => ({ at_ms, n, needs })),
    label: say("review.line", { n: attempts.length, marks: review.off.length }),
  }) });
}

const NAMED = ["hold", "verification"];

const attempt = (end) => ({ n, spans, ended }) => {
  const failed = Boolean(ended) && ended.outcome !== "accepted";
  const last = ended?.at.moment.at_ms ?? end;
  // A stage that was told afterwards may begin before the one before it: no stage is drawn backwards.
  return { name: say("between.attempt", { n }), failed, spans: spans.map(({ stage, begun, ended: over }, i) => ({
    from_ms: begun.moment.at_ms, to_ms: Math.max(begun.moment.at_ms, over?.moment.at_ms ?? spans[i + 1]?.begun.moment.at_ms ?? last),
    solid: stage === "hold" && !failed, name: NAMED.includes(stage) && !failed ? within(say(`stage.${stage}`)) : undefined,
  })) };
};
