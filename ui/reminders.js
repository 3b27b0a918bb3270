// What a clock wants to have said, and when. The moments are the core's; here they only become sound, words and a notice.

import { say } from "./text/say.js";
import { warningsOf } from "./warnings.js";

const MINUTE = 60_000;
const AGAIN_MS = 30_000;
/** What is said again and again is said no longer than this. */
const LONGEST_MS = 10 * MINUTE;

const WARNING_CUES = { half: "warn", ten: "warn", five: "alarm", one: "alarm", over: "alarm" };

/**
 * Returns the reminders of an answer of the core, for every repair in it whose clock runs: { at_ms, cue, says, about, every_ms? }.
 * A cue is tap, done, warn or alarm; of those with the same `about` only the latest is worth saying; `every_ms` says it again and
 * again from then on.
 */
export function remindersOf(answer) {
  if (answer?.kind === "repair") return [...ofRepair(nodeOf(answer.repair), over(answer)), ...(answer.others ?? []).flatMap(ofOther)];
  if (answer?.kind === "today") return [...[...answer.mixed, ...answer.holding, ...answer.curing].flatMap((one) => ofRepair(one.summary.node, one)), ...(answer.followed ?? []).flatMap(ofFollowed)];
  if (answer?.kind === "followed") return ofFollowed(answer);
  return [];
}

/** Returns whether anything is timed in an answer: resin that hardens, a hold, a test push. Then nobody wants a dark screen. */
export function runs(answer) {
  if (answer?.kind === "today") return answer.mixed.length + answer.holding.length + (answer.followed ?? []).length > 0;
  if (answer?.kind === "followed") return true;
  if (answer?.kind !== "repair") return false;
  const { clock, hold } = over(answer);
  const { begun, reached } = answer.repair.attempts.at(-1)?.test_push ?? {};
  return Boolean(clock ?? hold) || Boolean(begun && !reached) || (answer.others ?? []).length > 0;
}

const nodeOf = ({ plan, line }) => (plan?.choice.from_node === "downstream" ? line.downstream.name : line.upstream.name);

/** What of a repair still runs: no clock after target pressure, release or the end of the attempt. */
function over({ repair, clock, hold, trouble, cure }) {
  const { released, ended } = repair.attempts.at(-1) ?? {};
  const ends = released || ended;
  return { clock: ends || clock?.stopped_ms ? undefined : clock ?? undefined, hold: ends ? undefined : hold ?? undefined, trouble, cure: ended ? undefined : cure };
}

function ofRepair(node, { clock, hold, trouble, cure }) {
  return [...(clock ? ofClock(node, clock, trouble) : []), ...(hold ? ofHold(node, hold, trouble) : []), ...(cure && !cure.reached ? [{ at_ms: cure.until_ms, cue: "done", says: say("remind.cured", { node }), about: `${node} cure` }] : [])];
}

function ofClock(node, clock, trouble) {
  const inflated = clock.air_joined_ms ?? null;
  const flags = [["way_in", clock.way_in_ms, clock.insertion_ms ?? inflated], ["inflate", clock.inflate_ms, inflated], ["on_target", clock.on_target_ms, null]];
  return [
    { at_ms: clock.mix_until_ms, cue: "tap", says: say("remind.mixed", { node }), about: `${node} mix` },
    ...flags.filter(([, , done]) => !done).flatMap(([name, at]) => [
      { at_ms: at - MINUTE, cue: "warn", says: say(`remind.${name}_soon`, { node }), about: `${node} ${name}` },
      { at_ms: at, cue: "warn", says: say(`remind.${name}`, { node }), about: `${node} ${name}` },
    ]),
    ...ofWarnings(node, clock, trouble),
  ];
}

// Nobody has said where the patch is: it is asked until somebody does.
const ofWarnings = (node, clock, trouble) => warningsOf(clock).map(({ name, at_ms }) => ({
  at_ms, cue: WARNING_CUES[name], says: say(`remind.${name}`, { node }), about: `${node} left`, ...(name === "over" && !trouble?.place && { every_ms: AGAIN_MS }),
}));

function ofHold(node, hold, trouble) {
  if (hold.released_ms || hold.reading_due_ms === null) return [];
  return [
    ...ofReading(node, hold.reading_due_ms),
    { at_ms: hold.gap_from_ms, cue: "alarm", says: say("remind.gap", { node }), about: `${node} reading` },
    ...(hold.missing_ms > 0 ? [{ at_ms: hold.earliest_release_ms, cue: "done", says: say("remind.enough", { node }), about: `${node} enough` }] : []),
    ...(hold.leak?.limit_ms ? [{ at_ms: hold.leak.limit_ms - 5 * MINUTE, cue: "warn", says: say("remind.leak", { node }), about: `${node} leak` }] : []),
    ...(trouble?.kind === "pressure" ? [{ at_ms: trouble.at_ms, cue: "alarm", says: say(trouble.low ? "remind.low" : "remind.high", { node }), about: `${node} pressure`, every_ms: 2 * MINUTE }] : []),
  ];
}

const ofReading = (node, due) => [
  { at_ms: due - MINUTE, cue: "warn", says: say("remind.reading_soon", { node }), about: `${node} reading` },
  { at_ms: due, cue: "warn", says: say("remind.reading", { node }), about: `${node} reading` },
];

const ofOther = ({ node, due_ms: due, holding }) => (holding ? ofReading(node, due) : ofWarnings(node, { deadline_ms: due }));

// What is read and released there this phone does not know: it reminds of every reading until release is possible.
function ofFollowed({ repair: { node }, hold }) {
  const dues = [];
  for (let due = hold.reading_due_ms; due <= hold.earliest_release_ms; due += hold.interval_ms) dues.push(due);
  return dues.flatMap((due) => ofReading(node, due));
}

const GRAVEST = ["alarm", "warn", "done", "tap"];

/** Returns one sentence a subject, the latest. */
const latest = (due) => due.filter((one) => !due.some((other) => other.about === one.about && other.at_ms > one.at_ms)).sort((a, b) => a.at_ms - b.at_ms);

/**
 * Returns the reminders at work. `ports`: play(cue), speak(sentence), notice(sentence). What was due before the first look
 * at the clock is not said afterwards, but for what is said again and again.
 */
export function createReminders({ play, speak, notice }) {
  let list = [];
  let last = null;

  const fallsDue = (now) => ({ at_ms: at, every_ms: every }) => {
    if (at > now || at === null) return false;
    if (every && now - at > LONGEST_MS) return false;
    if (every && last === null) return true;
    const before = last ?? now;
    return every ? Math.floor((now - at) / every) > Math.floor((before - at) / every) : at > before;
  };

  return {
    /** Takes what the core says of the clocks; other answers leave the reminders as they are. */
    take(answer) { if (["repair", "today", "followed"].includes(answer?.kind)) list = remindersOf(answer); },
    /** Says what fell due since the last tick: the gravest cue once, and of each subject the latest sentence. */
    tick(now) {
      const due = latest(list.filter(fallsDue(now)));
      last = Math.max(last ?? now, now);
      if (due.length === 0) return;
      play(GRAVEST.find((cue) => due.some((one) => one.cue === cue)));
      const says = [...new Set(due.map((one) => one.says))].join(" ");
      speak(says);
      notice(says);
    },
    /** Returns what is to come after `now`, soonest first, as { at_ms, says }: for a device that sleeps meanwhile. */
    coming: (now) => list.flatMap(({ at_ms: at, every_ms: every, says }) => (every ? [0, 1, 2, 3, 4].map((n) => ({ at_ms: at + n * every, says })) : [{ at_ms: at, says }]))
      .filter(({ at_ms: at }) => at !== null && at > now).sort((a, b) => a.at_ms - b.at_ms),
  };
}
