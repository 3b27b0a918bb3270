// By route: the screen, what it asks the core for, whether a clock runs on it (`live`), and whether it says itself what was
// refused (`tells`). Each comes by `load` when it is opened, so that the first one waits for no other; the page names that one too.

import * as broken from "./screens/broken.js";
import * as opening from "./screens/opening.js";
import { choiceOf } from "./screens/plan/choice.js";
import * as worked from "./screens/worked/asks.js";

export const SCREENS = {
  today: { load: () => import("./screens/today.js"), asks: () => ({ do: "today" }), live: true },
  repair: { load: () => import("./screens/repair/index.js"), asks: ({ id }) => ({ do: "repair", repair: id }), live: true, tells: true },
  plan: { load: () => import("./screens/plan.js"), asks: ({ id }, _, asked) => ({ do: "plan", repair: id, ...choiceOf(asked[`plan-${id}`]) }) },
  branches: { load: () => import("./screens/branches.js"), asks: ({ id }) => ({ do: "branches", repair: id }), tells: true },
  paper: { load: () => import("./screens/paper.js"), asks: ({ id }) => ({ do: "paper", repair: id }) },
  intake: { load: () => import("./screens/intake.js"), asks: () => ({ do: "inspections" }) },
  line: { load: () => import("./screens/line.js"), asks: ({ file, index }) => ({ do: "inspection", file, index: Number(index) }) },
  by_hand: { load: () => import("./screens/by-hand.js"), asks: () => ({ do: "shelf" }) },
  search: { load: () => import("./screens/search.js"), asks: (_, draft) => ({ do: "list", text: draft("search").text ?? "" }) },
  setup: { load: () => import("./screens/setup.js"), asks: () => ({ do: "shelf" }) },
  shelf: { load: () => import("./screens/shelf.js"), asks: () => ({ do: "shelf" }) },
  send: { load: () => import("./screens/send.js"), asks: () => ({ do: "bundles" }) },
  backup: { load: () => import("./screens/backup.js"), asks: () => ({ do: "today" }) },
  follow: { load: () => import("./screens/follow.js") },
  followed: { load: () => import("./screens/followed.js"), asks: ({ id }) => ({ do: "followed", repair: id }), live: true },
  take: { load: () => import("./screens/take.js"), asks: () => ({ do: "bundles" }) },
  numbers: { load: () => import("./screens/numbers.js"), asks: () => ({ do: "numbers" }) },
  people: { load: () => import("./screens/people.js"), asks: () => ({ do: "shelf" }) },
  check: { load: () => import("./screens/check.js") },
  practice: { load: () => import("./screens/practice.js") },
  checks: { load: () => import("./screens/checks.js"), asks: worked.asks },
  help: { load: () => import("./screens/help.js"), asks: () => ({ do: "rules" }) },
  lost: { load: () => import("./screens/lost.js") },
  opening: { screen: opening },
  broken: { screen: broken },
};

/** Fetches the screen of a route, if it is not here yet. Errors: rejects when it can't be fetched. */
export async function fetchScreen(name) {
  const row = SCREENS[name];
  row.screen ??= await row.load();
}

/** Fetches all screens that are not here yet, one after the other, each after `pause()`. Errors: rejects at the first that can't be fetched. */
export async function fetchAll(pause = () => {}) {
  for (const [name, { screen }] of Object.entries(SCREENS)) {
    if (screen) continue;
    await pause();
    await fetchScreen(name);
  }
}
