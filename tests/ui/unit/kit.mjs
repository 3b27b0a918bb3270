// What every piece of HTML must hold: balanced tags, no style or script of its own, ids that are there once, links that lead to one.

import assert from "node:assert/strict";

const VOID = ["br", "col", "hr", "img", "input", "meta", "link"];

/** Fails unless `html` is well formed and passes the content security policy. Returns its text. */
export function sound(html) {
  const text = String(html);
  const open = [];
  for (const [, close, name, attributes] of text.matchAll(/<(\/?)([a-z][\w-]*)((?:[^<>"]|"[^"]*")*)>/gi)) {
    if (close) assert.equal(open.pop(), name, `</${name}> closes nothing in ${text.slice(0, 200)}`);
    else if (!VOID.includes(name) && !attributes.trim().endsWith("/")) open.push(name);
    assert.doesNotMatch(attributes.replaceAll(/"[^"]*"/g, '""'), /(^|\s)(style|on\w+)=/, `${name} carries a style or a script`);
  }
  assert.deepEqual(open, [], "tags left open");
  assert.doesNotMatch(text, /\$\{|\[object|undefined|NaN|>null</, `something was put in that is no text: ${/.{0,60}(\$\{|\[object|undefined|NaN|>null<).{0,40}/.exec(text)?.[0]}`);
  const ids = [...text.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id);
  assert.equal(new Set(ids).size, ids.length, `an id twice: ${ids}`);
  for (const [, names] of text.matchAll(/aria-(?:labelledby|describedby)="([^"]*)"/g)) for (const id of names.split(" ")) assert.ok(ids.includes(id), `nothing has the id ${id}`);
  for (const [, id] of text.matchAll(/url\(#([\w-]+)\)/g)) assert.ok(ids.includes(id), `no pattern ${id}`);
  return text;
}

/** Returns the text that a reader sees or hears: tags left out, spaces single. */
export const words = (html) => String(html).replace(/<[^>]*>/g, " ").replace(/\s+/g, " ").trim();

/** Returns the values of `attribute` in order. */
export const values = (html, attribute) => [...String(html).matchAll(new RegExp(`\\s${attribute}="([^"]*)"`, "g"))].map(([, value]) => value);
