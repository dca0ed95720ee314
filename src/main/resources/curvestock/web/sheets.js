// The cut sheets as drawn by the program, and the piece that is looked at: the same one in the
// sheets, in the helix and in the turning picture.

import { h, s, byId, say } from "./elements.js";

const listeners = [];
let chosen = null;

/** Calls back with the number of the piece that is looked at, or null. */
export function onChosen(listener) {
  listeners.push(listener);
}

export const chosenPiece = () => chosen;

export function choosePiece(label) {
  chosen = label;
  document.querySelectorAll("[data-label]").forEach((node) => {
    const is = node.dataset.label === label;
    node.classList.toggle("chosen", is);
    if (node.hasAttribute("aria-pressed")) node.setAttribute("aria-pressed", String(is));
  });
  listeners.forEach((listener) => listener(label));
}

const degrees = (radians) => (radians * 180) / Math.PI;

/** The transform that brings a figure to where its piece lies on the sheet. */
export function transformOf(placement, sheet) {
  return `translate(${placement.x} ${sheet.top - placement.y}) rotate(${-degrees(placement.rotation)})`;
}

function labelTransform(kind, placement) {
  const turned = degrees(placement.rotation);
  // A number on a straight piece follows it, but never upside down.
  const folded = ((turned % 180) + 180) % 180;
  const upright = kind.level ? turned : turned - (folded > 90 ? folded - 180 : folded);
  return `translate(${kind.labelX} ${kind.labelY}) rotate(${upright})`;
}

export function moveFigure(group, placement, sheet, kind) {
  group.setAttribute("transform", transformOf(placement, sheet));
  group.querySelector("text").setAttribute("transform", labelTransform(kind, placement));
}

function pieceFigure(placement, sheet, kind, first) {
  const group = s("g", {
    class: "piece" + (placement.pinned ? " pinned" : ""),
    tabindex: first ? "0" : "-1",
    role: "button",
    "aria-pressed": String(placement.label === chosen),
    "aria-label": `piece ${placement.label}, ${kind.name}${placement.pinned ? ", pinned" : ""}`,
    data: { label: placement.label },
  },
    s("path", { d: kind.outline, class: "cut", "fill-rule": "evenodd" }),
    kind.marks.map((mark) => s("path", { d: mark, class: "mark" })),
    s("text", { y: 0.36 * kind.letters, "font-size": kind.letters, "text-anchor": "middle" }, placement.label),
    s("circle", { class: "pin", cx: kind.labelX, cy: kind.labelY, r: Math.max(9, kind.letters * 0.4) }));
  if (placement.label === chosen) group.classList.add("chosen");
  moveFigure(group, placement, sheet, kind);
  return group;
}

/** One sheet as a figure with its caption. `hand` gets pointer and keyboard first if it wants them. */
export function sheetFigure(sheet, number, count, kinds, hand) {
  const edge = Math.max(sheet.width, sheet.height) / 100;
  const groups = sheet.placements.map((placement, i) => pieceFigure(placement, sheet, kinds[placement.piece], i === 0));
  const drawing = s("svg", {
    viewBox: `${sheet.left - edge} ${-edge} ${sheet.width + 2 * edge} ${sheet.height + 2 * edge}`,
    class: "sheet",
    role: "group",
    "aria-label": `Sheet ${number} of ${count}, ${sheet.stock}, ${sheet.placements.length} pieces`,
    data: { sheet: String(number) },
  },
    s("path", { d: sheet.edge, class: "board" }),
    grainLines(sheet),
    sheet.defects.map((d) => s("path", { d, class: "defect" })),
    s("g", { class: "pieces" }, groups));
  drawing.addEventListener("click", (event) => {
    if (hand.clicked(drawing, sheet, event)) return;
    const group = event.target.closest(".piece");
    if (group) look(group);
  });
  drawing.addEventListener("keydown", (event) => keyed(event, drawing, sheet, hand));
  drawing.addEventListener("focusin", (event) => {
    const group = event.target.closest?.(".piece");
    if (!group) return;
    drawing.querySelectorAll(".piece").forEach((each) => each.setAttribute("tabindex", each === group ? "0" : "-1"));
  });
  hand.attach(drawing, sheet, number - 1, groups);
  return h("figure", { class: "sheet-figure" },
    drawing,
    h("figcaption", {}, h("b", {}, `Sheet ${number}`), `, ${sheet.stock}, ${sheet.size}: ${sheet.placements.length} pieces, ${sheet.yield} of the wood`));
}

function look(group) {
  group.focus({ preventScroll: true });
  choosePiece(group.dataset.label);
  say(group.getAttribute("aria-label"));
}

function keyed(event, drawing, sheet, hand) {
  const group = event.target.closest(".piece");
  if (!group) return;
  if (hand.keyed(event, group, sheet)) {
    event.preventDefault();
    return;
  }
  const groups = [...drawing.querySelectorAll(".piece")];
  const at = groups.indexOf(group);
  const to = { ArrowRight: at + 1, ArrowDown: at + 1, ArrowLeft: at - 1, ArrowUp: at - 1, Home: 0, End: groups.length - 1 }[event.key];
  if (to !== undefined) {
    event.preventDefault();
    groups[Math.max(0, Math.min(groups.length - 1, to))].focus();
  } else if (event.key === "Enter" || event.key === " ") {
    event.preventDefault();
    look(group);
  } else if (event.key === "Escape") choosePiece(null);
}

function grainLines(sheet) {
  const lines = [];
  const along = Math.abs(sheet.grain % 180) < 45;
  const across = along ? sheet.height : sheet.width;
  for (let i = 1; i < 7; i++) {
    const at = (across * i) / 7;
    lines.push(s("path", {
      class: "grain",
      d: along
        ? `M${sheet.left + sheet.width * 0.03} ${at}h${sheet.width * (0.5 + 0.06 * i)}`
        : `M${sheet.left + at} ${sheet.height * 0.03}v${sheet.height * (0.5 + 0.06 * i)}`,
    }));
  }
  return sheet.defects.length || sheet.edge.split("L").length > 5 ? [] : lines;
}

/** Draws all sheets. */
export function drawSheets(sheets, kinds, hand) {
  const box = byId("sheets");
  // Who works with the keyboard keeps his place when the drawings are made anew.
  const focused = document.activeElement?.closest?.("#sheets .piece")?.dataset.label;
  box.replaceChildren(...sheets.map((sheet, i) => sheetFigure(sheet, i + 1, sheets.length, kinds, hand)));
  if (focused) box.querySelector(`.piece[data-label="${CSS.escape(focused)}"]`)?.focus({ preventScroll: true });
}
