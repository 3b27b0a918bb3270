// The signature pad: strokes as they are drawn, in thousandths of the field, kept in the hidden field beside it.

/** Listens for drawing on every `canvas[data-pad]` below `root`. */
export function listenForPads(root) {
  let stroke = null;
  let pad = null;

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
