// A knot or void that layouts keep clear of: where it is, how large, and on which sheets.

import { h } from "./elements.js";
import { field, open } from "./dialogs.js";
import { kept, millimetres, shownUnit, unitOf, written } from "./lengths.js";
import { alter, state, ui } from "./store.js";

/** @type {{sheet: any, x: string, y: string, radius: string, which: string}} */
let draft = { sheet: null, x: "", y: "", radius: "", which: "one" };

const job = () => state().doc.job;

/** @param {any} sheet as drawn @param {{x: number, y: number}} at in millimetres */
export function openKnot(sheet, at) {
  const unit = shownUnit(job());
  const bare = (/** @type {number} */ value) => written(value, unit).replace(new RegExp(` ${unit}$`), "");
  const on = (/** @type {number} */ value, /** @type {number} */ most) => bare(Math.max(0, Math.min(most, value)));
  draft = { sheet, x: on(at.x, sheet.width), y: on(at.y, sheet.height), radius: unit === "in" ? "1" : "25", which: "one" };
  ui({ mode: "look" });
  open({ title: `Knot or void on ${sheet.stock}`, id: "knot-keep", back: "knot", confirm: "Mark knot", body, ready: () => wrongs().every((wrong) => wrong === ""), done: keep });
}

/** @param {Partial<typeof draft>} next */
function change(next) {
  draft = { ...draft, ...next };
  ui({ dialog: { ...state().ui.dialog } });
}

function wrongs() {
  const { sheet } = draft;
  const read = (/** @type {string} */ text) => millimetres(text, shownUnit(job()));
  const no = (/** @type {string} */ text) => (text.trim() === "" ? "Enter a distance." : `“${text}” is not a length: write 12 or 12 1/2.`);
  const [x, y, radius] = [draft.x, draft.y, draft.radius].map(read);
  return [
    !(x >= 0) ? no(draft.x) : x > sheet.width ? "That is outside the sheet." : "",
    !(y >= 0) ? no(draft.y) : y > sheet.height ? "That is outside the sheet." : "",
    !(radius >= 0) ? no(draft.radius) : radius === 0 ? "Enter a radius above 0." : "",
  ];
}

function body() {
  const [x, y, radius] = wrongs();
  const unit = (/** @type {string} */ text) => unitOf(text, job());
  return [
    field({ id: "knot-x", label: "From the left end", value: draft.x, wrong: x, unit: unit(draft.x), write: (text) => change({ x: text }) }),
    field({ id: "knot-y", label: "From the lower edge", value: draft.y, wrong: y, unit: unit(draft.y), write: (text) => change({ y: text }) }),
    field({ id: "knot-radius", label: "Radius of the knot", value: draft.radius, wrong: radius, unit: unit(draft.radius), write: (text) => change({ radius: text }) }),
    h("div", { key: "which", class: "field" }, h("label", { for: "knot-which" }, "It is on"),
      h("select", { id: "knot-which", value: draft.which, onchange: (/** @type {any} */ event) => change({ which: event.target.value }) },
        h("option", { value: "one", selected: draft.which === "one" }, "one sheet that I already own"),
        h("option", { value: "all", selected: draft.which === "all" }, "every sheet of this kind")),
      h("p", { class: "under" }, draft.which === "one" ? "You own that sheet, so its price is no longer counted." : "")),
  ];
}

function keep() {
  const stock = draft.sheet.stock;
  const which = draft.which;
  alter((tree) => {
    const sheets = Array.isArray(tree.sheets) && tree.sheets.length ? tree.sheets : (tree.sheets = [{ name: "plywood" }]);
    const defect = { circle: { at: [kept(draft.x, tree), kept(draft.y, tree)], radius: kept(draft.radius, tree) } };
    const sheet = sheets.find((/** @type {any} */ each) => (each.name ?? "plywood") === stock) ?? sheets[0];
    if (which === "all" || (sheet["on-hand"] === "true" && (sheet.available ?? "1") === "1")) {
      sheet.defects = [...(sheet.defects ?? []), defect];
      return;
    }
    // That one sheet becomes a kind of its own: it is here, so it costs nothing more.
    const taken = new Set(sheets.map((/** @type {any} */ each) => each.name));
    let n = 1;
    while (taken.has(`${stock}, knotty ${n}`)) n++;
    const { price, available, ...form } = sheet;
    sheets.push({ ...form, name: `${stock}, knotty ${n}`, "on-hand": "true", available: "1", defects: [...(sheet.defects ?? []), defect] });
  });
}
