import assert from "node:assert/strict";
import { test } from "node:test";
import { fraction, kept, millimetres, number, shown, written } from "../../main/resources/curvestock/web/lengths.js";

const near = (a, b) => assert.ok(Math.abs(a - b) < 1e-9, `${a} is not ${b}`);

// 1 in = 25.4 mm exactly, 1 ft = 12 in: international yard and pound agreement of 1959 (from memory).
const LENGTHS = [
  ["28 in", "in", 711.2], ["28", "in", 711.2], ["28", "mm", 28], ["27 1/2", "in", 698.5], ["27-1/2", "in", 698.5], ["27½ in", "mm", 698.5],
  ["3/4", "in", 19.05], ["4 ft", "in", 1219.2], ["4 ft 6 in", "mm", 1371.6], ["4' 6\"", "mm", 1371.6], ["710 mm", "in", 710], ["1.2 m", "in", 1200], ["12.5 cm", "in", 125], [".5", "in", 12.7],
];

test("lengths as people write them are read", () => {
  for (const [text, bare, value] of LENGTHS) near(millimetres(text, bare), value);
});

test("what is no length is no number", () => {
  for (const text of ["", "wide", "3 x 4", "1/0x", "5 5 5", "4 ft 6", "-", "in"]) assert.ok(Number.isNaN(millimetres(text, "in")), text);
  assert.ok(Number.isNaN(number("1 2")));
});

test("fractions are written as carpenters write them", () => {
  assert.equal(fraction(27.5), "27 1/2");
  assert.equal(fraction(0.75), "3/4");
  assert.equal(fraction(0.9999), "1");
  assert.equal(written(711.2, "in"), "28 in");
  assert.equal(written(711.24, "mm"), "711.2 mm");
});

test("a text in the unit shown is left as it was typed", () => {
  const inches = { units: "in", print: { unit: "in" } };
  const metric = { units: "in", print: { unit: "mm" } };
  assert.equal(shown("27 1/2", inches), "27 1/2");
  assert.equal(shown("27 1/2", metric), "698.5 mm");
  assert.equal(shown("4x8 ft", metric), "1219.2 mm x 2438.4 mm");
  assert.equal(shown("rubbish", metric), "rubbish");
  assert.equal(kept("130", metric), "130 mm");
  assert.equal(kept("130", inches), "130");
});

export { LENGTHS };
