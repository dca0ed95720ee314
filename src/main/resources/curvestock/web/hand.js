// Laying by hand: drag, turn and pin pieces, with the true gaps told by the program while they move;
// and marking knots to keep clear of.

import { byId, h, say, show } from "./elements.js";
import { gaps } from "./server.js";
import { alter, job, setHand, shownUnit, state } from "./state.js";
import { fromMillimetres, kept } from "./lengths.js";
import { choosePiece, chosenPiece, drawSheets, moveFigure, onChosen } from "./sheets.js";

let mode = "look";
let plan = null;
let sheets = [];
let dragging = null;
let asking = false;
let askAgain = null;
const judged = new Map();
let improve = () => {};

/** The sheets that are shown: as found, or as laid by hand where that still belongs to the plan. */
function shownSheets() {
  const hand = state().hand;
  if (!hand || !plan) return plan?.sheets ?? [];
  const made = hand.sheets.map((sheet) => {
    const form = plan.sheets.find((each) => each.stock === sheet.stock);
    return form && sheet.placements.every((placement) => plan.kinds[placement.piece]) ? { ...form, placements: sheet.placements } : null;
  });
  return made.includes(null) ? plan.sheets : made;
}

export function showPlan(found) {
  plan = found;
  redraw();
}

export function redraw() {
  if (!plan || dragging) return;
  sheets = shownSheets().map((sheet) => ({ ...sheet, placements: sheet.placements.map((placement) => ({ ...placement })) }));
  judged.clear();
  drawSheets(sheets, plan.kinds, tools);
  drawPanel();
  if (state().hand) sheets.forEach((sheet, i) => judge(i));
}

const own = () => plan && plan.stage !== undefined;

function begin(next) {
  mode = mode === next ? "look" : next;
  document.body.dataset.mode = mode;
  drawPanel();
  say(mode === "lay" ? "Laying by hand: drag a piece, or use the arrow keys, R to turn, P to pin." : mode === "knot" ? "Click on the sheet where the wood is bad." : "");
}

function find(label) {
  for (let i = 0; i < sheets.length; i++) {
    const at = sheets[i].placements.findIndex((placement) => placement.label === label);
    if (at >= 0) return { i, at, sheet: sheets[i], placement: sheets[i].placements[at] };
  }
  return null;
}

const groupOf = (label) => document.querySelector(`#sheets .piece[data-label="${CSS.escape(label)}"]`);

function keep() {
  setHand({
    sheets: sheets.map(({ stock, placements }) => ({
      stock,
      placements: placements.map(({ piece, label, x, y, rotation, pinned }) => ({ piece, label, x, y, rotation, ...(pinned ? { pinned } : {}) })),
    })),
  });
}

function moved(found) {
  moveFigure(groupOf(found.placement.label), found.placement, found.sheet, plan.kinds[found.placement.piece]);
  judge(found.i);
}

/** Asks for the true gaps of a sheet; while an answer is on its way only the latest question waits. */
async function judge(i) {
  if (asking) {
    askAgain = i;
    return;
  }
  asking = true;
  try {
    const sheet = sheets[i];
    const answer = await gaps(job(), { stock: sheet.stock, placements: sheet.placements.map(({ piece, x, y, rotation }) => ({ piece, x, y, rotation })) });
    answer.gaps.forEach((gap, k) => {
      const label = sheet.placements[k]?.label;
      if (!label) return;
      judged.set(label, gap);
      groupOf(label)?.classList.toggle("bad", !gap.holds);
    });
    tellGap();
  } catch (refusal) {
    byId("gap").textContent = refusal.message;
  } finally {
    asking = false;
    if (askAgain !== null) {
      const next = askAgain;
      askAgain = null;
      judge(next);
    }
  }
}

/** Whether a piece laid by hand lies where it must not. */
export const handHolds = () => [...judged.values()].every((gap) => gap.holds);

function tellGap() {
  const node = byId("gap");
  if (!node) return;
  const gap = judged.get(chosenPiece());
  const bad = [...judged].filter(([, each]) => !each.holds).map(([label]) => label);
  node.className = gap && !gap.holds ? "gap bad" : "gap";
  node.textContent = gap ? `Piece ${chosenPiece()}: ${gap.words}.` : "";
  byId("bad-pieces").textContent = bad.length ? `Too near or over an edge: ${bad.join(", ")}.` : "";
  document.dispatchEvent(new Event("judged"));
}

function turn(angle) {
  const found = find(chosenPiece());
  if (!found) return;
  const { placement } = found;
  const kind = plan.kinds[placement.piece];
  // Turned about its number, which lies in the wood, and not about the far centre of its arcs.
  const place = (rotation) => [
    Math.cos(rotation) * kind.labelX + Math.sin(rotation) * kind.labelY,
    Math.sin(rotation) * kind.labelX - Math.cos(rotation) * kind.labelY,
  ];
  const before = place(placement.rotation);
  placement.rotation += (angle * Math.PI) / 180;
  const after = place(placement.rotation);
  placement.x += before[0] - after[0];
  placement.y += before[1] - after[1];
  moved(found);
  keep();
}

function pin() {
  const found = find(chosenPiece());
  if (!found) return;
  found.placement.pinned = !found.placement.pinned;
  say(found.placement.pinned ? "pinned" : "loose again");
  keep();
}

function toSheet(to) {
  const found = find(chosenPiece());
  if (!found || to === found.i) return;
  sheets[found.i].placements.splice(found.at, 1);
  sheets[to].placements.push(found.placement);
  keep();
}

function nudge(dx, dy, found) {
  found.placement.x += dx;
  found.placement.y += dy;
  moved(found);
  keep();
}

/** Millimetres on the sheet under the pointer, y up. */
function place(drawing, sheet, event) {
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(drawing.getScreenCTM().inverse());
  return { x: at.x, y: sheet.top - at.y };
}

/** What the drawings ask when somebody points at them or presses a key. */
const tools = {
  attach(drawing, sheet) {
    drawing.addEventListener("pointerdown", (event) => {
      const group = event.target.closest(".piece");
      if (mode !== "lay" || !group || event.button !== 0) return;
      event.preventDefault();
      group.focus({ preventScroll: true });
      choosePiece(group.dataset.label);
      const found = find(group.dataset.label);
      if (found.placement.pinned) {
        say("it is pinned");
        return;
      }
      dragging = { found, from: place(drawing, sheet, event), x: found.placement.x, y: found.placement.y };
      drawing.setPointerCapture(event.pointerId);
    });
    drawing.addEventListener("pointermove", (event) => {
      if (!dragging) return;
      const at = place(drawing, sheet, event);
      dragging.found.placement.x = dragging.x + at.x - dragging.from.x;
      dragging.found.placement.y = dragging.y + at.y - dragging.from.y;
      dragging.moved = true;
      moved(dragging.found);
    });
    const drop = () => {
      const was = dragging;
      dragging = null;
      if (was?.moved) keep();
    };
    drawing.addEventListener("pointerup", drop);
    drawing.addEventListener("pointercancel", drop);
  },
  clicked(drawing, sheet, event) {
    if (mode !== "knot") return false;
    askKnot(sheet, place(drawing, sheet, event));
    return true;
  },
  keyed(event, group, sheet) {
    if (mode !== "lay" || event.ctrlKey || event.metaKey || event.altKey) return false;
    if (chosenPiece() !== group.dataset.label) choosePiece(group.dataset.label);
    const found = find(group.dataset.label);
    const step = (shownUnit() === "in" ? 25.4 / 16 : 1) * (event.shiftKey ? 16 : 1);
    const moves = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, step], ArrowDown: [0, -step] };
    if (moves[event.key] && !found.placement.pinned) nudge(...moves[event.key], found);
    else if (event.key.toLowerCase() === "r" && !found.placement.pinned) turn(event.shiftKey ? -15 : 1);
    else if (event.key.toLowerCase() === "p") pin();
    else return false;
    return true;
  },
};

function button(words, act, more = {}) {
  return h("button", { type: "button", onclick: act, ...more }, words);
}

function drawPanel() {
  const box = byId("hand");
  if (!own()) {
    show(box);
    return;
  }
  const found = find(chosenPiece());
  const loose = found && !found.placement.pinned;
  const pinned = sheets.flatMap((sheet) => sheet.placements).filter((placement) => placement.pinned).length;
  const rows = [
    h("p", { class: "row" },
      button("Lay by hand", () => begin("lay"), { "aria-pressed": String(mode === "lay"), id: "lay" }),
      button("Point at a knot", () => begin("knot"), { "aria-pressed": String(mode === "knot") }),
      button("Knot by numbers …", () => askKnot(sheets[0], { x: sheets[0].width / 2, y: sheets[0].height / 2 })),
      state().hand ? button("Back to the layout as found", () => setHand(null), { id: "as-found" }) : null),
  ];
  if (mode === "lay") {
    rows.push(
      h("p", { class: "hint" }, found
        ? `Piece ${found.placement.label} in hand. Drag it, or use the arrow keys; R turns it, P pins it.`
        : "Take a piece: drag it, or go to it with the Tab key and press Enter."),
      h("p", { class: "row" },
        [[-15, "Turn 15° right"], [-1, "1° right"], [1, "1° left"], [15, "Turn 15° left"], [180, "Half round"]].map(([angle, words]) =>
          button(words, () => turn(angle), { disabled: !loose })),
        button(found?.placement.pinned ? "Loosen" : "Pin it", pin, { disabled: !found, id: "pin" }),
        sheets.length > 1
          ? sheets.map((sheet, i) => button(`To sheet ${i + 1}`, () => toSheet(i), { disabled: !loose || found.i === i }))
          : null,
        button("Improve around the pinned pieces", () => improve(sheets), { disabled: pinned === 0, id: "improve" })));
  }
  const live = h("div", { role: "status" }, h("p", { id: "gap", class: "gap" }), h("p", { id: "bad-pieces", class: "gap bad" }));
  // Buttons that are made anew must not throw the keyboard back to the page's top.
  const focused = box.contains(document.activeElement) ? document.activeElement.textContent : null;
  show(box, rows, live);
  if (focused) [...box.querySelectorAll("button")].find((each) => each.textContent === focused)?.focus();
  tellGap();
}

/** What to do when somebody asks to improve around the pinned pieces. */
export function onImprove(act) {
  improve = act;
}

onChosen(() => drawPanel());

/** Asks how large a knot is and on which sheets, and adds it to the job. */
function askKnot(sheet, at) {
  const input = (id, value) => h("input", { id, value, required: true, autocomplete: "off" });
  const unit = shownUnit();
  const x = input("knot-x", fromMillimetres(at.x, job()));
  const y = input("knot-y", fromMillimetres(at.y, job()));
  const radius = input("knot-radius", unit === "in" ? "1 in" : "25 mm");
  const which = h("select", { id: "knot-which" },
    h("option", { value: "one" }, "on one sheet that I have here"),
    h("option", { value: "all" }, "on every sheet of this kind"));
  const dialog = h("dialog", { "aria-labelledby": "knot-title" },
    h("form", { method: "dialog" },
      h("h3", { id: "knot-title" }, `A knot or void on ${sheet.stock}`),
      h("div", { class: "field" }, h("label", { for: "knot-x" }, "From the left end"), x),
      h("div", { class: "field" }, h("label", { for: "knot-y" }, "From the lower edge"), y),
      h("div", { class: "field" }, h("label", { for: "knot-radius" }, "Bad wood reaches out"), radius),
      h("div", { class: "field" }, h("label", { for: "knot-which" }, "It is"), which),
      h("p", { class: "row" }, h("button", { value: "keep", id: "knot-keep" }, "Keep clear of it"), h("button", { value: "", formnovalidate: true }, "Never mind"))));
  document.body.append(dialog);
  dialog.addEventListener("close", () => {
    if (dialog.returnValue === "keep") addKnot(sheet.stock, { circle: { at: [kept(x.value, job()), kept(y.value, job())], radius: kept(radius.value, job()) } }, which.value);
    dialog.remove();
  });
  dialog.showModal();
  begin("look");
}

function addKnot(stock, defect, which) {
  alter((tree) => {
    const i = tree.sheets.findIndex((sheet) => sheet.name === stock);
    const sheet = tree.sheets[i];
    if (which === "all" || (sheet["on-hand"] === "true" && (sheet.available ?? "1") === "1")) {
      sheet.defects = [...(sheet.defects ?? []), defect];
      return;
    }
    // That one sheet becomes a kind of its own: it is here, so it costs nothing more.
    let n = 1;
    const taken = new Set(tree.sheets.map((each) => each.name));
    while (taken.has(`${stock}, knotty ${n}`)) n++;
    const { price, available, ...form } = sheet;
    tree.sheets.push({ ...form, name: `${stock}, knotty ${n}`, "on-hand": "true", available: "1", defects: [...(sheet.defects ?? []), defect] });
    void price;
    void available;
  });
}
