// What a clock wants to have said, and when. The moments are the core's; here they only become sound, words and a notice.

import { say } from "./text/say.js";

const MINUTE = 60_000;
const AGAIN_MS = 30_000;
/** What is said again and again is said no longer than this. */
const LONGEST_MS = 10 * MINUTE;

/**
 * Returns the reminders of an answer of the core, for every repair in it whose clock runs: { at_ms, cue, says, every_ms? }.
 * A cue is tap, warn or alarm; `every_ms` says it again and again from then on.
 */
export function remindersOf(answer) {
  if (answer?.kind === "repair") return [...ofRepair(nodeOf(answer.repair), answer), ...(answer.others ?? []).flatMap(ofOther)];
  if (answer?.kind === "today") return [...answer.mixed, ...answer.holding].flatMap((one) => ofRepair(one.summary.node, one));
  return [];
}

const nodeOf = ({ plan, line }) => (plan?.choice.from_node === "downstream" ? line.downstream.name : line.upstream.name);

function ofRepair(node, { clock, hold, trouble }) {
  const runs = clock && !clock.stopped_ms && !hold;
  return [...(runs ? ofClock(node, clock, trouble) : []), ...(hold ? ofHold(node, hold, trouble) : [])];
}

function ofClock(node, clock, trouble) {
  const flags = [["way_in", clock.way_in_ms, clock.insertion_ms], ["inflate", clock.inflate_ms, null], ["on_target", clock.on_target_ms, null]];
  return [
    { at_ms: clock.mix_until_ms, cue: "tap", says: say("remind.mixed", { node }) },
    ...flags.filter(([, , done]) => !done).flatMap(([name, at]) => [
      { at_ms: at - MINUTE, cue: "warn", says: say(`remind.${name}_soon`, { node }) },
      { at_ms: at, cue: "warn", says: say(`remind.${name}`, { node }) },
    ]),
    { at_ms: clock.deadline_ms - MINUTE, cue: "warn", says: say("remind.deadline_soon", { node }) },
    // Nobody has said where the patch is: it is asked until somebody does.
    { at_ms: clock.deadline_ms, cue: "alarm", says: say("remind.deadline", { node }), every_ms: trouble?.place ? undefined : AGAIN_MS },
  ];
}

function ofHold(node, hold, trouble) {
  if (hold.released_ms || hold.reading_due_ms === null) return [];
  return [
    ...ofReading(node, hold.reading_due_ms),
    { at_ms: hold.gap_from_ms, cue: "alarm", says: say("remind.gap", { node }) },
    ...(trouble?.kind === "pressure" ? [{ at_ms: trouble.at_ms, cue: "alarm", says: say(trouble.low ? "remind.low" : "remind.high", { node }), every_ms: 2 * MINUTE }] : []),
  ];
}

const ofReading = (node, due) => [
  { at_ms: due - MINUTE, cue: "warn", says: say("remind.reading_soon", { node }) },
  { at_ms: due, cue: "warn", says: say("remind.reading", { node }) },
];

const ofOther = ({ node, due_ms: due, holding }) => (holding ? ofReading(node, due) : [
  { at_ms: due - MINUTE, cue: "warn", says: say("remind.deadline_soon", { node }) },
  { at_ms: due, cue: "alarm", says: say("remind.deadline", { node }), every_ms: AGAIN_MS },
]);

/**
 * Returns the reminders at work. `ports`: play(cue), speak(sentence), notice(sentence). What was due before the first look
 * at the clock is not said afterwards.
 */
export function createReminders({ play, speak, notice }) {
  let list = [];
  let last = null;

  const fallsDue = (now) => ({ at_ms: at, every_ms: every }) => {
    if (at > now || at === null) return false;
    if (every && now - at > LONGEST_MS) return false;
    return every ? Math.floor((now - at) / every) > Math.floor((last - at) / every) : at > last;
  };

  return {
    /** Takes what the core says of the clocks; other answers leave the reminders as they are. */
    take(answer) { if (["repair", "today"].includes(answer?.kind)) list = remindersOf(answer); },
    /** Says what fell due since the last tick: the gravest cue once, every sentence. */
    tick(now) {
      last ??= now;
      const due = list.filter(fallsDue(now));
      last = Math.max(last, now);
      if (due.length === 0) return;
      play(["alarm", "warn", "tap"].find((cue) => due.some((one) => one.cue === cue)));
      const says = [...new Set(due.map((one) => one.says))].join(" ");
      speak(says);
      notice(says);
    },
  };
}
