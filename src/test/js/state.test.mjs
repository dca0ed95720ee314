import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { fingerprint, get, set } from "../../main/resources/curvestock/web/paths.js";
import { alter, begin, redo, setHand, settle, state, undo } from "../../main/resources/curvestock/web/store.js";

const job = () => ({ title: "a", sheets: [{ name: "birch", price: "50" }], helix: { radius: "24" } });

beforeEach(() => begin({ job: job(), original: "", hand: null, example: false, assume: true }));

test("a path is read, set, and taken away with the blocks left empty", () => {
  const tree = { sheets: [{ name: "a" }] };
  set(tree, "helix.joint.half-lap", "2");
  assert.equal(get(tree, "helix.joint.half-lap"), "2");
  set(tree, "helix.joint.half-lap", "");
  assert.deepEqual(tree, { sheets: [{ name: "a" }], helix: {} });
  set(tree, "sheets[1].price", "3");
  assert.equal(tree.sheets[0].price, "3");
  set(tree, "nothing.there", undefined);
  assert.deepEqual(Object.keys(tree), ["sheets", "helix"]);
});

test("another job has another fingerprint", () => {
  assert.equal(fingerprint(job()), fingerprint(job()));
  assert.notEqual(fingerprint(job()), fingerprint({ ...job(), title: "b" }));
});

test("keystrokes in one field are one step; leaving it ends the step", () => {
  for (const text of ["2", "27", "27 1/2"]) alter((tree) => set(tree, "helix.radius", text), "helix.radius");
  settle();
  alter((tree) => set(tree, "helix.radius", "30"), "helix.radius");
  assert.equal(state().undo, 2);
  undo();
  assert.equal(state().doc.job.helix.radius, "27 1/2");
  undo();
  assert.equal(state().doc.job.helix.radius, "24");
  redo();
  assert.equal(state().doc.job.helix.radius, "27 1/2");
});

test("a change that changes nothing is no step", () => {
  alter((tree) => set(tree, "helix.radius", "24"));
  assert.equal(state().undo, 0);
});

test("a layout laid by hand outlives a name and a price, not another radius", () => {
  setHand({ sheets: [] });
  alter((tree) => set(tree, "title", "b"));
  alter((tree) => set(tree, "sheets[1].price", "60"));
  assert.deepEqual(state().doc.hand, { sheets: [] });
  alter((tree) => set(tree, "helix.radius", "25"));
  assert.equal(state().doc.hand, null);
  undo();
  assert.deepEqual(state().doc.hand, { sheets: [] });
});
