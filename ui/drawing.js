// Draws the screen of the route with what the core answered, and keeps the focus where a reader needs it.

import { banner } from "./parts/banner.js";
import { html } from "./html.js";
import { patch, place } from "./patch.js";
import { SCREENS } from "./screens.js";
import { say } from "./text/say.js";

/**
 * Returns what draws into `root`. `words()` says whether there are words yet, `usable(name)` whether a screen could be used now, `more()` adds to the answer what a screen is told
 * besides, `drawn(answer)` is told of every drawing, `stands()` when a screen is drawn whole after it was opened.
 */
export function createDrawing({ root, store, words, usable, more, drawn, stands }) {
  let arriving = true;
  let headed = null;
  let focused = null;

  // A screen with a fault must not take the clocks and the way back with it.
  function drawnOf(screen, view) {
    try { return { title: screen.title(view), body: screen.render(view) }; } catch (problem) {
      console.error(problem);
      return { title: SCREENS.broken.screen.title(view), body: SCREENS.broken.screen.render(view) };
    }
  }

  // On arrival the heading takes the focus, so that a reader begins there.
  function arrived() {
    arriving = false;
    scrollTo(0, 0);
    root.querySelector("h1")?.focus({ preventScroll: true });
    stands();
  }

  function focusNew() {
    const wanted = root.querySelector("[data-focus]");
    if (wanted && wanted.textContent !== focused) wanted.focus();
    focused = wanted?.textContent ?? null;
  }

  return {
    /** Brings the screen to its top when it is drawn next. */
    arrive: () => { arriving = true; },
    /** Draws. `away` says that the screen of the route could not be fetched. */
    show(away) {
      const { answer, route: { name, params }, refusal, problems, error } = store.state;
      const { asks, tells = false } = SCREENS[name];
      const screen = away ? SCREENS.broken.screen : SCREENS[name].screen;
      const ready = words() && (away || (usable(name) && screen && (!asks || answer !== null)));
      const view = { ...answer, params, now: store.now(), drafts: store.drafts(), refusal, problems, error, away, ...more() };
      const { title, body } = drawnOf(ready ? screen : SCREENS.opening.screen, view);
      // A screen of a repair says itself what was refused, beside the way out.
      const draw = ready && arriving ? place : patch;
      draw(root, html`${banner(tells ? { ...store.state, refusal: null } : store.state)}${body}`);
      document.title = `${title} · ${say("app.name")}`;
      drawn(answer);
      // The next stage begins at its top like a new screen, though its address is the same.
      const head = `${title} ${view.next?.act === "join"}`;
      if (ready && name === "repair" && !params.sub && head !== headed) arriving = true;
      headed = head;
      if (ready && arriving) arrived();
      focusNew();
    },
  };
}
