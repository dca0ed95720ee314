// The cut sheets as drawn by the program, with the tools for laying by hand. The panel's size never
// changes, whatever is said in it.

import { counted, h, kept, lived } from "./elements.js";
import { enough, fresh, headline, search } from "./asking.js";
import { readable } from "./questions.js";
import { state, ui } from "./store.js";
import * as hand from "./hand.js";

/** @param {number} radians */
const degrees = (radians) => (radians * 180) / Math.PI;

/** Letters of at least so many pixels, as far as there is room. */
const LEGIBLE = 16;

/** @param {any} placement @param {any} sheet */
const transformOf = (placement, sheet) => `translate(${placement.x} ${sheet.top - placement.y}) rotate(${-degrees(placement.rotation)})`;

/** A number on a straight piece follows it, but never upside down. @param {any} kind @param {any} placement */
function labelTransform(kind, placement) {
  const turned = degrees(placement.rotation);
  const folded = ((turned % 180) + 180) % 180;
  const upright = kind.level ? turned : turned - (folded > 90 ? folded - 180 : folded);
  return `translate(${kind.labelX} ${kind.labelY}) rotate(${upright})`;
}

/** @param {any} placement @param {any} sheet @param {any} kind @param {{focusable: string, chosen: boolean, bad: boolean, size: number}} how */
function piece(placement, sheet, kind, { focusable, chosen, bad, size }) {
  return h("g", {
    key: placement.label,
    class: ["piece", placement.pinned ? "pinned" : "", chosen ? "chosen" : "", bad ? "bad" : ""].filter(Boolean).join(" "),
    tabindex: focusable === placement.label ? "0" : "-1",
    role: "button",
    "aria-pressed": String(chosen),
    "aria-label": `piece ${placement.label}, ${kind.name}${placement.pinned ? ", pinned" : ""}${bad ? ", too close" : ""}`,
    "data-label": placement.label,
    transform: transformOf(placement, sheet),
  },
    h("path", { d: kind.outline, class: "cut", "fill-rule": "evenodd" }),
    kind.marks.map((/** @type {string} */ mark, /** @type {number} */ i) => h("path", { key: i, d: mark, class: "mark" })),
    h("text", { y: 0.36 * size, "font-size": size, "text-anchor": "middle", transform: labelTransform(kind, placement) }, placement.label),
    placement.pinned ? h("circle", { class: "pin", cx: kind.labelX, cy: kind.labelY, r: size * 0.75 }) : null);
}

/** Pencil lines of the face grain. @param {any} sheet */
function grain(sheet) {
  if (sheet.defects.length || sheet.edge.split("L").length > 5) return null;
  const along = Math.abs(sheet.grain % 180) < 45;
  const across = along ? sheet.height : sheet.width;
  const lines = [1, 2, 3, 4, 5, 6].map((i) => {
    const at = (across * i) / 7;
    return along
      ? `M${sheet.left + sheet.width * 0.03} ${at}h${sheet.width * (0.5 + 0.06 * i)}`
      : `M${sheet.left + at} ${sheet.height * 0.03}v${sheet.height * (0.5 + 0.06 * i)}`;
  });
  return h("path", { class: "grain", d: lines.join("") });
}

/** @param {any} sheet @param {number} i @param {number} count @param {any} kinds */
function drawing(sheet, i, count, kinds) {
  const { ui: { piece: chosen, gaps, sheetPixels, zoom } } = state();
  const edge = Math.max(sheet.width, sheet.height) / 100;
  const perPixel = (sheet.width + 2 * edge) / Math.max(200, sheetPixels * zoom);
  const labels = sheet.placements.map((/** @type {any} */ placement) => placement.label);
  const focusable = labels.includes(chosen) ? chosen : labels[0];
  return h("svg", {
    viewBox: `${sheet.left - edge} ${-edge} ${sheet.width + 2 * edge} ${sheet.height + 2 * edge}`,
    class: "sheet", role: "group", "data-sheet": String(i + 1),
    "aria-label": `Sheet ${i + 1} of ${count}, ${sheet.stock}, ${counted(sheet.placements.length, "piece")}`,
    onpointerdown: (/** @type {any} */ event) => hand.down(event, sheet, i),
    onpointermove: (/** @type {any} */ event) => hand.move(event, sheet),
    onpointerup: (/** @type {any} */ event) => hand.up(event),
    onpointercancel: (/** @type {any} */ event) => hand.up(event),
    onclick: (/** @type {any} */ event) => hand.click(event, sheet),
    onkeydown: (/** @type {any} */ event) => hand.key(event, labels),
  },
    h("path", { d: sheet.edge, class: "board" }),
    grain(sheet),
    sheet.defects.map((/** @type {string} */ d, /** @type {number} */ k) => h("path", { key: k, d, class: "defect" })),
    h("g", { class: "pieces" }, sheet.placements.map((/** @type {any} */ placement) => {
      const kind = kinds[placement.piece];
      const size = Math.min(Math.max(kind.letters, LEGIBLE * perPixel), 3 * kind.letters);
      return piece(placement, sheet, kind, { focusable, chosen: placement.label === chosen, bad: gaps[placement.label]?.holds === false, size });
    })));
}

/** What is known of the piece that is looked at, in one place of fixed size. */
function pieceLine() {
  const { ui: { piece: label, note, mode }, answer: { plan, look } } = state();
  const found = label === null ? null : hand.find(label);
  if (!found) return h("p", { class: "piece-line", id: "piece-card", role: "status" }, note || (mode === "knot" ? "Click where the knot is." : "Point at a piece to see where it goes."));
  const row = look?.helix?.schedule.rows.find((/** @type {any} */ each) => each.words.piece === label)?.words;
  const gap = hand.gapWords(label);
  return h("p", { class: "piece-line", id: "piece-card", role: "status" },
    h("b", null, `Piece ${label}`), `: ${plan?.kinds[found.placement.piece].name}, sheet ${found.i + 1}`,
    row ? `, turn ${row.turn}, ${row.bearingFrom} to ${row.bearingTo}, underside ${row.undersideFrom} to ${row.undersideTo}` : "", ". ",
    gap.words ? h("span", { id: "gap", class: gap.bad ? "bad" : "" }, gap.words) : h("span", { id: "gap" }, note));
}

function bar() {
  const { ui: { mode, zoom }, doc, answer: { plan } } = state();
  const zooms = h("span", { class: "group", role: "group", "aria-label": "Zoom" },
    h("button", { type: "button", "aria-label": "Smaller", disabled: zoom <= 1, onclick: () => ui({ zoom: Math.max(1, zoom / 1.5) }) }, "−"),
    h("button", { type: "button", "aria-label": "Larger", disabled: zoom >= 5, onclick: () => ui({ zoom: Math.min(5.1, zoom * 1.5) }) }, "+"));
  return h("div", { class: "bar", id: "hand" },
    h("h2", { id: "sheets-title" }, "Sheets"),
    h("button", { type: "button", id: "lay", "aria-pressed": String(mode === "lay"), disabled: !plan, onclick: () => hand.mode("lay") }, "Edit layout"),
    h("button", { type: "button", id: "knot", "aria-pressed": String(mode === "knot"), disabled: !plan, onclick: () => hand.mode("knot") }, "Mark a knot"),
    h("button", { type: "button", id: "as-found", hidden: !doc.hand, onclick: hand.asFound }, "Back to the found layout"),
    zooms);
}

/** Tools for the piece in hand; the line is there in every mode, so that nothing moves. */
function tools() {
  const { ui: { mode, piece: label } } = state();
  if (mode !== "lay") return pieceLine();
  const found = label === null ? null : hand.find(label);
  const loose = Boolean(found) && !found?.placement.pinned;
  const sheets = hand.sheets();
  const button = (/** @type {string} */ words, /** @type {() => void} */ act, /** @type {any} */ more = {}) => h("button", { type: "button", onclick: act, ...more }, words);
  return h("div", { class: "tools", role: "group", "aria-label": "Selected piece" },
    h("p", { id: "gap", class: "gap " + (hand.gapWords(label).bad ? "bad" : ""), role: "status" }, hand.gapWords(label).words || "Drag a piece, or use the arrow keys; R turns it, P pins it."),
    h("p", { class: "row" },
      button("↺ 15°", () => hand.turn(15), { disabled: !loose, "aria-label": "Rotate 15° left" }), button("↺ 1°", () => hand.turn(1), { disabled: !loose, "aria-label": "Rotate 1° left" }),
      button("↻ 1°", () => hand.turn(-1), { disabled: !loose, "aria-label": "Rotate 1° right" }), button("↻ 15°", () => hand.turn(-15), { disabled: !loose, "aria-label": "Rotate 15° right" }),
      button("180°", () => hand.turn(180), { disabled: !loose, "aria-label": "Rotate 180°" }),
      button(found?.placement.pinned ? "Unpin" : "Pin", hand.pin, { disabled: !found, id: "pin" }),
      sheets.length > 1 ? h("select", { "aria-label": "Move the piece to a sheet", disabled: !loose, value: String(found?.i ?? 0), onchange: (/** @type {any} */ event) => hand.toSheet(Number(event.target.value)) },
        sheets.map((_, i) => h("option", { key: i, value: String(i), selected: i === found?.i }, `Sheet ${i + 1}`))) : null,
      button("Rearrange around pinned", hand.improvePinned, { disabled: !hand.anyPinned(), id: "improve" })));
}

export function sheetsPanel() {
  const { answer: { plan, fingerprint, refusal, phase }, ui: { mode, zoom, drag, gaps, piece: chosen, sheetPixels } } = state();
  const sheets = hand.sheets();
  const former = plan && !fresh(plan);
  return h("section", { class: "panel sheets-panel" + (former ? " former" : ""), id: "sheets-part", "aria-labelledby": "sheets-title", "data-job": plan?.fingerprint, "data-former": former ? "yes" : "no" },
    bar(),
    h("div", { class: "fixed-line" }, tools()),
    former ? h("p", { class: "former-tag" }, "Earlier layout") : null,
    lived(watch, h("div", { class: "sheets", id: "sheets", "data-mode": mode, tabindex: zoom > 1 || sheets.length > 1 ? "0" : null, role: zoom > 1 || sheets.length > 1 ? "region" : null, "aria-label": "Drawings of the sheets" },
      phase === "refused" || phase === "failed" ? h("ul", { class: "refusal", key: "refusal" }, refusal.map((words) => h("li", { key: words }, readable(words)))) : null,
      !plan && phase !== "refused" ? h("p", { class: "empty", key: "empty" }, "Working out the first layout …") : null,
      plan ? sheets.map((/** @type {any} */ sheet, /** @type {number} */ i) =>
        h("figure", { key: i },
          kept("sheet", [sheet, plan.kinds, chosen, gaps, mode, zoom, sheetPixels, drag?.i === i ? drag : null, fingerprint === plan.fingerprint], () => h("div", { class: "frame", ref: (/** @type {any} */ node) => sized(node, zoom, sheet) }, drawing(sheet, i, sheets.length, plan.kinds))),
          h("figcaption", null, h("b", null, `Sheet ${i + 1}`), ` of ${sheets.length}, ${sheet.stock}, ${sheet.size}: ${counted(sheet.placements.length, "piece")}, ${sheet.yield} used`))) : null)));
}

/** The drawing fits its panel, then is as much larger as asked. @param {any} node @param {number} zoom @param {any} sheet */
function sized(node, zoom, sheet) {
  node?.style.setProperty("--zoom", String(zoom));
  node?.style.setProperty("--aspect", String((sheet.width * 1.02) / (sheet.height + 0.02 * sheet.width)));
}

/** Letters are sized by how wide the drawings are. */
function watch() {
  const box = document.getElementById("sheets");
  if (!box) return undefined;
  const measure = new ResizeObserver(() => {
    const wide = box.querySelector(".sheet")?.clientWidth ?? box.clientWidth;
    const pixels = wide / state().ui.zoom;
    if (Math.abs(pixels - state().ui.sheetPixels) > 8) ui({ sheetPixels: pixels });
  });
  measure.observe(box);
  return () => measure.disconnect();
}

export { enough, headline, search };
