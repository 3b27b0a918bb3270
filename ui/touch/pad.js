// The signature pad: strokes as they are drawn, in thousandths of the field, kept in the hidden field beside it. Without a
// finger the arrow keys move a pen: space or enter puts it down and lifts it.

const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
/** How far one press moves the pen, in thousandths; with the shift key, further. */
const STEP = 25;
const FAR = 100;

/**
 * Returns the pen { at, stroke, done } after a key, or nothing for a key that is not its own. `stroke` is there while the pen is
 * down; `done` is a stroke that was just lifted. It never leaves the field.
 */
export function penAfter(pen, key, far = false) {
  if (key === " " || key === "Enter") return pen.stroke ? { at: pen.at, done: pen.stroke } : { at: pen.at, stroke: [pen.at] };
  if (!ARROWS[key]) return undefined;
  const at = pen.at.map((value, i) => Math.min(1000, Math.max(0, value + ARROWS[key][i] * (far ? FAR : STEP))));
  return { at, ...(pen.stroke && { stroke: [...pen.stroke, at] }) };
}

/** Listens for drawing on every `canvas[data-pad]` below `root`. `tell` says to a reader that the pen is "down" or "up". */
export function listenForPads(root, tell = () => {}) {
  let stroke = null;
  let pad = null;
  let pen = { at: [100, 500] };

  root.addEventListener("keydown", (event) => {
    const on = event.target.closest?.("canvas[data-pad]");
    const after = on && penAfter(pen, event.key, event.shiftKey);
    if (!after) return;
    event.preventDefault();
    if (after.stroke?.length > 1) draw(on, pen.at, after.at);
    if (Boolean(after.stroke) !== Boolean(pen.stroke)) tell(after.stroke ? "down" : "up");
    if (after.done?.length > 1) keep(on, [...strokesOf(on), after.done]);
    pen = { at: after.at, stroke: after.stroke };
    mark(on, pen);
  });
  // Whoever leaves the field lifts the pen.
  root.addEventListener("focusout", ({ target }) => {
    if (!target.matches?.("canvas[data-pad]")) return;
    if (pen.stroke?.length > 1) keep(target, [...strokesOf(target), pen.stroke]);
    pen = { at: [100, 500] };
    mark(target, pen, false);
  });
  root.addEventListener("focusin", ({ target }) => { if (target.matches?.("canvas[data-pad]:focus-visible")) mark(target, pen); });

  root.addEventListener("pointerdown", (event) => {
    pad = event.target.closest?.("canvas[data-pad]");
    if (!pad) return;
    pad.setPointerCapture(event.pointerId);
    stroke = [point(pad, event)];
    event.preventDefault();
  });
  root.addEventListener("pointermove", (event) => {
    if (!stroke) return;
    const next = point(pad, event);
    draw(pad, stroke.at(-1), next);
    stroke.push(next);
  });
  const end = () => {
    if (stroke?.length > 1) keep(pad, [...strokesOf(pad), stroke]);
    stroke = null;
  };
  root.addEventListener("pointerup", end);
  root.addEventListener("pointercancel", end);
  root.addEventListener("click", (event) => {
    if (!event.target.closest("[data-pad-clear]")) return;
    const cleared = event.target.closest("form").querySelector("canvas[data-pad]");
    cleared.getContext("2d").clearRect(0, 0, cleared.width, cleared.height);
    keep(cleared, []);
  });
}

// Where the pen stands: hollow while it is up. By its style alone, which a new drawing of the screen leaves as it is.
function mark(pad, { at: [x, y], stroke }, shown = true) {
  const { style } = pad.parentElement.querySelector(".pad-pen");
  style.left = `${x / 10}%`;
  style.top = `${y / 10}%`;
  style.opacity = shown ? 1 : 0;
  style.background = stroke ? "var(--accent)" : "";
}

const hidden = (pad) => pad.closest("form").elements[pad.dataset.pad];
const strokesOf = (pad) => JSON.parse(hidden(pad).value || "[]");
// Told as typed, so that the store keeps the line while the screen is drawn anew.
const keep = (pad, strokes) => {
  hidden(pad).value = JSON.stringify(strokes);
  hidden(pad).dispatchEvent(new Event("input", { bubbles: true }));
};

/** Returns the place of a pointer in thousandths of the field, inside it. */
export function inThousandths({ left, top, width, height }, { clientX, clientY }) {
  const within = (value) => Math.min(1000, Math.max(0, Math.round(value)));
  return [within((1000 * (clientX - left)) / width), within((1000 * (clientY - top)) / height)];
}

const point = (pad, event) => inThousandths(pad.getBoundingClientRect(), event);

function draw(pad, [x1, y1], [x2, y2]) {
  const ink = pad.getContext("2d");
  ink.lineWidth = 5;
  ink.lineCap = "round";
  ink.strokeStyle = getComputedStyle(pad).color;
  ink.beginPath();
  ink.moveTo((x1 * pad.width) / 1000, (y1 * pad.height) / 1000);
  ink.lineTo((x2 * pad.width) / 1000, (y2 * pad.height) / 1000);
  ink.stroke();
}
