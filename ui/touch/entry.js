// The − and + of an entry: a press steps, a long press goes on stepping. Arrow keys in the field do the same.

import { typed } from "../format.js";

/**
 * Returns the text after one step in `direction` (1 or -1). Steps land on the grid of `by`; from an empty or unreadable
 * field the first press puts in `start`, or the least value. Never beyond `min` and `max`. `spanned` reads and writes min:s.
 */
export function stepped(text, direction, { by, digits = 0, min = -Infinity, max = Infinity, start, spanned = false }) {
  const now = typed(text, { minSec: spanned });
  const at = now ?? Math.max(min, Math.min(max, start ?? (Number.isFinite(min) ? min : 0)));
  const grid = direction > 0 ? Math.floor(at / by + 1e-6) : Math.ceil(at / by - 1e-6);
  const value = now === null ? at : Math.max(min, Math.min(max, (grid + direction) * by));
  if (!spanned) return value.toFixed(digits);
  return `${Math.floor(value / 60)}:${String(Math.round(value) % 60).padStart(2, "0")}`;
}

const FIRST_MS = 450;
const REST_MS = [140, 70];
const FAST_AFTER = 10;

/** Returns what an entry's input says about its steps. */
export function stepsOf({ dataset: data }) {
  const number = (text) => (text === undefined ? undefined : Number(text));
  return { by: Number(data.stepBy), digits: Number(data.digits), min: number(data.min), max: number(data.max), start: number(data.start), spanned: data.spanned === "yes" };
}

/** Listens for every entry below `root`. `ports`: changed(input), later(ms, run) returning a handle, and stop(handle). */
export function listenForSteps(root, ports) {
  let handle = null;
  let stepping = false;

  const inputOf = (button) => root.ownerDocument.getElementById(button.dataset.for);

  function step(input, direction) {
    const text = stepped(input.value, direction, stepsOf(input));
    if (text === input.value) return;
    input.value = text;
    ports.changed(input);
  }

  function goOn(input, direction, n) {
    handle = ports.later(n === 0 ? FIRST_MS : REST_MS[n > FAST_AFTER ? 1 : 0], () => {
      stepping = true;
      step(input, direction);
      goOn(input, direction, n + 1);
    });
  }

  const end = () => { ports.stop(handle); handle = null; };

  root.addEventListener("pointerdown", (event) => {
    const button = event.target.closest?.("button[data-step]");
    if (!button || event.button !== 0) return;
    end();
    stepping = false;
    goOn(inputOf(button), Number(button.dataset.step), 0);
  });
  for (const name of ["pointerup", "pointercancel", "pointerleave"]) root.addEventListener(name, end);
  root.ownerDocument.addEventListener("visibilitychange", end);

  // The click after a long press would be one step too many.
  root.addEventListener("click", (event) => {
    const button = event.target.closest?.("button[data-step]");
    if (button && !stepping) step(inputOf(button), Number(button.dataset.step));
    stepping = false;
  });
  root.addEventListener("contextmenu", (event) => { if (event.target.closest?.("button[data-step]")) event.preventDefault(); });
  root.addEventListener("keydown", (event) => {
    const direction = { ArrowUp: 1, ArrowDown: -1 }[event.key];
    if (!direction || !event.target.dataset?.stepBy) return;
    event.preventDefault();
    step(event.target, direction);
  });
}
