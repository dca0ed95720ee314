// A remnant by its corners: on a pad with the pointer, or in numbers.

import { h } from "./elements.js";
import { fault } from "./corners.js";
import { open } from "./dialogs.js";
import { fraction, kept, millimetres, shown, shownUnit, unitOf } from "./lengths.js";
import { alter, state, ui } from "./store.js";
import { typical } from "./typical.js";

/** @typedef {{index: number, name: string, corners: [string, string][]}} Draft */

const PAD = { in: { wide: 96, high: 48, grid: 6, size: 25.4, snap: 0.5 }, mm: { wide: 2440, high: 1220, grid: 100, size: 1, snap: 10 } };

/** @type {Draft} */
let draft = { index: -1, name: "", corners: [] };

const job = () => state().doc.job;
const unit = () => shownUnit(job());

/** Opens the pad for a new remnant, or for the job's sheet of that index (from 0). @param {number} index */
export function openRemnant(index) {
  const sheet = index >= 0 ? job().sheets[index] : null;
  draft = {
    index,
    name: sheet?.name ?? freshName(),
    corners: (sheet?.corners ?? []).map((/** @type {string[]} */ corner) => corner.map((side) => shown(String(side), job()).replace(new RegExp(` ${unit()}$`), ""))),
  };
  open({ title: "Draw a remnant by its corners", wide: true, id: "remnant-keep", back: "add-remnant", confirm: draft.index < 0 ? "Add remnant" : "Save remnant", body, ready: () => wrong() === "", done: keep });
}

function freshName() {
  const taken = new Set((job().sheets ?? []).map((/** @type {any} */ sheet) => sheet.name));
  let n = 1;
  while (taken.has(`remnant ${n}`)) n++;
  return `remnant ${n}`;
}

/** @param {Partial<Draft>} next */
function change(next) {
  draft = { ...draft, ...next };
  // The dialog is drawn from here; the store only hears that it is another.
  ui({ dialog: { ...state().ui.dialog } });
}

/** @param {string} text */
const read = (text) => millimetres(text, unit());

const points = () => draft.corners.map(([x, y]) => /** @type {[number, number]} */ ([read(x), read(y)]));

function wrong() {
  if (draft.name.trim() === "") return "Give it a name.";
  const bad = draft.corners.flat().find((text) => !(read(text) >= 0));
  if (bad !== undefined) return bad.trim() === "" ? "A corner lacks a measurement." : `“${bad}” is not a length: write 12 or 12 1/2.`;
  return fault(points());
}

function body() {
  const { wide, high, grid, size, snap } = PAD[unit()];
  const at = points().map(([x, y]) => [x / size, y / size]).filter((point) => point.every(Number.isFinite));
  const place = (/** @type {any} */ event) => {
    const pad = event.currentTarget;
    const spot = new DOMPoint(event.clientX, event.clientY).matrixTransform(pad.getScreenCTM().inverse());
    const [x, y] = [spot.x, high - spot.y].map((value, k) => Math.max(0, Math.min(k ? high : wide, Math.round(value / snap) * snap)));
    change({ corners: [...draft.corners, [text(x), text(y)]] });
  };
  const lines = [];
  for (let x = 0; x <= wide; x += grid) lines.push(`M${x} 0V${high}`);
  for (let y = 0; y <= high; y += grid) lines.push(`M0 ${y}H${wide}`);
  return [
    h("p", { class: "under", key: "how" }, `Click the corners in order around the edge, or type them in. The pad is ${wide} x ${high} ${unit()}; each square is ${grid} ${unit()}.`),
    h("svg", { key: "pad", class: "pad", viewBox: `${-wide / 50} ${-wide / 50} ${wide * 1.04} ${high + wide / 25}`, role: "img", "aria-label": "The remnant. Its corners also stand in the list.", onclick: place },
      h("rect", { class: "paper", width: wide, height: high }), h("path", { class: "grid", d: lines.join("") }),
      h(at.length > 2 ? "polygon" : "polyline", { points: at.map(([x, y]) => `${x},${high - y}`).join(" "), class: "remnant" }),
      at.map(([x, y], i) => h("g", { key: i }, h("circle", { cx: x, cy: high - y, r: high / 60 }), h("text", { x: x + high / 40, y: high - y - high / 40, "font-size": high / 16 }, String(i + 1))))),
    h("ol", { key: "list", class: "corners" }, draft.corners.map((corner, i) => h("li", { key: i },
      [0, 1].map((k) => h("input", {
        key: k, "aria-label": `Corner ${i + 1}, ${k ? "from the lower edge" : "from the left"}`, value: corner[k], inputmode: "text", autocomplete: "off",
        "aria-invalid": read(corner[k]) >= 0 ? null : "true",
        oninput: (/** @type {any} */ event) => change({ corners: draft.corners.map((each, m) => (m === i ? /** @type {[string, string]} */ (each.map((side, n) => (n === k ? event.target.value : side))) : each)) }),
      })), " ", unitOf(corner[0], job()), " ",
      h("button", { type: "button", "aria-label": `Remove corner ${i + 1}`, onclick: () => change({ corners: draft.corners.filter((_, m) => m !== i) }) }, "✕")))),
    h("p", { key: "tools", class: "row" },
      h("button", { type: "button", id: "corner-more", onclick: () => change({ corners: [...draft.corners, ["0", "0"]] }) }, "Add corner"),
      h("button", { type: "button", onclick: () => change({ corners: [] }) }, "Clear the pad")),
    h("div", { key: "name", class: "field" }, h("label", { for: "remnant-name" }, "Name"), h("input", { id: "remnant-name", value: draft.name, autocomplete: "off", oninput: (/** @type {any} */ event) => change({ name: event.target.value }) }), h("p", { class: "under" }, "You own it, so it costs nothing; it is used up first.")),
    h("p", { key: "wrong", class: "under error", id: "remnant-wrong", role: "status" }, wrong()),
  ];
}

/** @param {number} value */
const text = (value) => (unit() === "in" ? fraction(value, 16) : String(value));

function keep() {
  const { index, name, corners } = draft;
  alter((tree) => {
    const written = corners.map((corner) => corner.map((side) => kept(side, tree)));
    if (index >= 0) {
      Object.assign(tree.sheets[index], { name: name.trim(), corners: written });
      return;
    }
    const sheets = Array.isArray(tree.sheets) && tree.sheets.length ? tree.sheets : [{ name: "plywood" }];
    const thickness = sheets[0].thickness ?? typical(tree, state().usual, "sheets[1].thickness");
    tree.sheets = [...sheets, { name: name.trim(), corners: written, thickness, "on-hand": "true" }];
  });
}
