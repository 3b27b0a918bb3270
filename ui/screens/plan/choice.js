// What the core is asked for the plan. It stands apart from the screen, so that the question need not wait for it.

/**
 * Returns what of the plan's form goes with the question, if it was changed on this screen. A set of temperatures goes only
 * whole; an empty place for a closure is none.
 */
export function choiceOf(fields) {
  if (!fields?.choice) return {};
  const { temperatures, closures, ...choice } = fields.choice;
  const whole = ["resin_mc", "air_mc", "pipe_mc"].every((name) => temperatures?.[name] !== undefined);
  return { choice: { ...choice, ...(whole && { temperatures }), closures: (closures ?? []).filter((one) => one?.what && one.until_ms) } };
}
