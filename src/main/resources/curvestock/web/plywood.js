// The question of plywood: the sheets that can be bought, and the remnants behind the door.

import { byId, h, show } from "./elements.js";
import { alter, get, job, shownUnit } from "./state.js";
import { drawRemnant } from "./corners.js";

let drawn = "";

function specs(n, sheet) {
  const at = (name) => `sheets[${n}].${name}`;
  return [
    { path: at("name"), label: "Called", kind: "text" },
    sheet.corners === undefined ? { path: at("size"), label: "Size", kind: "length", list: "sheet-sizes", hint: "Two sides." } : null,
    { path: at("thickness"), label: "Thickness, measured", kind: "length" },
    sheet["nominal-thickness"] === undefined ? null : { path: at("nominal-thickness"), label: "Thickness, as sold", kind: "length", hint: "As it is written on the shelf." },
    { path: at("price"), label: "Price of one", kind: "text", inputmode: "decimal", when: (j) => get(j, at("on-hand")) !== "true" },
    { path: at("on-hand"), label: "It is here already", kind: "flag" },
    { path: at("available"), label: "How many there are", kind: "text", inputmode: "numeric", hint: "Left empty: any number of a sheet that is bought, else one." },
  ].filter(Boolean);
}

/** Draws the sheets of the job anew if their kinds have changed. */
export function renderPlywood(usual, register, fieldFor, forget) {
  const box = byId("plywood");
  const sheets = Array.isArray(job().sheets) ? job().sheets : [];
  const shape = sheets.map((sheet) => (sheet.corners ? "c" + sheet.corners.length : "s") + (sheet.defects?.length ?? 0) + (sheet["nominal-thickness"] === undefined ? "" : "n")).join();
  if (shape === drawn && box.firstChild) return;
  drawn = shape;
  const cards = sheets.map((sheet, i) => card(sheet, i, sheets.length, register, fieldFor));
  const add = h("p", { class: "row" },
    h("button", { type: "button", onclick: addSheet }, "Another kind of sheet"),
    h("button", { type: "button", onclick: () => drawRemnant() }, "Draw a remnant …"));
  const sizes = h("datalist", { id: "sheet-sizes" }, usual.sheets.map((size) => h("option", { value: size })));
  show(box, cards, add, sizes);
  forget();
}

function card(sheet, i, count, register, fieldFor) {
  const notes = [];
  if (sheet.corners) notes.push(`A remnant of ${sheet.corners.length} corners. `);
  if (sheet.defects) notes.push(`${sheet.defects.length} ${sheet.defects.length === 1 ? "knot or void" : "knots or voids"} to keep clear of. `);
  const buttons = [];
  if (sheet.corners) buttons.push(h("button", { type: "button", onclick: () => drawRemnant(i) }, "Redraw"));
  if (sheet.defects) buttons.push(h("button", { type: "button", onclick: () => alter((tree) => delete tree.sheets[i].defects) }, "Forget the knots"));
  if (count > 1) buttons.push(h("button", { type: "button", "aria-label": `Take away sheet ${i + 1}`, onclick: () => alter((tree) => tree.sheets.splice(i, 1)) }, "Take away"));
  return h("div", { class: "sheet-kind", role: "group", "aria-label": `Sheet ${i + 1}` },
    h("div", { class: "fields" }, specs(i + 1, sheet).map((spec) => register(fieldFor(spec)))),
    notes.length ? h("p", { class: "hint" }, notes) : null,
    buttons.length ? h("p", { class: "row" }, buttons) : null);
}

function addSheet() {
  alter((tree) => {
    const first = tree.sheets?.[0] ?? {};
    const taken = new Set((tree.sheets ?? []).map((sheet) => sheet.name));
    let n = 2;
    while (taken.has(`plywood ${n}`)) n++;
    tree.sheets = [...(tree.sheets ?? []), {
      name: `plywood ${n}`,
      size: shownUnit(tree) === "in" ? "5x5 ft" : "1525 x 1525 mm",
      thickness: first.thickness ?? (shownUnit(tree) === "in" ? "1/2 in" : "12 mm"),
      price: "50.00",
    }];
  });
}
