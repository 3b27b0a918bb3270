// The fields of a patch sheet.

export const PATCH = [
  { title: "names", fields: [{ key: "id", as: "text" }, { key: "name", as: "text" }] },
  { title: "size", fields: [
    { key: "length_um", as: "mm" }, { key: "diameter_least_um", as: "mm" }, { key: "diameter_most_um", as: "mm" }, { key: "plies", as: "count" },
    { key: "seam_overlap_um", as: "mm", sourced: true }, { key: "resin_mg", as: "g", sourced: true },
  ] },
  { title: "pressure", fields: [{ key: "gauge_least_pa", as: "bar", sourced: true }, { key: "net_least_pa", as: "bar", sourced: true }, { key: "pressure_most_pa", as: "bar", sourced: true }] },
  { title: "bare_ends", fields: [{ key: "bare_end_least_um", as: "mm", sourced: true }, { key: "bare_end_tolerance_um", as: "mm", sourced: true }] },
  { title: "binding", fields: [{ key: "binding", group: [{ key: "end_bands", as: "count" }, { key: "edge_um", as: "mm" }, { key: "apart_um", as: "mm" }, { key: "pitch_um", as: "mm" }, { key: "source", as: "source" }] }] },
  { title: "membrane", fields: [{ key: "membrane", optional: true, group: [{ key: "beyond_um", as: "mm" }, { key: "pitch_um", as: "mm" }, { key: "source", as: "source" }] }] },
];
