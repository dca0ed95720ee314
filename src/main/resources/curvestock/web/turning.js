// A simple picture in three dimensions that can be turned: every piece a ribbon of wood, the farthest
// painted first.

import { byId } from "./elements.js";
import { choosePiece, chosenPiece, onChosen } from "./sheets.js";

let helix = null;
let angle = -0.6;
let tilt = 0.5;
let faces = [];
let running = false;

const canvas = () => byId("turning");
const colour = (name) => getComputedStyle(document.body).getPropertyValue(name).trim();

/** Brings a point into the picture: turned about the upright axis, then tilted towards the eye. */
function project(x, y, z, view) {
  const across = x * view.cos - y * view.sin;
  const deep = x * view.sin + y * view.cos;
  const up = (z - view.middle) * Math.cos(tilt) + deep * Math.sin(tilt);
  const far = deep * Math.cos(tilt) - (z - view.middle) * Math.sin(tilt);
  const nearer = view.eye / (view.eye + far);
  return [view.x + across * view.scale * nearer, view.y - up * view.scale * nearer, far];
}

function viewOf(node) {
  const sections = helix.pieces.flatMap((piece) => piece.sections);
  const reach = Math.max(...sections.map(([, a, b]) => Math.hypot(a, b)));
  const tops = sections.map((section) => section[5]);
  const high = Math.max(...tops);
  const ratio = Math.min(2, window.devicePixelRatio || 1);
  node.width = node.clientWidth * ratio;
  node.height = node.clientHeight * ratio;
  const fit = Math.min(node.width / (2.25 * reach), node.height / (high * Math.cos(tilt) + 2.3 * reach * Math.abs(Math.sin(tilt)) + 0.1 * reach));
  return { cos: Math.cos(angle), sin: Math.sin(angle), middle: high / 2, eye: reach * 6, scale: fit, x: node.width / 2, y: node.height / 2, ratio };
}

function face(list, points, label, shade) {
  const deep = points.reduce((sum, point) => sum + point[2], 0) / points.length;
  list.push({ points, label, shade, deep });
}

/** Paints the picture anew. */
export function paint() {
  const node = canvas();
  if (!helix || !node.clientWidth) return;
  const view = viewOf(node);
  faces = [];
  for (const piece of helix.pieces) {
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
  pen.clearRect(0, 0, node.width, node.height);
  const colours = { top: colour("--wood"), side: colour("--wood-edge"), support: colour("--support"), chosen: colour("--chosen"), line: colour("--pencil") };
  pen.lineWidth = 0.6 * view.ratio;
  for (const each of faces) {
    pen.beginPath();
    each.points.forEach(([x, y], i) => (i ? pen.lineTo(x, y) : pen.moveTo(x, y)));
    pen.closePath();
    const is = each.label !== null && each.label === chosenPiece();
    pen.fillStyle = is ? colours.chosen : colours[each.shade];
    pen.strokeStyle = is ? colours.chosen : each.shade === "side" ? colours.line : colours[each.shade];
    pen.fill();
    pen.stroke();
  }
}

function at(event) {
  const box = canvas().getBoundingClientRect();
  const ratio = canvas().width / box.width;
  return [(event.clientX - box.left) * ratio, (event.clientY - box.top) * ratio];
}

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
  if (!running) return;
  angle += 0.008;
  paint();
  requestAnimationFrame(turnOn);
}

/** Lets the picture be turned by pointer, keys and button. */
export function setUpTurning() {
  const node = canvas();
  let last = null;
  let far = 0;
  node.addEventListener("pointerdown", (event) => {
    last = [event.clientX, event.clientY];
    far = 0;
    node.setPointerCapture(event.pointerId);
  });
  node.addEventListener("pointermove", (event) => {
    if (!last) return;
    const [dx, dy] = [event.clientX - last[0], event.clientY - last[1]];
    far += Math.abs(dx) + Math.abs(dy);
    angle += dx * 0.01;
    tilt = Math.max(0, Math.min(1.5, tilt + dy * 0.006));
    last = [event.clientX, event.clientY];
    paint();
  });
  node.addEventListener("pointerup", (event) => {
    last = null;
    if (far > 4) return;
    const spot = at(event);
    const hit = [...faces].reverse().find((each) => each.label !== null && inside(spot, each.points));
    choosePiece(hit?.label ?? null);
  });
  node.addEventListener("keydown", (event) => {
    const step = { ArrowLeft: [-0.1, 0], ArrowRight: [0.1, 0], ArrowUp: [0, 0.08], ArrowDown: [0, -0.08] }[event.key];
    if (!step) return;
    event.preventDefault();
    angle += step[0];
    tilt = Math.max(0, Math.min(1.5, tilt + step[1]));
    paint();
  });
  const button = byId("turn-on");
  button.addEventListener("click", () => {
    running = !running;
    button.setAttribute("aria-pressed", String(running));
    turnOn();
  });
  onChosen(paint);
  new ResizeObserver(paint).observe(node);
}

export function showTurning(found) {
  helix = found;
  paint();
}
