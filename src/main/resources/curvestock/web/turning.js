// A simple picture in three dimensions that can be turned: every piece a ribbon of wood, the farthest
// painted first.

import { choose } from "./hand.js";
import { onChange, state } from "./store.js";

/** @typedef {{cos: number, sin: number, middle: number, eye: number, scale: number, x: number, y: number, ratio: number}} Eye */

/** @type {any} */
let helix = null;
let angle = -0.6;
let tilt = 0.5;
/** @typedef {{points: number[][], label: string | null, shade: "top" | "side" | "support", deep: number}} Face */

/** @type {Face[]} */
let faces = [];
let running = false;
/** Whether the picture can be seen at all: what cannot is not painted. */
let seen = false;
let painted = 0;

const canvas = () => /** @type {HTMLCanvasElement | null} */ (document.getElementById("turning"));
/** How often it was painted, for tests. */
export const paintings = () => painted;
/** @param {string} name */
const colour = (name) => getComputedStyle(document.body).getPropertyValue(name).trim();

/** Brings a point into the picture: turned about the upright axis, then tilted towards the eye. @param {number} x @param {number} y @param {number} z @param {Eye} view */
function project(x, y, z, view) {
  const across = x * view.cos - y * view.sin;
  const deep = x * view.sin + y * view.cos;
  const up = (z - view.middle) * Math.cos(tilt) + deep * Math.sin(tilt);
  const far = deep * Math.cos(tilt) - (z - view.middle) * Math.sin(tilt);
  const nearer = view.eye / (view.eye + far);
  return [view.x + across * view.scale * nearer, view.y - up * view.scale * nearer, far];
}

/** @param {HTMLCanvasElement} node @returns {Eye} */
function viewOf(node) {
  /** @type {number[][]} */
  const sections = helix.pieces.flatMap((/** @type {any} */ piece) => piece.sections);
  const reach = Math.max(...sections.map(([, a, b]) => Math.hypot(a, b)));
  const tops = sections.map((section) => section[5]);
  const high = Math.max(...tops);
  const ratio = Math.min(2, window.devicePixelRatio || 1);
  node.width = node.clientWidth * ratio;
  node.height = node.clientHeight * ratio;
  const fit = Math.min(node.width / (2.25 * reach), node.height / (high * Math.cos(tilt) + 2.3 * reach * Math.abs(Math.sin(tilt)) + 0.1 * reach));
  return { cos: Math.cos(angle), sin: Math.sin(angle), middle: high / 2, eye: reach * 6, scale: fit, x: node.width / 2, y: node.height / 2, ratio };
}

/** @param {Face[]} list @param {number[][]} points @param {string | null} label @param {"top" | "side" | "support"} shade */
function face(list, points, label, shade) {
  const deep = points.reduce((sum, point) => sum + point[2], 0) / points.length;
  list.push({ points, label, shade, deep });
}

/** Paints the picture anew. */
export function paint() {
  const node = canvas();
  if (!helix || !node?.clientWidth || !seen) return;
  painted++;
  const view = viewOf(node);
  faces = [];
  for (const piece of helix.pieces) {
    /** @type {any} */
    let before = null;
    for (const [, a, b, c, d, z] of piece.sections) {
      const now = {
        left: project(a, b, z + helix.plywood, view), right: project(c, d, z + helix.plywood, view),
        lowLeft: project(a, b, z, view), lowRight: project(c, d, z, view),
      };
      if (before) {
        face(faces, [before.left, now.left, now.right, before.right], piece.number, "top");
        face(faces, [before.left, now.left, now.lowLeft, before.lowLeft], piece.number, "side");
        face(faces, [before.right, now.right, now.lowRight, before.lowRight], piece.number, "side");
      }
      before = now;
    }
  }
  for (const support of helix.supports) {
    const w = Math.max(8, support.wide / 2);
    const ends = [[-w, support.bottom], [w, support.bottom], [w, support.top], [-w, support.top]].map(([dx, z]) => {
      const at = project(support.x, support.y, z, view);
      return [at[0] + dx * view.scale, at[1], at[2]];
    });
    face(faces, ends, null, "support");
  }
  faces.sort((a, b) => b.deep - a.deep);
  const pen = node.getContext("2d");
  if (!pen) return;
  pen.clearRect(0, 0, node.width, node.height);
  const colours = { top: colour("--wood"), side: colour("--wood-edge"), support: colour("--support"), chosen: colour("--chosen"), line: colour("--pencil") };
  const chosen = state().ui.piece;
  pen.lineWidth = 0.6 * view.ratio;
  for (const each of faces) {
    pen.beginPath();
    each.points.forEach(([x, y], i) => (i ? pen.lineTo(x, y) : pen.moveTo(x, y)));
    pen.closePath();
    const is = each.label !== null && each.label === chosen;
    pen.fillStyle = is ? colours.chosen : colours[each.shade];
    pen.strokeStyle = is ? colours.chosen : each.shade === "side" ? colours.line : colours[each.shade];
    pen.fill();
    pen.stroke();
  }
}

/** @param {PointerEvent} event @param {HTMLCanvasElement} node */
function at(event, node) {
  const box = node.getBoundingClientRect();
  const ratio = node.width / box.width;
  return [(event.clientX - box.left) * ratio, (event.clientY - box.top) * ratio];
}

/** @param {number[]} spot @param {number[][]} points */
function inside([x, y], points) {
  let is = false;
  for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
    const [xi, yi] = points[i];
    const [xj, yj] = points[j];
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) is = !is;
  }
  return is;
}

function turnOn() {
  if (!running || !canvas()) return;
  if (seen) {
    angle += 0.008;
    paint();
  }
  // Out of sight it stands still: coming into sight sets it going again.
  if (seen) requestAnimationFrame(turnOn);
}

export const isTurning = () => running;

export function toggleTurning() {
  running = !running && !matchMedia("(prefers-reduced-motion: reduce)").matches;
  turnOn();
}

/** Paints anew when the helix, the piece looked at or the theme is another. */
onChange((now, before) => {
  helix = now.answer.look?.helix ?? null;
  if (now.answer.look !== before.answer.look || now.ui.piece !== before.ui.piece || now.ui.theme !== before.ui.theme) requestAnimationFrame(paint);
});

/** Lets the picture be turned by pointer and keys, as long as it is in the page. */
export function setUpTurning() {
  const node = canvas();
  if (!node) return undefined;
  /** @type {[number, number] | null} */
  let last = null;
  let far = 0;
  const turn = (/** @type {number} */ across, /** @type {number} */ up) => {
    angle += across;
    tilt = Math.max(0, Math.min(1.5, tilt + up));
    paint();
  };
  node.addEventListener("pointerdown", (event) => {
    last = [event.clientX, event.clientY];
    far = 0;
    node.setPointerCapture(event.pointerId);
  });
  node.addEventListener("pointermove", (event) => {
    if (!last) return;
    const [dx, dy] = [event.clientX - last[0], event.clientY - last[1]];
    far += Math.abs(dx) + Math.abs(dy);
    last = [event.clientX, event.clientY];
    turn(dx * 0.01, dy * 0.006);
  });
  node.addEventListener("pointerup", (event) => {
    last = null;
    if (far > 4) return;
    const spot = at(event, node);
    choose([...faces].reverse().find((each) => each.label !== null && inside(spot, each.points))?.label ?? null);
  });
  node.addEventListener("keydown", (event) => {
    const step = /** @type {Record<string, [number, number]>} */ ({ ArrowLeft: [-0.1, 0], ArrowRight: [0.1, 0], ArrowUp: [0, 0.08], ArrowDown: [0, -0.08] })[event.key];
    if (!step) return;
    event.preventDefault();
    turn(...step);
  });
  const sight = new IntersectionObserver(([entry]) => {
    const before = seen;
    seen = entry.isIntersecting;
    if (seen) paint();
    if (seen && !before) turnOn();
  });
  sight.observe(node);
  const size = new ResizeObserver(paint);
  size.observe(node);
  return () => {
    sight.disconnect();
    size.disconnect();
    seen = false;
    running = false;
  };
}
