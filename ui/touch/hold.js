// Hold to confirm, as a state machine and its listeners. A finger or a key rests two seconds; who can do neither (a screen
// reader's press has no length) presses twice within five seconds.

export const HOLD_MS = 2000;
export const AGAIN_MS = 5000;

export const IDLE = Object.freeze({ phase: "idle" });

/**
 * Returns the state after `event` at `ms`. Phases: idle · held (since) · armed (since: one press was made).
 * Events: down, up, leave (finger slid off, key lost, page hidden), tick, press (a press without a length).
 * A state with `done` has just confirmed, one with `early` was let go too soon, one with `lapsed` waited too long.
 */
export function next(state, event, ms) {
  switch (`${state.phase} ${event}`) {
    case "idle down": case "armed down": return { phase: "held", since: ms };
    case "held tick": return ms - state.since >= HOLD_MS ? { phase: "idle", done: true } : state;
    case "held up": case "held leave": return ms - state.since >= HOLD_MS ? { phase: "idle", done: true } : { phase: "idle", early: event === "up" };
    case "idle press": return { phase: "armed", since: ms };
    case "armed press": return ms - state.since < AGAIN_MS ? { phase: "idle", done: true } : { phase: "armed", since: ms };
    case "armed tick": return ms - state.since < AGAIN_MS ? state : { phase: "idle", lapsed: true };
    case "armed leave": return IDLE;
    default: return state.done || state.early || state.lapsed ? { ...IDLE } : state;
  }
}

/** Returns how much of the hold is over, 0 to 1. */
export const progress = (state, ms) => (state.phase === "held" ? Math.min(1, Math.max(0, (ms - state.since) / HOLD_MS)) : 0);

/**
 * Listens for every hold button below `root`, now and later. `ports`: confirmed(button), tell(kind, label) with "armed",
 * "early", "lapsed", "held", monotonic() in ms, frame(run) and stop(id) as requestAnimationFrame and its cancel.
 */
export function listenForHolds(root, ports) {
  let button = null;
  let state = IDLE;
  let running = 0;
  let touched = -Infinity;

  const holdOf = (target) => target.closest?.("button[data-hold]");

  function happen(event, on = button) {
    if (on !== button) { draw(IDLE); state = IDLE; button = on; }
    if (!button) return;
    const before = state;
    state = next(state, event, ports.monotonic());
    draw(state);
    if (state.done) finish(button);
    else if (state.early || state.lapsed) ports.tell(state.early ? "early" : "lapsed", button.dataset.hold);
    else if (state.phase !== before.phase && state.phase !== "idle") ports.tell(state.phase, button.dataset.hold);
    watch();
  }

  // The bar stays full until what was confirmed has been answered.
  async function finish(on) {
    try { await ports.confirmed(on); } finally { if (state.phase === "idle" && on === button) draw(IDLE); }
  }

  function draw(shown) {
    if (!button) return;
    button.style.setProperty("--held", `${(100 * (shown.done ? 1 : progress(shown, ports.monotonic()))).toFixed(1)}%`);
    if (shown.phase === "held") button.dataset.held = "yes";
    else if (shown.phase === "armed") button.dataset.held = "once";
    else delete button.dataset.held;
  }

  function watch() {
    ports.stop(running);
    // A button that was taken off the page can't be confirmed any more.
    if (state.phase !== "idle") running = ports.frame(() => happen(button.isConnected ? "tick" : "leave"));
  }

  root.addEventListener("pointerdown", (event) => {
    const on = holdOf(event.target);
    if (!on || event.button !== 0 || !event.isPrimary) return;
    touched = ports.monotonic();
    on.setPointerCapture?.(event.pointerId);
    happen("down", on);
  });
  root.addEventListener("pointermove", (event) => {
    if (state.phase === "held" && !within(button, event)) happen("leave");
  });
  for (const end of ["pointerup", "pointercancel"]) root.addEventListener(end, (event) => { if (holdOf(event.target) || state.phase === "held") { touched = ports.monotonic(); happen(end === "pointerup" ? "up" : "leave"); } });
  root.addEventListener("contextmenu", (event) => { if (holdOf(event.target)) event.preventDefault(); });

  root.addEventListener("keydown", (event) => {
    const on = holdOf(event.target);
    if (!on || (event.key !== " " && event.key !== "Enter")) return;
    event.preventDefault();
    if (!event.repeat) happen("down", on);
  });
  root.addEventListener("keyup", (event) => {
    if (!holdOf(event.target) || (event.key !== " " && event.key !== "Enter")) return;
    event.preventDefault();
    happen("up");
  });
  root.addEventListener("focusout", (event) => { if (event.target === button) happen("leave"); });
  root.ownerDocument.addEventListener("visibilitychange", () => happen("leave"));

  // A click that no finger and no key made comes from a screen reader, a switch or a voice.
  root.addEventListener("click", (event) => {
    const on = holdOf(event.target);
    if (!on) return;
    event.preventDefault();
    if (event.detail === 0 || ports.monotonic() - touched > HOLD_MS) happen("press", on);
  });
}

function within(element, { clientX: x, clientY: y }) {
  const box = element.getBoundingClientRect();
  const slack = 24;
  return x > box.left - slack && x < box.right + slack && y > box.top - slack && y < box.bottom + slack;
}
