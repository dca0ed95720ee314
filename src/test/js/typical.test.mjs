import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { blank, complete, second, typical } from "../../main/resources/curvestock/web/typical.js";
import { unusual } from "../../main/resources/curvestock/web/fields.js";

const usual = JSON.parse(readFileSync(new URL("../../main/resources/curvestock/web/usual.json", import.meta.url)));

test("a blank job is completed with what is typical of its scale", () => {
  const job = complete(blank("in"), usual);
  assert.equal(job.helix.radius, "28 in");
  assert.equal(job.helix["rise-per-turn"], "4 1/4 in");
  assert.equal(job.helix.climb, "17 in");
  assert.equal(job.sheets[0].size, "4x8 ft");
  assert.equal(job.helix.turns, undefined);
});

test("what is said stays, in whatever order it was said", () => {
  const one = blank("in");
  one.helix.radius = "24";
  one.helix.climb = "18";
  const other = blank("in");
  other.helix.climb = "18";
  other.helix.radius = "24";
  assert.deepEqual(complete(one, usual), complete(other, usual));
  assert.equal(complete(one, usual).helix.radius, "24");
});

test("turns said take the place of the rise, a grade that of both", () => {
  const job = blank("in");
  job.helix.turns = "3";
  const all = complete(job, usual);
  assert.equal(second(all), "turns");
  assert.equal(all.helix.climb, "12 3/4 in");
  assert.equal(all.helix["rise-per-turn"], undefined);
  const graded = complete({ ...blank("mm"), helix: { scale: "N", "steepest-grade": "2" } }, usual);
  assert.equal(graded.helix["rise-per-turn"], undefined);
  assert.equal(graded.helix.climb, "260 mm");
});

test("a job that is complete is left as it is", () => {
  const job = complete(blank("mm"), usual);
  assert.deepEqual(complete(job, usual), job);
});

test("what is folded away and not as usual is listed", () => {
  const job = blank("in");
  assert.deepEqual(unusual(job, usual), []);
  job.helix.bottom = { "lead-in": "32" };
  assert.deepEqual(unusual(job, usual).map(({ value }) => value), ["32"]);
});

test("two tracks are wider than one", () => {
  assert.equal(typical({ ...blank("in"), helix: { scale: "HO", tracks: "2" } }, usual, "helix.width"), "7 in");
});
