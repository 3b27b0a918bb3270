// By route: the screen, what it asks the core for, whether a clock runs on it (`live`), and whether it says itself what was
// refused (`tells`).

import * as checks from "./screens/checks.js";
import * as check from "./screens/check.js";
import * as backup from "./screens/backup.js";
import * as branches from "./screens/branches.js";
import * as broken from "./screens/broken.js";
import * as byHand from "./screens/by-hand.js";
import * as help from "./screens/help.js";
import * as intake from "./screens/intake.js";
import * as line from "./screens/line.js";
import * as lost from "./screens/lost.js";
import * as numbers from "./screens/numbers.js";
import * as opening from "./screens/opening.js";
import * as paper from "./screens/paper.js";
import * as people from "./screens/people.js";
import * as plan from "./screens/plan.js";
import * as practice from "./screens/practice.js";
import * as repair from "./screens/repair/index.js";
import * as search from "./screens/search.js";
import * as send from "./screens/send.js";
import * as setup from "./screens/setup.js";
import * as shelf from "./screens/shelf.js";
import * as take from "./screens/take.js";
import * as today from "./screens/today.js";

export const SCREENS = {
  today: { screen: today, asks: () => ({ do: "today" }), live: true },
  repair: { screen: repair, asks: ({ id }) => ({ do: "repair", repair: id }), live: true, tells: true },
  branches: { screen: branches, asks: ({ id }) => ({ do: "branches", repair: id }), tells: true },
  plan: { screen: plan, asks: ({ id }, _, asked) => ({ do: "plan", repair: id, ...plan.choiceOf(asked[`plan-${id}`]) }) },
  paper: { screen: paper, asks: ({ id }) => ({ do: "paper", repair: id }) },
  intake: { screen: intake, asks: () => ({ do: "inspections" }) },
  line: { screen: line, asks: ({ file, index }) => ({ do: "inspection", file, index: Number(index) }) },
  by_hand: { screen: byHand, asks: () => ({ do: "shelf" }) },
  search: { screen: search, asks: (_, draft) => ({ do: "list", text: draft("search").text ?? "" }) },
  setup: { screen: setup, asks: () => ({ do: "shelf" }) },
  shelf: { screen: shelf, asks: () => ({ do: "shelf" }) },
  send: { screen: send, asks: () => ({ do: "bundles" }) },
  backup: { screen: backup, asks: () => ({ do: "today" }) },
  take: { screen: take, asks: () => ({ do: "bundles" }) },
  numbers: { screen: numbers, asks: () => ({ do: "numbers" }) },
  people: { screen: people, asks: () => ({ do: "shelf" }) },
  check: { screen: check },
  practice: { screen: practice },
  checks: { screen: checks, asks: checks.asks },
  help: { screen: help, asks: () => ({ do: "rules" }) },
  opening: { screen: opening },
  lost: { screen: lost },
  broken: { screen: broken },
};
