// Units as a person reads and types them: shown, kept, sent and asked about.

import test from "node:test";
import assert from "node:assert/strict";
import "../words.mjs";
import { between, down, figure, inRecorded, localEntry, quantity, range, shaped, short, unitOf, up, useUnits } from "../../../ui/format.js";
import { readForm } from "../../../ui/form.js";
import { asTyped, hear } from "../../../ui/heard.js";

const spaced = (text) => text.replaceAll("\u00a0", " ");
const inUs = (run) => { useUnits("us"); try { return run(); } finally { useUnits("si"); } };
const control = (dataset, value, more = {}) => ({ id: "gauge", name: "gauge_pa", type: "text", value, label: "Gauge", dataset: { as: "number", ...dataset }, ...more });

// NIST SP 811 (2008), B.8 and B.9: psi 6894.757 Pa, foot 0.3048 m, inch 25.4 mm, pound 0.45359237 kg, °F.
test("a quantity is shown in the person's units, each with its unit", () => {
  assert.equal(spaced(quantity("bar", 120_000)), "1.20 bar");
  assert.deepEqual(inUs(() => [quantity("bar", 120_000), quantity("mm", 203_200), quantity("m", 3_048_000), quantity("kg", 453_592), quantity("celsius", 10_000)].map(spaced)),
    ["17.4 psi", "8.00 in", "10.00 ft", "1.000 lb", "50.0 °F"]);
  assert.equal(spaced(inUs(() => range("bar", 110_000, 140_000))), "16.0 – 20.3 psi");
});

test("what nobody has touched is sent as it was recorded, whatever it was rounded to", () => {
  const shown = inUs(() => localEntry({ unit: "bar", steps: 1e5, value: "1.21", step: 0.01, min: 0, max: 20, digits: 2 }));
  assert.equal(shown.value, "17.5");
  const sent = readForm([control({ steps: String(shown.steps), plus: String(shown.plus), unit: "psi", shown: shown.value, recorded: String(shown.own) }, "17.5")]);
  assert.deepEqual(sent.fields, { gauge_pa: 121_000 });
});

test("what was typed in other units is recorded in pascals, and kept as it was typed", () => {
  const shown = inUs(() => localEntry({ unit: "bar", steps: 1e5, value: "20.0 psi", step: 0.01, digits: 2 }));
  assert.deepEqual([shown.value, shown.unit, shown.own], ["20.0", "psi", undefined]);
  const typed = control({ steps: String(shown.steps), plus: "0", unit: "psi" }, "20.0");
  assert.deepEqual(readForm([typed]).fields, { gauge_pa: 137_895 });
  assert.deepEqual(asTyped([typed]), { gauge_pa: "20.0 psi" });
});

test("a shifted zero is shifted", () => {
  const shown = inUs(() => localEntry({ unit: "°C", steps: 1000, value: "", step: 0.5, digits: 1, min: -30, max: 80 }));
  assert.deepEqual([shown.min, shown.max], [-22, 176]);
  assert.deepEqual(readForm([control({ steps: String(shown.steps), plus: String(shown.plus), unit: "°F" }, "50")]).fields, { gauge_pa: 10_000 });
});

test("a draft means the same after the units were switched", () => {
  assert.equal(localEntry({ unit: "bar", steps: 1e5, value: "20 psi", digits: 2 }).value, "20 psi");
  assert.equal(inRecorded("bar", "20 psi").toFixed(4), "1.3790");
  assert.equal(inRecorded("bar", "1,2"), 1.2);
  assert.equal(inRecorded("bar", "much"), null);
});

test("a typed unit is read by the core, a slip is asked about once", async () => {
  const answers = { "17.4 psi": { id: "gauge", value: 1.19969, problem: null, meant: [] }, 16: { id: "gauge", value: 16, problem: null, meant: ["16 psi"] } };
  const ask = async ({ entries }) => ({ ok: { entries: entries.map(({ typed }) => answers[typed]) } });
  const field = (value) => [control({ steps: "100000", unit: "bar", likely: "0,280000" }, value)];
  const read = await hear(field("17.4 psi"), ask, {});
  assert.deepEqual([read.problems, readForm(read.controls).fields], [[], { gauge_pa: 119_969 }]);
  const [asked] = (await hear(field("16"), ask, {})).problems;
  assert.deepEqual([asked.field, asked.meant], ["gauge", ["16 psi", "16 bar"]]);
  answers["16 bar"] = answers[16];
  assert.deepEqual((await hear(field("16 bar"), ask, { gauge: "16 bar" })).problems, []);
});

test("a bare figure, a range and a limit are in the unit beside them", () => {
  assert.deepEqual(inUs(() => [figure("m", 3_048_000), between("bar", 110_000, 140_000), short("celsius", 10_000), short("mm", 6_350), unitOf("m")].map(spaced)),
    ["10.00", "16.0 – 20.3", "50 °F", "0.25 in", "ft"]);
});

test("cover is rounded down in either unit", () => {
  assert.deepEqual([down("mm", 133_999), inUs(() => down("mm", 134_000))], ["133", "5.27"]);
});

test("a field that counts in a unit of its own keeps it", () => {
  const rods = { unit: "rods", per: 1, decimals: 0 };
  assert.deepEqual(inUs(() => [shaped(rods, 4), shaped({ unit: "mm", per: 1_000, decimals: 1 }, 25_400)].map(spaced)), ["4 rods", "1.000 in"]);
});

test("a field that records kilograms in grams is scaled by its own steps", () => {
  const waste = { unit: "kg", steps: 1_000, value: "2", step: 0.1, min: 0, max: 10_000, digits: 1 };
  const shown = inUs(() => localEntry(waste));
  assert.deepEqual([shown.value, shown.unit, shown.own], ["4.409", "lb", 2_000]);
  assert.deepEqual(readForm([control({ steps: String(shown.steps), plus: String(shown.plus), unit: "lb" }, "10")]).fields, { gauge_pa: 4_536 });
  assert.equal(spaced(inUs(() => shaped({ unit: "kg", per: 1_000, decimals: 1 }, 2_000))), "4.409 lb");
});

// NIST SP 811 (2008), B.8: 1 lbf = 4.448 221 615 260 5 N; 4401 N are 989.4 lbf.
test("a force that is to be kept away from is rounded up", () => {
  assert.deepEqual([up("kN", 4_401), inUs(() => up("kN", 4_401))].map(spaced), ["4.5 kN", "990 lbf"]);
});

test("a field of a calculation goes as it was typed, in customary units with its unit, and untouched as the repair knows it", () => {
  const entry = (dataset, value) => control({ as: "entry", ...dataset }, value);
  const sent = (one) => readForm([one]).fields.gauge_pa;
  assert.equal(sent(entry({ unit: "bar" }, "1.2")), "1.2");
  assert.equal(sent(entry({ unit: "bar" }, "17 psi")), "17 psi");
  assert.equal(sent(entry({ unit: "in", plus: "0" }, "8")), "8 in");
  assert.equal(sent(entry({ unit: "in", plus: "0", shown: "7.874", recorded: "200" }, "7.874")), 200);
});

test("a slip of the unit in a calculation is asked about, and what was typed stays as it was", async () => {
  const asked = [];
  const core = (meant) => async (request) => { asked.push(request); return { ok: { entries: [{ id: "gauge", value: 16, problem: null, meant }] } }; };
  const typed = control({ as: "entry", unit: "bar", likely: "33000,280000" }, "16");
  const slip = await hear([typed], core(["16 psi"]), {});
  assert.deepEqual(slip.problems.map(({ field, meant }) => [field, meant]), [["gauge", ["16 psi", "16 bar"]]]);
  assert.deepEqual(asked[0].entries, [{ id: "gauge", typed: "16", beside: "bar", likely: [33_000, 280_000] }]);
  const sure = await hear([{ ...typed, value: "16 bar" }], core(["16 psi"]), { gauge: "16 bar" });
  assert.deepEqual([sure.problems, sure.controls[0].value], [[], "16 bar"]);
  const unlikely = await hear([control({ as: "entry", unit: "bar" }, "16")], core(["16 psi"]), {});
  assert.deepEqual([unlikely.problems, asked.length], [[], 2]);
});
