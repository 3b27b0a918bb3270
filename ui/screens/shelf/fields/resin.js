// The fields of a resin sheet. Its times are rows of points, or one figure for a range of temperature.

import { COUNTS } from "./shared.js";

const times = (key, as) => ({ key, group: [
  { key: "rows", variants: {
    points: [{ key: "points", rows: [{ key: "at_mc", as: "celsius" }, { key: "ms", as }], least: 1, most: 40 }],
    range: [{ key: "from_mc", as: "celsius" }, { key: "to_mc", as: "celsius" }, { key: "ms", as }],
  } },
  { key: "source", as: "source" },
] });

export const RESIN = [
  { title: "names", fields: [{ key: "id", as: "text" }, { key: "name", as: "text" }, { key: "issue", as: "text" }] },
  { title: "parts", fields: [
    { key: "parts", variants: {
      containers: [{ key: "kit", as: "text" }, { key: "mass_mg", as: "g" }, { key: "source", as: "source" }],
      weighed: [{ key: "ratio_permille", as: "ratio" }, { key: "tolerance_permille", as: "permille" }, { key: "source", as: "source" }],
    } },
    { key: "batch_most_mg", as: "g", sourced: true }, { key: "mixing_least_ms", as: "s", sourced: true },
  ] },
  { title: "limits", fields: [
    { key: "temperature_least_mc", as: "celsius", sourced: true }, { key: "temperature_most_mc", as: "celsius", sourced: true },
    { key: "storage_least_mc", as: "celsius", sourced: true }, { key: "storage_most_mc", as: "celsius", sourced: true },
  ] },
  { title: "working_time", fields: [times("working_time", "min")] },
  { title: "hold", fields: [times("hold", "min"), { key: "counts_from", as: "choice", options: COUNTS, sourced: true }] },
  { title: "full_cure", fields: [times("full_cure", "h"), { key: "cure_counts_from", as: "choice", options: COUNTS, sourced: true, optional: true }] },
];
