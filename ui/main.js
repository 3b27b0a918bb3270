// Start, route, one submit listener, one click listener. The only file that touches the document outside a screen.

import { ask } from "./bridge.js";
import { patch } from "./patch.js";
import { route } from "./route.js";
import { createStore } from "./store.js";
import * as today from "./screens/today.js";
import * as lost from "./screens/lost.js";

/** By route: the screen, and what it asks the core for. */
const SCREENS = {
  today: { screen: today, asks: () => ({ do: "today" }) },
  lost: { screen: lost },
};

const store = createStore({
  ask,
  storage: localStorage,
  monotonic: () => performance.now(),
  newId: () => crypto.randomUUID(),
  facts: () => ({}),
  later: (ms, run) => setTimeout(run, ms),
});

function show() {
  const { name, params } = store.state.route;
  const { screen } = SCREENS[name];
  const view = { ...store.state.answer, params, now: store.now() };
  patch(document.getElementById("root"), screen.render(view));
  document.title = `${screen.title(view)} · Mendline`;
}

function arrive() {
  store.go(route(location.hash));
  const { name, params } = store.state.route;
  if (SCREENS[name].asks) store.look(SCREENS[name].asks(params));
  document.querySelector("h1")?.focus();
}

store.subscribe(show);
addEventListener("hashchange", arrive);
arrive();
store.flush();
