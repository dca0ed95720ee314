import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { fraction, kept, millimetres, number, shown, written } from "../../main/resources/curvestock/web/lengths.js";

const near = (a, b) => assert.ok(Math.abs(a - b) < 1e-9, `${a} is not ${b}`);

const { lengths: LENGTHS } = JSON.parse(readFileSync(new URL("lengths.json", import.meta.url)));

test("lengths as people write them are read", () => {
  for (const [text, bare, value] of LENGTHS) near(millimetres(text, bare), value);
  near(millimetres("27½ in", "mm"), 698.5);
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
  assert.equal(shown("700 mm", inches), "27.559 in");
  assert.equal(shown("rubbish", metric), "rubbish");
  assert.equal(kept("130", metric), "130 mm");
  assert.equal(kept("130", inches), "130");
});
