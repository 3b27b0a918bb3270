// The fields of an instrument.

export const INSTRUMENT = [
  { title: "names", fields: [{ key: "id", as: "text" }, { key: "kind", as: "choice", options: ["pressure_gauge", "thermometer", "camera_counter", "scale", "tape", "gas_meter"] }, { key: "name", as: "text" }] },
  { title: "error", fields: [{ key: "error_ppm", as: "share", optional: true }, { key: "error_um", as: "mm", optional: true }, { key: "calibrated_to", as: "date", optional: true }, { key: "source", as: "source" }] },
];
