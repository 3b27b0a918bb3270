// The fields of a contract. `as` is the unit that is shown, `sourced` puts the source note beside the value.

import { STAGES } from "./shared.js";

export const CONTRACT = [
  { title: "names", fields: [{ key: "id", as: "text" }, { key: "title", as: "text" }, { key: "owner", as: "text" }, { key: "contractor", as: "text" }, { key: "crew", as: "text" }, { key: "paper", as: "choice", options: ["a4", "letter"] }, { key: "attachments", as: "choice", options: ["allowed", "refused"] }, { key: "reader", group: [{ key: "language", as: "choice", options: ["en", "de", "es", "fr"] }, { key: "units", as: "choice", options: ["si", "us"] }, { key: "dates", as: "choice", options: ["iso", "local"] }] }] },
  { title: "place", fields: [
    { key: "cover_least_um", as: "mm", sourced: true }, { key: "placement_error_um", as: "mm", sourced: true }, { key: "series_overlap_um", as: "mm", sourced: true },
  ] },
  { title: "time", fields: [
    { key: "loading_factor_pct", as: "pct", sourced: true }, { key: "margin_ms", as: "min", sourced: true }, { key: "wet_out_ms", as: "min", sourced: true }, { key: "push_ms", as: "min", sourced: true }, { key: "connect_ms", as: "min", sourced: true },
    { key: "temperatures_age_ms", as: "min", sourced: true }, { key: "cleaning_age_ms", as: "h", sourced: true },
  ] },
  { title: "hold", fields: [
    { key: "reading_interval_ms", as: "min", sourced: true }, { key: "reading_grace_ms", as: "min", sourced: true }, { key: "gap_rule", as: "choice", options: ["whole", "excess"], sourced: true },
    { key: "pressure_most_pa", as: "bar", sourced: true, optional: true }, { key: "host_pipe_most_pa", as: "bar", sourced: true, optional: true },
  ] },
  { title: "air", fields: [
    { key: "air_interval_ms", as: "min", sourced: true },
    { key: "air_limits", group: [{ key: "oxygen_least_permille", as: "permille" }, { key: "oxygen_most_permille", as: "permille" }, { key: "flammable_alarm_pct", as: "lfl" }, { key: "hydrogen_sulfide_alarm_ppm", as: "ppm" }, { key: "carbon_monoxide_alarm_ppm", as: "ppm" }, { key: "source", as: "source" }] },
  ] },
  { title: "verdict", fields: [
    { key: "lateral_open_least_pct", as: "pct", sourced: true }, { key: "lateral_open_most_pct", as: "pct", sourced: true },
    { key: "fold_limit", sourced: true, variants: { share_or_height: [{ key: "share_permille", as: "permille" }, { key: "height_um", as: "mm" }], share: [{ key: "share_permille", as: "permille" }] } },
    { key: "doubtful", as: "choice", options: ["foreman_decides", "new_attempt"], sourced: true }, { key: "tightness_test", as: "yes", sourced: true }, { key: "warranty_months", as: "months", sourced: true },
  ] },
  { title: "photos", fields: [{ key: "photos", rows: [{ key: "key", as: "text" }, { key: "stage", as: "choice", options: STAGES }, { key: "label", as: "text" }], most: 30 }] },
];
