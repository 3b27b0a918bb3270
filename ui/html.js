// The `html` tag: escapes by default, so a screen is a plain function from data to text.

const ESCAPES = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };

/** Text that is already safe HTML. Only `html` and `raw` make it. */
export class Html {
  #text;
  constructor(text) { this.#text = text; }
  toString() { return this.#text; }
}

/** Returns `value` with the five characters that mean something in HTML escaped. */
export const escape = (value) => String(value).replace(/[&<>"']/g, (c) => ESCAPES[c]);

/** Marks a constant of our own as safe HTML. Never for text that a person, a file or the core gave. */
export const raw = (text) => new Html(text);

/**
 * Template tag. Escapes what is put in; joins lists; `null`, `undefined` and booleans put in nothing,
 * so that `${wanted && html`…`}` reads as it should. Returns Html.
 */
export const html = (strings, ...values) =>
  new Html(strings.reduce((text, part, i) => text + shown(values[i - 1]) + part));

/** Returns a bare attribute when `on`, else nothing: `<input ${flag("checked", on)}>`. */
export const flag = (name, on) => (on ? raw(name) : "");

/** Returns `name="value"`, or nothing when the value is missing. */
export const attr = (name, value) => (value === undefined || value === null || value === false ? "" : html`${raw(name)}="${value}"`);

/**
 * Returns custom properties as a data attribute; `patch` sets them on the element.
 * A style attribute would be refused by the content security policy. `vars({ n: 34 })` sets `--n`.
 */
export const vars = (properties) =>
  html`data-css="${Object.entries(properties).map(([name, value]) => `--${name}:${value}`).join(";")}"`;

function shown(value) {
  if (value === undefined || value === null || typeof value === "boolean") return "";
  if (value instanceof Html) return value.toString();
  if (Array.isArray(value)) return value.map(shown).join("");
  return escape(value);
}
