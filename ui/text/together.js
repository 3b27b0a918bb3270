// What the end of a line must not part: a figure and its unit, a range, DN and its number, and in French a mark and its word.

const NB = "\u00a0";
const JOINER = "\u2060";
const UNITS = "%|°C|°F|°|mm|m|min|ms|h|s|bar|kg|kN|g|in|ft|psi|lb|lbf|oz|MB|kB";
const FIGURE = new RegExp(`(\\d) (?=(?:${UNITS})(?![\\p{L}\\p{N}]))`, "gu");
const NAMED = /\b(DN) (?=\d)/g;
const SPACED_RANGE = /(\d) – (?=\d)/g;
const CLOSE_RANGE = /(\d)–(?=\d)/g;
const FRENCH = / (?=[:;?!»](?:\s|$))/g;

/** Returns a text with no-break spaces, or joiners, where it must stay on one line. For what is shown; what is recorded keeps its own spaces. */
export function together(text, language) {
  if (!/[ –]/.test(text)) return text;
  const kept = text.replace(FIGURE, `$1${NB}`).replace(NAMED, `$1${NB}`).replace(SPACED_RANGE, `$1${NB}–${NB}`).replace(CLOSE_RANGE, `$1–${JOINER}`);
  return language === "fr" ? kept.replace(FRENCH, NB).replaceAll("« ", `«${NB}`) : kept;
}

/** Does the same with every text below a node. What stands in a field of several lines is what was typed, and stays. */
export function keepTogether(node, language) {
  const walk = node.ownerDocument.createTreeWalker(node, NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) {
    const { currentNode: text } = walk;
    const glued = text.parentNode.nodeName === "TEXTAREA" ? text.data : together(text.data, language);
    if (glued !== text.data) text.data = glued;
  }
}
