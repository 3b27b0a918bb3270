// What the guides for the three people tell to tap, read from their Markdown. Labels stand in them *so*, ways **so → so**.

import { readFileSync, readdirSync } from "node:fs";

const FOLDER = new URL("../../docs/guides/", import.meta.url);

/** The files of the guides. */
export const GUIDES = readdirSync(FOLDER).filter((file) => file.endsWith(".md"));

const plain = (words) => words.trim().replace(/[.?]$/, "");

/** Returns the sections of a guide, in their order: { title, labels }, the labels as often and in the order as they stand. */
export function sectionsOf(file) {
  const [first, ...others] = readFileSync(new URL(file, FOLDER), "utf8").split(/^## /m);
  const of = (text, title) => {
    // Bold words are titles of their own, unless they lead somewhere.
    const marked = [...text.replace(/\n\s*/g, " ").matchAll(/\*\*(.+?)\*\*|\*(.+?)\*/g)].filter(([, bold]) => bold === undefined || bold.includes("→"));
    return { title, labels: marked.flatMap(([, bold, italic]) => (bold ?? italic).split("→")).map(plain) };
  };
  return [of(first, ""), ...others.map((text) => of(text.slice(text.indexOf("\n")), text.slice(0, text.indexOf("\n")).trim()))];
}

/** Returns the labels of one section of a guide. */
export function labelsOf(file, title) {
  const found = sectionsOf(file).find((section) => section.title === title);
  if (!found) throw new Error(`${file} has no section “${title}”`);
  return found.labels;
}
