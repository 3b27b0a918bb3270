// By route: the screen, what it asks the core for, and whether a clock runs on it (`live`).

import * as lost from "./screens/lost.js";
import * as opening from "./screens/opening.js";
import * as today from "./screens/today.js";

export const SCREENS = {
  today: { screen: today, asks: () => ({ do: "today" }), live: true },
  opening: { screen: opening },
  lost: { screen: lost },
};
