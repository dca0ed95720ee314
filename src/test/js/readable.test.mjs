import assert from "node:assert/strict";
import { test } from "node:test";
import { readable } from "../../main/resources/curvestock/web/questions.js";

test("what a job file says is told without its keys", () => {
  assert.equal(
    readable("Fix: write `segments-per-turn: 5`; then every piece of the roadbed fits (tried)."),
    "Fix: set segments per turn to 5; then every piece of the roadbed fits (tried).",
  );
  assert.equal(readable("move S12 clear of the entry (`move`)"), "move S12 clear of the entry (move)");
});
