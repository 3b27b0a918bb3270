import test from "node:test";
import assert from "node:assert/strict";
import "../words.mjs";
import { readForm } from "../../../ui/form.js";

const control = (name, value, dataset = {}, more = {}) => ({ id: name, name, value, type: "text", checked: false, disabled: false, label: name, dataset, ...more });
const bar = (value) => control("pressure_pa", value, { as: "number", steps: "100000", min: "0", max: "3" }, { label: "Pressure" });

test("a number is sent in whole wire steps", () => {
  assert.deepEqual(readForm([bar("1.21")]), { fields: { pressure_pa: 121_000 }, problems: [] });
  assert.deepEqual(readForm([bar("1,21")]).fields, { pressure_pa: 121_000 });
  assert.deepEqual(readForm([control("mixed_ms", "3:10", { as: "number", steps: "1000", spanned: "yes" })]).fields, { mixed_ms: 190_000 });
});

test("what is no number is not sent and named by its label", () => {
  assert.deepEqual(readForm([bar("1.2x")]), { fields: {}, problems: [{ field: "pressure_pa", text: "Pressure: a number, please." }] });
  assert.match(readForm([bar("-1")]).problems[0].text, /at least 0/);
  assert.match(readForm([bar("12")]).problems[0].text, /at most 3/);
});

test("an empty field is left out, never made nought", () => assert.deepEqual(readForm([bar(""), control("note", "  ")]), { fields: {}, problems: [] }));

test("answers: only what was picked; yes and no are true and false", () => {
  const radio = (name, value, checked, dataset) => control(name, value, dataset, { type: "radio", checked });
  assert.deepEqual(readForm([radio("soaked", "yes", false, { as: "yes" }), radio("soaked", "no", true, { as: "yes" }), radio("edge", "bonded", false)]).fields, { soaked: false });
});

test("paths and lists", () => {
  const box = (value, checked) => control("picked", value, { as: "list" }, { type: "checkbox", checked });
  assert.deepEqual(readForm([control("air.oxygen", "20.9"), control("air.co", "2"), box("a", true), box("b", false), box("c", true)]).fields, { air: { oxygen: "20.9", co: "2" }, picked: ["a", "c"] });
});

test("files, closed fields and buttons are not part of it", () => {
  assert.deepEqual(readForm([control("photo", "C:\\x", {}, { type: "file" }), control("x", "1", {}, { disabled: true }), control("go", "1", {}, { type: "submit" }), control("", "y")]).fields, {});
});
