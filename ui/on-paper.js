// Keying in from paper: what happened, happened when the sheet says.

/** Returns the moment that stands on the sheet, in ms, or nothing while nothing is keyed in from paper. `typed` is what was set. */
export function onPaper({ on, day, time } = {}) {
  if (on !== "yes" || !day || !time) return undefined;
  const at = new Date(`${day}T${time}`).getTime();
  return Number.isNaN(at) ? undefined : at;
}
