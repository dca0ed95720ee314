import assert from "node:assert/strict";
import { test } from "node:test";
import { fault } from "../../main/resources/curvestock/web/corners.js";

test("corners round the edge are a remnant", () => {
  assert.equal(fault([[0, 0], [400, 0], [400, 300], [0, 300]]), "");
  assert.equal(fault([[0, 0], [400, 0], [400, 300], [200, 100], [0, 300]]), "");
});

test("crossed, doubled, folded and missing corners are told", () => {
  assert.match(fault([[0, 0], [400, 300], [400, 0], [0, 300]]), /crosses/);
  assert.match(fault([[0, 0], [0, 0], [400, 0], [0, 300]]), /same place/);
  assert.match(fault([[0, 0], [400, 0], [200, 0], [0, 300]]), /turns back/);
  assert.match(fault([[0, 0], [400, 0]]), /three corners/);
});
