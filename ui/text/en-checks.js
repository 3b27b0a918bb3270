// The words of the calculations: what each is called, what goes in and what comes out.

const NAMES = {
  "ovality-factor": ["Ovality factor", "what an oval pipe takes off the lining’s strength"],
  "wall-thickness": ["Wall thickness", "the least wall by ASTM F1216; a check for a licensed engineer"],
  "air-test-f1417": ["Air test, ASTM F1417", "how long the pressure must stay"],
  "air-test-en1610": ["Air test, EN 1610", "pressure, allowed drop and time"],
  "water-test-en1610": ["Water test, EN 1610", "how much water may be added in 30 minutes"],
  "resin-wall": ["Resin for a wall", "from thickness and voids"],
  "resin-laminate": ["Resin for a laminate", "from plies and fibre share"],
  "working-time": ["Working time from a sheet", "between the sheet’s rows, never outside"],
  "equivalent-age": ["Equivalent age", "what time in the cold is worth"],
  "packer-pressure": ["Packer after cooling", "what the gauge falls to when the air cools"],
  "net-pressure": ["Net pressure", "what is left against the groundwater"],
  "end-thrust": ["End thrust", "a number for keeping away"],
  geodesic: ["Distance on the map", "between two places"],
  "station-position": ["Place of a station", "on the map, between two nodes"],
  atmosphere: ["Air readings", "against the limits"],
  "partial-flow": ["Flow in the pipe", "from the depth of the water"],
  "time-to-surcharge": ["Storage of the line above", "how long it takes the inflow"],
  "pressure-decay": ["Leak or only cooling", "from the readings of a closed packer"],
};

const FIELDS = {
  ovality_pct: "Ovality", condition: "Condition of the host pipe", partially_deteriorated: "partially deteriorated", fully_deteriorated: "fully deteriorated", inside_diameter_mm: "Inside diameter",
  modulus_long_term_mpa: "Modulus, long term", modulus_initial_mpa: "Modulus, initial", flexural_strength_mpa: "Flexural strength", safety_factor: "Safety factor", enhancement_factor: "Enhancement factor",
  poisson_ratio: "Poisson’s ratio", groundwater_above_invert_m: "Groundwater above the invert", cover_above_crown_m: "Cover above the crown", groundwater_above_crown_m: "Groundwater above the crown",
  soil_unit_weight_kn_m3: "Unit weight of the soil", live_load_kpa: "Live load", soil_modulus_mpa: "Modulus of the soil", edition: "Edition", "f1216-07b": "F1216-07b", "f1216-07a": "F1216-07a",
  length_m: "Length", drop_psi: "Pressure drop, 0.5 or 1.0", dn_mm: "DN", method: "Method", dry_concrete: "Dry concrete?", scope: "What is tested", pipes: "pipes", pipes_and_manholes: "pipes and manholes", manholes: "manholes",
  thickness_mm: "Thickness", void_fraction: "Share of voids, 0 to 1", excess_fraction: "Excess, 0.1 is ten per cent", density_kg_l: "Density of the resin", plies: "Plies", areal_weight_g_m2: "Weight of a ply", fibre_volume_fraction: "Fibre share by volume, 0 to 1",
  fibre_density_kg_l: "Density of the fibre", resin_density_kg_l: "Density of the resin", width_m: "Width round the pipe", sheet: "Rows of the sheet: °C, minutes", temperature_c: "Temperature", activation_kelvin: "Activation energy over the gas constant",
  reference_c: "Reference temperature", segments: "Stretches: minutes, °C", gauge_bar: "Gauge pressure", temperature_before_c: "Temperature before", temperature_after_c: "Temperature after", atmospheric_bar: "Air pressure outside, absolute",
  groundwater_head_m: "Groundwater head", from: "From", to: "To", lat: "latitude", lon: "longitude", station_m: "Station from the first node", oxygen_pct: "Oxygen", flammable_pct_lfl: "Flammable gas", hydrogen_sulfide_ppm: "H₂S", carbon_monoxide_ppm: "CO",
  limits: "Limits", slope: "Fall, metre per metre", manning_n: "Manning’s n", depth_mm: "Depth of water", inflow_l_s: "Inflow", allowed_depth_m: "Water may stand at the plug, above the invert", readings: "Readings: minutes, bar, °C", lower_limit_bar: "Lower limit",
};

const OUT = {
  factor: "Factor", groundwater_kpa: "Water pressure", buckling_mm: "By buckling", bending_mm: "By bending", stiffness_mm: "By least stiffness", total_load_kpa: "Total load", buoyancy_factor: "Buoyancy factor", elastic_support: "Elastic support",
  full_mm: "By the load of the ground", required_mm: "Wall required", governs: "Decided by", edition: "Edition", strength: "Strength", caution: "Mind", time_s: "Time", length_for_minimum_time_m: "Up to this length the time stays", start_pressure_mbar: "Start at",
  allowed_drop_mbar: "May fall by", time_min: "Time, exact", time_rounded_min: "Time", allowed_l: "May be added", volume_l: "Volume", mass_kg: "Mass", thickness_mm: "Thickness", minutes: "Minutes", gauge_bar: "Gauge pressure", net_kpa: "Net pressure", force_n: "Force",
  distance_m: "Distance", azimuth_from_deg: "Direction at the start", azimuth_to_deg: "Direction at the end", lat: "Latitude", lon: "Longitude", acceptable: "Inside the limits", alarms: "Alarms", velocity_m_s: "Speed", flow_l_s: "Flow", flow_to_full: "Share of the full pipe’s flow",
  storage_l: "Stores", leak_bar_per_h: "Leak", low: "at least", high: "at most", minutes_to_limit: "Until the lower limit", verdict: "Verdict", source: "Source",
};

const WORDS = {
  leaking: "It leaks.", cooling_only: "It only cools.", steady: "Steady.", too_few_readings: "Too few readings: five are needed.", true: "yes", false: "no", buckling: "buckling", bending: "bending", stiffness: "least stiffness", full: "the load of the ground",
};

const CAUTIONS = {
  "wall-thickness": "A check for a licensed engineer, not a design.", "ovality-factor": "A part of a check for a licensed engineer, not a design.", "end-thrust": "A number for keeping away, never a pass mark. Nobody stands in line with an inflated end.",
  "air-test-f1417": "Test pressures can kill. Nobody in the manhole while the line is under air. Local codes win.", "air-test-en1610": "Test pressures can kill. Nobody in the manhole while the line is under air. Local codes win.",
  "water-test-en1610": "Local codes win.", atmosphere: "An alarm: nobody enters. Permit and local codes decide.", "packer-pressure": "Let air out before warming: a warm packer presses harder.", "working-time": "Below the sheet nothing is known; the ten-degree rule is not used.",
  "equivalent-age": "May lengthen a hold, never shorten it.", "time-to-surcharge": "Level surface, dry line at the start. Watch the water all the same.", "resin-wall": "The sheet’s own amount counts first.", "resin-laminate": "The sheet’s own amount counts first.",
};

const under = (prefix, all) => Object.fromEntries(Object.entries(all).map(([key, words]) => [`${prefix}.${key}`, words]));

export const checks = {
  ...under("worked.name", Object.fromEntries(Object.entries(NAMES).map(([key, [name]]) => [key, name]))),
  ...under("worked.what", Object.fromEntries(Object.entries(NAMES).map(([key, [, what]]) => [key, what]))),
  ...under("worked.field", FIELDS), ...under("worked.out", OUT), ...under("worked.word", WORDS), ...under("worked.caution", CAUTIONS),
  "heard.unreadable": "{label}: {why}",
  "heard.slip": "{label}: {value} is far from what is likely here. What is meant?",
  "units.label": "Units that you read and type",
  "units.si": "Metric",
  "units.si_note": "m, mm, bar, kg, °C",
  "units.us": "US customary",
  "units.us_note": "ft, in, psi, lb, °F; recorded and certified in metric, as typed beside it",
  "worked.title": "Calculations",
  "worked.note": "wall, resin, air test, storage and the rest, each with its source",
  "worked.list": "Each with its formula and its source",
  "worked.of": "For {number}",
  "worked.alone": "On their own: nothing is kept",
  "worked.enter": "What goes in",
  "worked.units": "A number may carry its unit: 8 in, 12 psi, 50 °F. It is kept as typed.",
  "worked.rows": "One row a line",
  "worked.fully": "only for fully deteriorated",
  "worked.result": "Result",
  "worked.waits": "Still needed: {what}.",
  "worked.formula": "Formula",
  "worked.source": "Source",
  "worked.keep": "Keep it with the repair",
  "worked.keep_note": "printed on the certificate with formula and source",
  "worked.closed": "Nothing to keep yet",
  "worked.all": "All calculations",
  "worked.not_yet": "not worked out",
  "worked.kept": "Worked out",
  "worked.back": "Back",
  "worked.limits": "Limits: {source}",
  "worked.open": "Work it out",
  "pace.crew": "{crew}, own times: wet-out {wet} ({n_wet} recorded), push {push} ({n_push} recorded).",
  "pace.both": "median {median}, nine of ten within {ninetieth}",
  "pace.estimate": "estimate {median}",
  "pace.chance": "Chance that the placement ends inside the working time: {n} %.",
  "pace.no_chance": "The chance is told from five recorded repairs on.",
  "storing.enough": "The line above stores the inflow for {lasts}; {needed} are needed until the hold is over, margin included.",
  "storing.dry": "Nothing flows in: the line above never fills.",
  "storing.lead": "Water above.",
  "spot.title": "On the map",
  "spot.place": "Patch",
  "spot.phone": "Phone to patch",
  "spot.node": "Phone to the node",
  "spot.plausible": "can be, by its accuracy",
  "spot.far": "too far for its accuracy: is this the right manhole?",
  "spot.unknown": "its accuracy is not known",
  "spot.no_phone": "no position of the phone",
  "spot.longer": "Line longer than on the map by",
};
