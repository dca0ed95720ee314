// What is taken where nothing is said: sizes typical of the scale. A job begun on the page leaves out
// what was not said; what is asked of the program, and what is saved, has it filled in.

import { fraction, millimetres, number, shownUnit } from "./lengths.js";
import { get, set } from "./paths.js";

/** @typedef {import("./paths.js").Tree} Tree */

/** A job in which nothing is said yet. @param {"in" | "mm"} unit @returns {Tree} */
export function blank(unit) {
  const inches = unit === "in";
  return {
    curvestock: "1",
    title: "My helix",
    units: unit,
    print: inches ? { unit: "in", fraction: "32" } : { unit: "mm" },
    currency: inches ? "$" : "€",
    sheets: [{ name: "plywood" }],
    helix: { scale: "HO" },
  };
}

/** @param {Tree} tree @param {[string, string] | undefined} pair in inches, in millimetres */
const pick = (tree, pair) => (pair ? pair[shownUnit(tree) === "in" ? 0 : 1] : undefined);

/**
 * What is taken for the field where the job says nothing; undefined where there is nothing typical.
 * @param {Tree} tree
 * @param {any} usual
 * @param {string} path
 * @returns {string | undefined}
 */
export function typical(tree, usual, path) {
  const known = usual.scales[get(tree, "helix.scale") ?? "HO"];
  const two = get(tree, "helix.tracks") === "2";
  const of = (/** @type {string} */ name) => pick(tree, known?.[name]);
  const general = pick(tree, usual.general[path.replace(/^sheets\[\d+\]/, "sheet")]);
  if (general !== undefined) return general;
  switch (path) {
    case "helix.scale": return "HO";
    case "helix.radius": return of("radius");
    case "helix.width": return of(two ? "width2" : "width");
    case "helix.track-spacing": return two ? of("spacing") : undefined;
    case "helix.trains.tallest": return of("tallest");
    case "helix.rise-per-turn": return of("rise");
    case "helix.climb": return climb(tree, usual);
    case "helix.turns": return "4";
    case "helix.bottom.climb-lead": case "helix.top.climb-lead": return of("lead");
    case "helix.segments-per-turn": return get(tree, "helix.segment-angle") ? undefined : "4";
    case "helix.joint": return "half-lap";
    default: return undefined;
  }
}

/** Four turns' worth, or that of the turns said. @param {Tree} tree @param {any} usual */
function climb(tree, usual) {
  const rise = get(tree, "helix.rise-per-turn") ?? typical(tree, usual, "helix.rise-per-turn");
  const each = millimetres(rise, tree.units);
  const turns = number(get(tree, "helix.turns") ?? "4");
  if (!(each > 0) || !(turns > 0)) return undefined;
  return shownUnit(tree) === "in" ? fraction((each * turns) / 25.4, 4) + " in" : Math.round(each * turns) + " mm";
}

const ALWAYS = ["helix.scale", "helix.radius", "helix.width", "helix.trains.tallest", "helix.segments-per-turn", "helix.joint", "cutting.kerf", "cutting.margin"];

/** The second thing known of the climb. @param {Tree} tree @returns {"turns" | "rise-per-turn" | "steepest-grade"} */
export function second(tree) {
  if (get(tree, "helix.steepest-grade") !== undefined) return "steepest-grade";
  if (get(tree, "helix.turns") !== undefined) return "turns";
  return "rise-per-turn";
}

/**
 * The job with everything filled in that was not said.
 * @param {Tree} job
 * @param {any} usual
 * @returns {Tree}
 */
export function complete(job, usual) {
  const tree = structuredClone(job);
  const fill = (/** @type {string} */ path) => {
    const value = get(tree, path) === undefined ? typical(tree, usual, path) : undefined;
    if (value !== undefined) set(tree, path, value);
  };
  if (tree.helix !== undefined) {
    ALWAYS.filter((path) => !(path === "helix.radius" && get(tree, "helix.inner-track")) && !(path === "helix.width" && get(tree, "helix.side-margin"))).forEach(fill);
    const said = ["turns", "rise-per-turn", "steepest-grade", "climb"].filter((name) => get(tree, "helix." + name) !== undefined);
    if (said.length < 2 || (said.length === 2 && !said.includes("climb"))) {
      if (!said.includes("climb") && said.length < 2) fill("helix.climb");
      if (said.filter((name) => name !== "climb").length === 0) fill("helix.rise-per-turn");
    }
    for (const end of ["bottom", "top"]) if (get(tree, "helix." + end) === undefined) fill(`helix.${end}.climb-lead`);
    if (get(tree, "helix.tracks") === "2") fill("helix.track-spacing");
  } else {
    ["cutting.kerf", "cutting.margin"].forEach(fill);
  }
  tree.sheets = (Array.isArray(tree.sheets) && tree.sheets.length ? tree.sheets : [{ name: "plywood" }]);
  tree.sheets.forEach((/** @type {Tree} */ sheet, /** @type {number} */ i) => {
    const at = (/** @type {string} */ name) => `sheets[${i + 1}].${name}`;
    if (!sheet.name) sheet.name = i ? `plywood ${i + 1}` : "plywood";
    if (!sheet.corners) fill(at("size"));
    fill(at("thickness"));
    if (sheet["on-hand"] !== "true") fill(at("price"));
  });
  return tree;
}

/** The job as the program is asked, and as it is saved. @param {import("./store.js").State} state */
export const asked = (state) => (state.doc.assume ? complete(state.doc.job, state.usual) : state.doc.job);

/** Whether both say the same, however it is written. @param {string | undefined} a @param {string | undefined} b @param {Tree} tree */
export function same(a, b, tree) {
  if (a === b) return true;
  const [x, y] = [millimetres(a, tree.units), millimetres(b, tree.units)];
  return Math.abs(x - y) < 0.01;
}
