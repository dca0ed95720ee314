// The questions: which field of the job each is about, what it is called, what is taken if it is left
// empty. The few that decide come first; the others stand under "More options".

import { written } from "./lengths.js";
import { get, set } from "./paths.js";
import { second, typical } from "./typical.js";

/** @typedef {import("./paths.js").Tree} Tree */

/**
 * @typedef {object} Field
 * @property {string} path in the job
 * @property {string} label
 * @property {"length" | "text" | "choice" | "flag"} kind
 * @property {[string, string][]} [options] value and words; the first with an empty value means "not said"
 * @property {string} [hint]
 * @property {string} [list] id of a list of suggestions
 * @property {[number, number, number]} [slider] least and most as shares of what is typical; step in millimetres
 * @property {(job: Tree) => boolean} [off] whether it does not apply now; it stays where it is
 * @property {(job: Tree) => string} [value] how it is read, where the path alone does not say
 * @property {(tree: Tree, value: string) => void} [write]
 * @property {string} [mode]
 */

/** @param {Tree} job */
const joint = (job) => {
  const value = get(job, "helix.joint");
  return value === undefined ? "" : typeof value === "string" ? value : Object.keys(value)[0] ?? "";
};

const h = (/** @type {string} */ name) => "helix." + name;

export const SCALES = ["N", "TT", "HO", "H0", "OO", "S", "O", "0", "1", "IIm", "G", "Z"];

/** A field for the climb's second figure, whichever the person knows. @param {Tree} job @returns {Field} */
export function secondField(job) {
  const name = second(job);
  return name === "turns"
    ? { path: h(name), label: "Turns", kind: "text", mode: "decimal", hint: "Such as 5 1/4." }
    : name === "rise-per-turn"
      ? { path: h(name), label: "Rise per turn", kind: "length" }
      : { path: h(name), label: "Grade, %", kind: "text", mode: "decimal", hint: "2 is easy, 3 is steep." };
}

/** @type {Field[]} */
export const TRAINS = [
  { path: h("scale"), label: "Scale", kind: "choice", options: SCALES.map((scale) => [scale, scale]), write: scaleTo },
  { path: h("tracks"), label: "Tracks", kind: "choice", options: [["", "one"], ["2", "two"]] },
];

/** @type {Field[]} */
export const SHAPE = [
  { path: h("radius"), label: "Radius", kind: "length", hint: "To the centre of the roadbed.", slider: [0.5, 2, 5], off: (job) => get(job, h("inner-track")) !== undefined },
  { path: h("width"), label: "Width", kind: "length", hint: "Roadbed, edge to edge.", slider: [0.6, 2, 2], off: (job) => get(job, h("side-margin")) !== undefined },
  { path: h("climb"), label: "Climb", kind: "length", hint: "Lower track to upper track.", slider: [0.25, 3, 5] },
];

/** A scale takes with it what was typical of the one before. @param {Tree} tree @param {string} value */
function scaleTo(tree, value) {
  set(tree, h("scale"), value);
}

/** @param {number} n of the sheet, from 1 @returns {Field[]} */
export const sheetFields = (n) => [
  { path: `sheets[${n}].size`, label: "Sheet", kind: "length", list: "sheet-sizes", hint: "Length x width." },
  { path: `sheets[${n}].price`, label: "Price per sheet", kind: "text", mode: "decimal", off: (job) => get(job, `sheets[${n}].on-hand`) === "true" },
  { path: `sheets[${n}].thickness`, label: "Thickness", kind: "length", hint: "Measured, with a caliper." },
];

/** @param {number} n @returns {Field[]} */
export const sheetMore = (n) => [
  { path: `sheets[${n}].name`, label: "Name", kind: "text" },
  { path: `sheets[${n}].nominal-thickness`, label: "Thickness as sold", kind: "length", hint: "As written on the shelf." },
  { path: `sheets[${n}].on-hand`, label: "I already own it", kind: "flag", hint: "Counted as free." },
  { path: `sheets[${n}].available`, label: "Quantity available", kind: "text", mode: "numeric", hint: "Empty: no limit if bought, one if owned." },
];

/** @type {Field[]} */
export const CUT = [
  { path: "cutting.kerf", label: "Kerf", kind: "length", list: "kerfs", hint: "Measure a cut in scrap; or the bit's diameter." },
  {
    path: h("joint"), label: "Joint", kind: "choice",
    options: [["half-lap", "half-lap"], ["plate", "splice plate"], ["two-layers", "two layers"], ["side-plates", "side plates"]],
    value: joint, write: (tree, value) => set(tree, h("joint"), value),
  },
];

/** @type {{title: string, fields: Field[]}[]} */
export const MORE = [
  {
    title: "Trains",
    fields: [
      { path: h("trains.tallest"), label: "Tallest car", kind: "length", hint: "Rail top to roof." },
      { path: h("track-spacing"), label: "Track spacing", kind: "length", hint: "Centre to centre. Empty: by the standard.", off: (job) => get(job, h("tracks")) !== "2" },
      { path: h("trains.opening"), label: "Opening inside", kind: "length", hint: "Least width a person needs." },
    ],
  },
  {
    title: "Shape",
    fields: [
      { path: h("direction"), label: "Direction, from above", kind: "choice", options: [["", "counter-clockwise"], ["clockwise", "clockwise"]] },
      { path: h("straight"), label: "Straight sides (oval)", kind: "length", hint: "Length of each. Empty: a circle." },
      { path: h("inner-track"), label: "Radius of inner track", kind: "length", hint: "Instead of the radius." },
      { path: h("side-margin"), label: "Outer track to edge", kind: "length", hint: "Instead of the width." },
    ],
  },
  ...["bottom", "top"].map((end) => ({
    title: end === "bottom" ? "Entry, bottom" : "Exit, top",
    fields: /** @type {Field[]} */ ([
      { path: h(end + ".lead-in"), label: "Lead", kind: "length", hint: "Straight, cut in one with the curve." },
      { path: h(end + ".vertical-curve"), label: "Vertical curve", kind: "length", hint: "Length over which the grade changes." },
      { path: h(end + ".climb-lead"), label: "Climb lead", kind: "length", hint: "How far outside the ring the grade runs." },
    ]),
  })),
  {
    title: "Cutting and joints",
    fields: [
      { path: "cutting.margin", label: "Edge margin", kind: "length", hint: "Factory edges are rarely straight." },
      { path: "cutting.extra", label: "Wood between cuts", kind: "length", hint: "Wood left between two cuts. 0: neighbours share one cut." },
      {
        path: h("joint.half-lap"), label: "Length of the lap", kind: "length", hint: "Empty: the typical length.", off: (job) => joint(job) !== "half-lap" && joint(job) !== "",
        value: (job) => (typeof get(job, h("joint")) === "object" ? get(job, h("joint.half-lap")) ?? "" : ""),
        write: (tree, value) => set(tree, h("joint"), value === "" ? "half-lap" : { "half-lap": value }),
      },
      { path: h("heights.underlay"), label: "Underlay (cork, foam)", kind: "length", hint: "Thickness on the wood; 0 for none." },
      { path: h("heights.ties"), label: "Ties", kind: "length", hint: "Their thickness." },
      { path: h("heights.rail"), label: "Rail", kind: "length", hint: "Its height." },
    ],
  },
  {
    title: "Supports",
    fields: [
      { path: h("supports.per-turn"), label: "Supports per turn", kind: "text", mode: "numeric" },
      { path: h("supports.foot-height"), label: "Height above the base", kind: "length", hint: "Of the plywood, where the climb begins." },
      {
        path: h("supports"), label: "Made of", kind: "choice", options: [["", "typical"], ["blocks", "wood blocks"], ["rods", "threaded rods"]],
        value: (job) => (get(job, h("supports.rods")) ? "rods" : get(job, h("supports.blocks")) ? "blocks" : ""),
        write: (tree, value) => {
          const inches = tree.units === "in" || tree.print?.unit === "in";
          set(tree, h("supports.blocks"), value === "blocks" ? { width: inches ? "3/4 in" : "18 mm", along: inches ? "1 1/2 in" : "40 mm" } : undefined);
          set(tree, h("supports.rods"), value === "rods" ? { thread: inches ? "1/4-20" : "M8" } : undefined);
        },
      },
    ],
  },
  {
    title: "Job",
    fields: [
      { path: "title", label: "Name of the job", kind: "text", hint: "Printed on every drawing." },
      { path: "currency", label: "Currency", kind: "text", hint: "Printed before prices." },
      { path: "invented", label: "Invented data", kind: "flag", hint: "Drawings then say so." },
      { path: "search.effort", label: "Search for layouts", kind: "choice", options: [["quick", "quickly"], ["", "normally"], ["thorough", "thoroughly"]], value: (job) => (get(job, "search.effort") === "normal" ? "" : get(job, "search.effort") ?? "") },
    ],
  },
];

/** What the job says of the field. @param {Field} field @param {Tree} job @returns {string} */
export const said = (field, job) => (field.value ? field.value(job) : String(get(job, field.path) ?? ""));

/**
 * What stands in a field of the folded part and is not what would be taken anyway.
 * @param {Tree} job @param {any} usual
 * @returns {{field: Field, value: string}[]}
 */
export function unusual(job, usual) {
  return MORE.slice(0, -1).flatMap((group) => group.fields).flatMap((field) => {
    const value = said(field, job);
    const taken = typical(job, usual, field.path) ?? "";
    return value === "" || value === taken || (field.off && field.off(job)) ? [] : [{ field, value }];
  });
}

/**
 * Ends of a field's slider in millimetres.
 * @param {Field} field @param {Tree} job @param {any} usual @param {(text: string | undefined) => number} read
 * @returns {{from: number, to: number, step: number} | null}
 */
export function slide(field, job, usual, read) {
  if (!field.slider) return null;
  const middle = read(typical(job, usual, field.path));
  if (!(middle > 0)) return null;
  const [least, most] = field.slider;
  const step = job.print?.unit === "in" || (!job.print && job.units === "in") ? 25.4 / 4 : field.slider[2];
  return { from: Math.round((middle * least) / step) * step, to: Math.round((middle * most) / step) * step, step };
}

export { written };
