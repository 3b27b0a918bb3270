// The few drawn marks. Each stands beside a word, never instead of one.

import { html, raw } from "../html.js";

const SHAPES = {
  go: '<path d="M4 12H20M13 5L20 12L13 19"/>',
  back: '<path d="M20 12H4M11 5L4 12L11 19"/>',
  tick: '<path d="M4 13L10 19L20 6"/>',
  open: '<circle cx="12" cy="12" r="8"/>',
  none: '<path d="M4 12H20"/>',
  cross: '<path d="M5 5L19 19M19 5L5 19"/>',
  lock: '<path d="M4 11H20V21H4ZM8 11V7A4 4 0 0 1 16 7V11M12 15V17"/>',
  stop: '<path d="M8 3H16L21 8V16L16 21H8L3 16V8Z"/>',
  photo: '<path d="M3 7H8L10 4H14L16 7H21V20H3Z"/><circle cx="12" cy="13" r="4"/>',
  note: '<path d="M4 20V4H20V14L14 20ZM8 9H16M8 13H12"/>',
  ago: '<circle cx="12" cy="12" r="9"/><path d="M12 6V12L16 15"/>',
  hold: '<circle cx="12" cy="12" r="3"/><circle cx="12" cy="12" r="9"/>',
  warn: '<path d="M12 3L22 21H2ZM12 10V15M12 17V19"/>',
  minus: '<path d="M5 12H19"/>',
  plus: '<path d="M5 12H19M12 5V19"/>',
  rehearsal: '<circle cx="12" cy="12" r="9" stroke-dasharray="3.2 2.46"/>',
};

/** Returns the mark `name`, hidden from screen readers. */
export const icon = (name) => html`<svg class="icon" viewBox="0 0 24 24" aria-hidden="true">${raw(SHAPES[name])}</svg>`;
