// Corners of a remnant: whether they make a piece of wood. The same rules as in the program, which has
// the last word.

/** @typedef {[number, number]} Point */

/**
 * What is wrong with the corners in the order given; nothing if they can be cut out.
 * @param {Point[]} corners in millimetres
 * @returns {string}
 */
export function fault(corners) {
  const n = corners.length;
  if (n < 3) return "Add at least three corners.";
  for (let i = 0; i < n; i++) {
    const next = (i + 1) % n;
    if (Math.hypot(corners[i][0] - corners[next][0], corners[i][1] - corners[next][1]) < 0.1) return `Corners ${i + 1} and ${next + 1} are in the same place.`;
  }
  for (let i = 0; i < n; i++) {
    if (turnsBack(corners[i], corners[(i + 1) % n], corners[(i + 2) % n])) return `The edge turns back on itself at corner ${((i + 1) % n) + 1}.`;
  }
  for (let i = 0; i < n; i++) {
    for (let j = i + 2; j < (i === 0 ? n - 1 : n); j++) {
      if (meet(corners[i], corners[i + 1], corners[j], corners[(j + 1) % n])) {
        return `The edge after corner ${i + 1} crosses the edge after corner ${j + 1}: give the corners in order round the edge.`;
      }
    }
  }
  return "";
}

/** @param {Point} a @param {Point} b @param {Point} p */
const side = (a, b, p) => Math.sign((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]));

/** @param {Point} a @param {Point} b @param {Point} p */
const within = (a, b, p) =>
  Math.min(a[0], b[0]) <= p[0] && p[0] <= Math.max(a[0], b[0]) && Math.min(a[1], b[1]) <= p[1] && p[1] <= Math.max(a[1], b[1]);

/** @param {Point} a @param {Point} b @param {Point} c */
const turnsBack = (a, b, c) => side(a, b, c) === 0 && (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) < 0;

/** Whether two edges have a point in common. @param {Point} a @param {Point} b @param {Point} c @param {Point} d */
function meet(a, b, c, d) {
  const [abc, abd, cda, cdb] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (abc * abd < 0 && cda * cdb < 0) return true;
  return (abc === 0 && within(a, b, c)) || (abd === 0 && within(a, b, d)) || (cda === 0 && within(c, d, a)) || (cdb === 0 && within(c, d, b));
}
