// Brings the page to a new text without rebuilding it: focus, caret, scroll and a finger that rests on a button survive.

import { keepTogether } from "./text/together.js";

const STATED = "input, textarea, select";

/** By root, the text that it shows, and what the fields in it hold by that text. */
const shown = new WeakMap();

function parsed(root, text) {
  const template = root.ownerDocument.createElement("template");
  template.innerHTML = text;
  keepTogether(template.content, root.ownerDocument.documentElement.lang);
  return template.content;
}

const statesOf = (node) => [...node.querySelectorAll(STATED)].map(({ checked, value }) => ({ checked, value }));

/** Puts `text` in the place of `root`'s children: for a new screen, which has nothing to keep. */
export function place(root, text) {
  const fresh = parsed(root, String(text));
  const states = statesOf(fresh);
  root.replaceChildren(fresh);
  for (const child of root.children) setVarsBelow(child);
  shown.set(root, { text: String(text), states });
}

/** Changes `root`'s children so that they equal `text`. Keeps elements of the same tag and id, and those of the same place and tag. */
export function patch(root, text) {
  // Most drawings change nothing, and to take a text apart is most of the work.
  if (shown.get(root)?.text === String(text)) return putStates(root, shown.get(root).states);
  const fresh = parsed(root, String(text));
  const typed = root.contains(document.activeElement) && document.activeElement.matches("input, textarea") && document.activeElement;
  const before = typed && typed.getBoundingClientRect().top;
  const states = statesOf(fresh);
  // Until all is in its place, nothing is said to be shown: a drawing that breaks off is made whole by the next.
  shown.delete(root);
  patchChildren(root, fresh);
  shown.set(root, { text: String(text), states });
  // Whoever types keeps the field under the finger, whatever came above it.
  const moved = typed && typed.isConnected ? typed.getBoundingClientRect().top - before : 0;
  if (moved !== 0) scrollBy(0, moved);
}

function patchChildren(old, fresh) {
  const wanted = [...fresh.childNodes];
  wanted.forEach((node, i) => {
    if (!comes(old, i, node, wanted)) patchNode(old, old.childNodes[i], node);
  });
  while (old.childNodes.length > wanted.length) old.lastChild.remove();
}

// What has an id or a key is found again when something before it came or went. Returns true where a new node was put in.
function comes(old, i, node, wanted) {
  const here = old.childNodes[i];
  if (!here || alike(here, node)) return false;
  const kept = key(node) && [...old.childNodes].slice(i + 1).find((one) => alike(one, node));
  if (kept) {
    while (old.childNodes[i] !== kept) old.childNodes[i].remove();
    return false;
  }
  if (!key(here) || !wanted.slice(i + 1).some((one) => alike(here, one))) return false;
  old.insertBefore(node, here);
  setVarsBelow(node);
  return true;
}

function patchNode(parent, old, fresh) {
  if (!old) setVarsBelow(parent.appendChild(fresh));
  else if (!alike(old, fresh)) { old.replaceWith(fresh); setVarsBelow(fresh); }
  else if (old.nodeType !== 1) { if (old.data !== fresh.data) old.data = fresh.data; }
  else if (old.isEqualNode(fresh)) patchStates(old, fresh);
  else {
    // Taken before the children move over: a text area without its text has no value any more.
    const { checked, value } = fresh;
    patchAttributes(old, fresh);
    patchChildren(old, fresh);
    patchState(old, { checked, value });
  }
}

const alike = (a, b) => a.nodeType === b.nodeType && a.nodeName === b.nodeName && key(a) === key(b);

const key = (node) => (node.nodeType === 1 ? node.getAttribute("data-key") ?? node.id : "");

// Attributes that the page itself changes while it is shown: a new text does not take them back.
const OWNED = { DIALOG: ["style", "open"], DETAILS: ["style", "open"], BUTTON: ["style", "data-held"], IMG: ["style", "src"] };

function patchAttributes(old, fresh) {
  const owned = OWNED[old.nodeName] ?? ["style"];
  for (const { name } of [...old.attributes]) if (!fresh.hasAttribute(name) && !owned.includes(name)) old.removeAttribute(name);
  for (const { name, value } of fresh.attributes) {
    if (owned.includes(name) || old.getAttribute(name) === value) continue;
    const before = old.getAttribute(name);
    old.setAttribute(name, value);
    if (name === "data-css") setVars(old, before);
  }
}

// What the text says wins over what the page holds: the store knows every letter typed, so nothing is lost. A secret is known
// to its field alone; it stays there while it is in sight, and no longer.
function patchState(old, fresh) {
  if (old.type === "password") { if (old.checkVisibility?.() === false) old.value = ""; return; }
  if (old.nodeName === "INPUT" && old.checked !== fresh.checked) old.checked = fresh.checked;
  if (!["INPUT", "TEXTAREA", "SELECT"].includes(old.nodeName) || old.type === "file") return;
  if (old.value !== fresh.value) old.value = fresh.value;
}

// What is equal in its text may still hold what somebody typed or picked.
function patchStates(old, fresh) {
  if (old.matches(STATED)) return patchState(old, fresh);
  putStates(old, fresh.querySelectorAll(STATED));
}

const putStates = (node, states) => node.querySelectorAll(STATED).forEach((one, i) => { if (states[i]) patchState(one, states[i]); });

function setVarsBelow(node) {
  if (node.nodeType !== 1) return;
  for (const element of [node, ...node.querySelectorAll("[data-css]")]) setVars(element);
}

function setVars(element, before) {
  for (const [name] of pairs(before)) element.style.removeProperty(name);
  for (const [name, value] of pairs(element.dataset.css)) element.style.setProperty(name, value);
}

const pairs = (text) => (text ?? "").split(";").filter(Boolean).map((pair) => {
  const colon = pair.indexOf(":");
  return [pair.slice(0, colon), pair.slice(colon + 1)];
});
