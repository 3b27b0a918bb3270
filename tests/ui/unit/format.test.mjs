import test from "node:test";
import assert from "node:assert/strict";
import { speakIn } from "../words.mjs";
import { date, day, figure, hours, minSec, minutes, number, quantity, range, short, span, time, timeSeen, typed } from "../../../ui/format.js";

test("a quantity carries its unit and a true minus", () => {
  assert.equal(quantity("m", 18_570_000), "18.57\u00a0m");
  assert.equal(quantity("mm", 156_000), "156\u00a0mm");
  assert.equal(quantity("bar", 121_000), "1.21\u00a0bar");
  assert.equal(quantity("celsius", -3_000), "\u22123\u00a0°C");
  assert.equal(range("bar", 110_000, 140_000), "1.10\u00a0–\u00a01.40\u00a0bar");
  assert.equal(figure("kg", 616_000), "0.616");
});

test("a value that rounds to zero has no minus", () => assert.equal(number(-0.001, 2), "0.00"));

test("zeros at the end are left out where asked", () => {
  assert.equal(short("celsius", 17_500), "17.5\u00a0°C");
  assert.equal(short("celsius", 9_000), "9\u00a0°C");
  assert.equal(short("celsius", 8_999), "9\u00a0°C");
});

test("time that is left is rounded down, time that is gone up", () => {
  assert.equal(minSec(18 * 60e3 + 42_999), "18:42");
  assert.equal(minSec(135_001, "up"), "2:16");
  assert.equal(minSec(-135_000), "\u22122:15");
  assert.equal(minSec(3_905_000), "1:05:05");
  assert.equal(minSec(0), "0:00");
  assert.equal(minutes(59_999), 0);
  assert.equal(minutes(60_001, "up"), 2);
});

test("a span in words leaves out what is nought", () => {
  assert.equal(span(18 * 60e3 + 42e3), "18\u00a0min 42\u00a0s");
  assert.equal(span(8 * 3600e3 + 49 * 60e3), "8\u00a0h 49\u00a0min");
  assert.equal(span(3 * 60e3), "3\u00a0min");
  assert.equal(span(0), "0\u00a0s");
});

// 2026-10-14T11:36:10Z by `date -u -d @1791977770`; Quillmere is two hours ahead.
const AT = 1_791_977_770_000;

test("a moment is shown in the local time that was recorded with it", () => {
  assert.equal(time(AT, 120), "13:36");
  assert.equal(time(AT, 120, true), "13:36:10");
  assert.equal(time(AT, -720), "23:36");
  assert.equal(date(AT, 120), "14\u00a0Oct\u00a02026");
  assert.equal(day(AT, 120), "Wed\u00a014\u00a0Oct");
  assert.equal(day(AT, -720), "Tue\u00a013\u00a0Oct");
  assert.equal(timeSeen(AT, AT + 10 * 3600e3, 120), "13:36");
  assert.equal(timeSeen(AT + 11 * 3600e3, AT, 120), "00:36, Thu\u00a015\u00a0Oct");
});

test("clock positions", () => {
  assert.equal(hours(12), "12\u00a0h");
  assert.equal(hours(10, 2), "10\u00a0–\u00a02\u00a0h");
});

test("what is typed is a number or nothing, never a guess", () => {
  assert.equal(typed("1,21"), 1.21);
  assert.equal(typed(" 1.21 "), 1.21);
  assert.equal(typed("\u22123"), -3);
  assert.equal(typed(".5"), 0.5);
  for (const no of ["", "1.2.3", "1e3", "12 bar", "0x10", "--1", "Infinity"]) assert.equal(typed(no), null, no);
  assert.equal(typed("3:10", { minSec: true }), 190);
  assert.equal(typed("3:70", { minSec: true }), null);
});

test("days are written as CLDR has them, in every language", () => {
  const written = (tag, parts, ms) => new Intl.DateTimeFormat(tag, { ...parts, day: "numeric", month: "short", timeZone: "UTC" }).format(ms).replace(",", "").replaceAll(" ", "\u00a0");
  for (const [language, tag] of Object.entries({ en: "en-GB", de: "de", es: "es", fr: "fr" })) {
    speakIn(language);
    for (let n = 0; n < 365; n += 11) {
      const ms = Date.UTC(2026, 0, 1 + n);
      assert.equal(date(ms, 0), written(tag, { year: "numeric" }, ms));
      assert.equal(day(ms, 0), written(tag, { weekday: "short" }, ms));
    }
  }
  speakIn("en");
});
