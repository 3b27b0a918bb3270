// The warnings of the working time: when half of it is gone, and how little is left. Common practice, no source.

const MINUTE = 60_000;

/** The warnings before the end, from the mildest on, in ms before it. One that would come before half is left out. */
const BEFORE = { ten: 10 * MINUTE, five: 5 * MINUTE, one: MINUTE, over: 0 };

/** Returns the warnings of a clock { working_ms, deadline_ms } in their order, as { name, at_ms }. Without a working time there is no half. */
export function warningsOf({ working_ms: working = Infinity, deadline_ms: deadline }) {
  const half = Math.ceil(working / 2);
  return [
    ...(Number.isFinite(half) ? [{ name: "half", at_ms: deadline - half }] : []),
    ...Object.entries(BEFORE).filter(([, before]) => before < half).map(([name, before]) => ({ name, at_ms: deadline - before })),
  ];
}

/** Returns the name of the warning that holds at `now`, in ms: the gravest that has come, or "calm". */
export const warningAt = (clock, now) => warningsOf(clock).findLast(({ at_ms }) => at_ms <= now)?.name ?? "calm";
