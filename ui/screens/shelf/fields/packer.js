// The fields of a packer: its label and its sheet.

export const PACKER = [
  { title: "names", fields: [{ key: "id", as: "text" }, { key: "name", as: "text" }, { key: "serial", as: "text" }] },
  { title: "size", fields: [
    { key: "body_um", as: "mm" }, { key: "front_fitting_um", as: "mm" }, { key: "air_fitting_um", as: "mm" }, { key: "flow_through", as: "yes" },
    { key: "diameter_least_um", as: "mm", sourced: true }, { key: "diameter_most_um", as: "mm", sourced: true },
  ] },
  { title: "pressure", fields: [
    { key: "pressure_most", rows: [{ key: "diameter_um", as: "mm" }, { key: "most_pa", as: "bar" }, { key: "source", as: "source" }], least: 1, most: 20 },
    { key: "test_pressure_pa", as: "bar", sourced: true }, { key: "test_ms", as: "min", sourced: true },
  ] },
  { title: "sleeve", fields: [{ key: "sleeve_front_um", as: "mm", sourced: true }, { key: "sleeve_rear_um", as: "mm", sourced: true }, { key: "sleeve_pitch_um", as: "mm", sourced: true }] },
];
