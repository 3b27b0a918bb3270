// A drop of water, a second finger, a tap that came too late: what lies under it has just changed, so it does nothing.

/** How long what is new on the screen takes no touch, in ms. Shorter than anybody reads and longer than a finger bounces. */
export const FRESH_MS = 400;

/** What a touch may set off: the one act, and whatever sends a request. */
const ACTS = ".deck > .act, button:is([data-request], [type=submit])";

/**
 * Listens for touches below `root`, in the stages of a repair. Returns { shown() }, to be called when the screen was drawn. A key or a screen reader's press has
 * no place on the glass and always counts. `ports`: later(ms, run) returning a handle, and stop(handle).
 */
export function listenForGhosts(root, ports) {
  let before = null;
  let handle = null;

  root.addEventListener("click", (event) => {
    if (root.dataset.fresh !== "yes" || event.detail === 0 || !event.target.closest?.(ACTS)) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  }, true);

  return {
    shown() {
      const now = root.querySelector("main.stage") ? identity(root) : null;
      if (now === before) return;
      before = now;
      ports.stop(handle);
      if (now === null) { delete root.dataset.fresh; return; }
      root.dataset.fresh = "yes";
      handle = ports.later(FRESH_MS, () => { delete root.dataset.fresh; });
    },
  };
}

// Where we are and what the act does; its words may count minutes.
function identity(root) {
  const act = root.querySelector(".deck > .act");
  return [root.querySelector("h1")?.textContent, act?.getAttribute("href"), act?.getAttribute("form"), act?.dataset.hold, without(act?.dataset.request)].join("\n");
}

// The time in a request runs with the clock.
const without = (request) => request?.replace(/"ago_ms":\d+/, "");
