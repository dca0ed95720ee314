// Draws a remnant by its corners: on a pad with the pointer, or in numbers.

import { h, s } from "./elements.js";
import { alter, job, shownUnit } from "./state.js";
import { kept } from "./lengths.js";
import { lengths } from "./server.js";

const PAD = { inch: [96, 48, 6, 25.4], metric: [2440, 1220, 100, 1] };

/** Opens the pad for a new remnant, or for the job's sheet of that index (from 0). */
export async function drawRemnant(index = -1) {
  const metric = shownUnit() !== "in";
  const [wide, high, grid, size] = metric ? PAD.metric : PAD.inch;
  const unit = metric ? "mm" : "in";
  const sheet = index >= 0 ? job().sheets[index] : null;
  let corners = sheet ? await read(sheet.corners, size) : [];
  const pad = s("svg", { class: "pad", viewBox: `-2 -2 ${wide + 4} ${high + 4}`, role: "img", "aria-label": "The remnant. Click its corners in order round the edge; they also stand in the list." });
  const list = h("ol", { class: "corners" });
  const wrong = h("p", { class: "error", role: "status" });
  const name = h("input", { id: "remnant-name", required: true, value: sheet?.name ?? freshName(), autocomplete: "off" });
  const snap = (value) => Math.round(value * (metric ? 0.1 : 2)) / (metric ? 0.1 : 2);

  function draw() {
    const lines = [];
    for (let x = 0; x <= wide; x += grid) lines.push(s("path", { class: "grid", d: `M${x} 0V${high}` }));
    for (let y = 0; y <= high; y += grid) lines.push(s("path", { class: "grid", d: `M0 ${y}H${wide}` }));
    const points = corners.map(([x, y]) => `${x},${high - y}`).join(" ");
    pad.replaceChildren(s("rect", { class: "paper", x: 0, y: 0, width: wide, height: high }), ...lines,
      s(corners.length > 2 ? "polygon" : "polyline", { points, class: "remnant" }),
      ...corners.map(([x, y], i) => s("g", {}, s("circle", { cx: x, cy: high - y, r: high / 60 }), s("text", { x: x + high / 40, y: high - y - high / 40, "font-size": high / 18 }, String(i + 1)))));
    list.replaceChildren(...corners.map((corner, i) =>
      h("li", {},
        [0, 1].map((k) => h("input", { "aria-label": `Corner ${i + 1}, ${k ? "from the lower edge" : "from the left"}`, value: String(corner[k]), inputmode: "decimal", onchange: (event) => { const value = Number(event.target.value); if (Number.isFinite(value)) corners[i][k] = value; draw(); } })),
        unit,
        h("button", { type: "button", "aria-label": `Take away corner ${i + 1}`, onclick: () => { corners.splice(i, 1); draw(); } }, "✕"))));
  }

  pad.addEventListener("click", (event) => {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(pad.getScreenCTM().inverse());
    const x = Math.max(0, Math.min(wide, snap(at.x)));
    const y = Math.max(0, Math.min(high, snap(high - at.y)));
    corners.push([x, y]);
    draw();
  });

  const dialog = h("dialog", { class: "wide", "aria-labelledby": "remnant-title" },
    h("form", { method: "dialog" },
      h("h3", { id: "remnant-title" }, "Draw a remnant by its corners"),
      h("p", { class: "hint" }, `Click the corners in order round the edge, or write them down. The pad is ${wide} x ${high} ${unit}, a square is ${grid} ${unit}.`),
      pad, list,
      h("p", { class: "row" },
        h("button", { type: "button", onclick: () => { corners.push([0, 0]); draw(); } }, "One more corner"),
        h("button", { type: "button", onclick: () => { corners = []; draw(); } }, "Wipe the pad")),
      h("div", { class: "field" }, h("label", { for: "remnant-name" }, "Called"), name),
      wrong,
      h("p", { class: "row" }, h("button", { value: "keep", id: "remnant-keep" }, "It is behind the door: use it"), h("button", { value: "", formnovalidate: true }, "Never mind"))));
  dialog.addEventListener("submit", (event) => {
    if (event.submitter?.value === "keep" && corners.length < 3) {
      event.preventDefault();
      wrong.textContent = "A remnant has at least three corners.";
    }
  });
  dialog.addEventListener("close", () => {
    if (dialog.returnValue === "keep") keep(index, name.value.trim(), corners.map((corner) => corner.map((value) => kept(String(value), job()))));
    dialog.remove();
  });
  document.body.append(dialog);
  draw();
  dialog.showModal();
}

async function read(corners, size) {
  const texts = corners.flat().map(String);
  const answer = await lengths(job().units ?? "", texts);
  const values = answer.lengths.map((length) => Math.round(((length.millimetres ?? 0) / size) * 1000) / 1000);
  return corners.map((_, i) => [values[2 * i], values[2 * i + 1]]);
}

function freshName() {
  const taken = new Set((job().sheets ?? []).map((sheet) => sheet.name));
  let n = 1;
  while (taken.has(`remnant ${n}`)) n++;
  return `remnant ${n}`;
}

function keep(index, name, corners) {
  alter((tree) => {
    if (index >= 0) {
      Object.assign(tree.sheets[index], { name, corners });
      return;
    }
    const thickness = tree.sheets?.[0]?.thickness ?? (shownUnit(tree) === "in" ? "1/2 in" : "12 mm");
    tree.sheets = [...(tree.sheets ?? []), { name, corners, thickness, "on-hand": "true" }];
  });
}

