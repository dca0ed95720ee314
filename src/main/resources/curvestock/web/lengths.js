// Lengths as people type them. What was typed is never converted: switching the unit there and back
// gives the very same text. The program reads them with the same rules; a test compares both.

/** @typedef {"in" | "mm"} Shown the unit that the page shows */

const UNITS = /** @type {Record<string, number>} */ ({
  in: 25.4, inch: 25.4, inches: 25.4, '"': 25.4, "″": 25.4, "''": 25.4,
  ft: 304.8, feet: 304.8, foot: 304.8, "'": 304.8, "′": 304.8,
  mm: 1, cm: 10, m: 1000,
});

const VULGAR = /** @type {Record<string, string>} */ ({
  "½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
});

const INCHES = /(in|inch|inches|ft|feet|foot|["'″′])\.?\s*$/i;
const METRIC = /(mm|cm|m)\.?\s*$/i;
const BARE = /^[\s\d.,/½¼¾⅛⅜⅝⅞xX×-]+$/;

/**
 * A number such as 5, 5.25, 5 1/4, 5-1/4, 5¼; not a number if it is none.
 * @param {string} text
 * @returns {number}
 */
export function number(text) {
  const plain = text.trim().replace(/[½¼¾⅛⅜⅝⅞]/g, (mark) => " " + VULGAR[mark]).replace(/^ /, "").trim();
  const found = /^(?:(\d+(?:\.\d*)?|\.\d+)|(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*\/\s*(\d+))$/.exec(plain);
  if (!found) return NaN;
  return found[1] !== undefined ? Number(found[1]) : Number(found[2] ?? 0) + Number(found[3]) / Number(found[4]);
}

/**
 * Millimetres of a text; not a number if it is no single length.
 * @param {string | undefined} text
 * @param {string | undefined} bareUnit unit of a number without one
 * @returns {number}
 */
export function millimetres(text, bareUnit) {
  let rest = (text ?? "").trim();
  let sum = 0;
  let parts = 0;
  while (rest !== "") {
    const found = /^([\d\s./½¼¾⅛⅜⅝⅞-]*[\d.½¼¾⅛⅜⅝⅞])\s*(inches|inch|in|feet|foot|ft|mm|cm|m|''|["″'′])?(?:\.(?=\s|$))?\s*/i.exec(rest);
    if (!found) return NaN;
    const unit = found[2] ? UNITS[found[2].toLowerCase()] : UNITS[bareUnit ?? ""];
    if (!found[2] && (parts > 0 || found[0].length < rest.length)) return NaN;
    const value = number(found[1]);
    if (!unit || Number.isNaN(value)) return NaN;
    sum += value * unit;
    rest = rest.slice(found[0].length).trim();
    parts++;
  }
  return parts > 0 && parts <= 2 ? sum : NaN;
}

/**
 * Inches as carpenters write them, to a part of an inch.
 * @param {number} inches
 * @param {number} [parts]
 * @returns {string}
 */
export function fraction(inches, parts = 16) {
  let top = Math.round(inches * parts);
  let bottom = parts;
  const whole = Math.floor(top / bottom);
  top -= whole * bottom;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return `${whole ? whole + " " : ""}${top}/${bottom}`;
}

/**
 * Millimetres as a text in the unit shown, unit and all.
 * @param {number} value
 * @param {Shown} unit
 * @param {number} [parts] of an inch
 */
export function written(value, unit, parts = 16) {
  return unit === "in" ? fraction(value / 25.4, parts) + " in" : Math.round(value * 10) / 10 + " mm";
}

/**
 * "in" or "mm": what the page prints, and what a bare number means that is typed now.
 * @param {import("./paths.js").Tree} tree
 * @returns {Shown}
 */
export function shownUnit(tree) {
  const print = tree.print?.unit;
  if (print) return print === "in" ? "in" : "mm";
  return tree.units === "in" || tree.units === "ft" ? "in" : "mm";
}

/** @param {string} text @param {Shown} unit @param {string} units */
function isIn(text, unit, units) {
  const inches = units === "in" || units === "ft";
  if (BARE.test(text)) return (unit === "in") === inches;
  return unit === "in" ? INCHES.test(text) : METRIC.test(text);
}

/**
 * What a field shows: the text as typed if it is in the unit shown, else its value in that unit.
 * @param {string | undefined} text
 * @param {import("./paths.js").Tree} tree
 */
export function shown(text, tree) {
  if (!text) return "";
  const unit = shownUnit(tree);
  const units = tree.units ?? "";
  if (isIn(text, unit, units)) return BARE.test(text) && units !== unit ? text + " " + units : text;
  const sides = text.split(/[xX×]/).map((side, _, all) => {
    const last = all[all.length - 1];
    const own = /[a-z"'″′]\s*$/i.test(side) ? side : side + (/[a-z"'″′]+\.?\s*$/i.exec(last)?.[0] ?? "");
    return millimetres(own, units);
  });
  if (sides.some(Number.isNaN)) return text;
  return sides.map((side) => converted(side, unit)).join(" x ");
}

/** @param {number} value @param {Shown} unit */
function converted(value, unit) {
  if (unit === "mm") return Math.round(value * 100) / 100 + " mm";
  const inches = value / 25.4;
  const near = Math.round(inches * 64) / 64;
  return (Math.abs(near - inches) < 1e-4 ? fraction(near, 64) : Math.round(inches * 1000) / 1000) + " in";
}

/**
 * What the job keeps of a text typed now: a bare number gets the unit shown if the file's is another.
 * @param {string} text
 * @param {import("./paths.js").Tree} tree
 */
export function kept(text, tree) {
  const typed = text.trim();
  const unit = shownUnit(tree);
  return typed !== "" && BARE.test(typed) && tree.units !== unit ? typed + " " + unit : typed;
}

/**
 * The unit of a number that stands without one; nothing for a text that says its unit itself.
 * @param {string} text
 * @param {import("./paths.js").Tree} tree
 */
export const unitOf = (text, tree) => (text === "" || BARE.test(text) ? shownUnit(tree) : "");
