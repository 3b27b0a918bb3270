// The charge of the battery, where the browser tells it.

/** Returns { percent() }: a whole number, or null while unknown. */
export function createBattery(navigator) {
  let battery = null;
  navigator.getBattery?.().then((found) => { battery = found; }, () => {});
  return { percent: () => (battery ? Math.floor(battery.level * 100) : null) };
}
