// Laying by hand: drag, turn and pin pieces, with the true gaps told by the program while they move.

import { gaps as askGaps } from "./server.js";
import { fresh, improve } from "./asking.js";
import { openKnot } from "./knot.js";
import { setHand, say, state, ui } from "./store.js";
import { asked } from "./typical.js";
import { shownUnit } from "./lengths.js";

/** @typedef {{piece: string, label: string, x: number, y: number, rotation: number, pinned?: boolean}} Placement */

let asking = false;
/** @type {number | null} */
let askAgain = null;
/** @type {{of: any, hand: any, drag: any, made: any[]}} */
let memory = { of: null, hand: null, drag: null, made: [] };

/** The sheets that are shown: as found, or as laid by hand where that still belongs to the plan. @returns {any[]} */
export function sheets() {
  const { answer: { plan }, doc: { hand }, ui: { drag } } = state();
  if (!plan) return [];
  if (memory.of !== plan || memory.hand !== hand || memory.drag !== drag) {
    memory = { of: plan, hand, drag, made: dragged(laid(plan, hand), drag) };
  }
  return memory.made;
}

/** @param {any} plan @param {any} hand */
function laid(plan, hand) {
  if (!hand) return plan.sheets;
  const made = hand.sheets.map((/** @type {any} */ sheet) => {
    const form = plan.sheets.find((/** @type {any} */ each) => each.stock === sheet.stock);
    return form && sheet.placements.every((/** @type {Placement} */ placement) => plan.kinds[placement.piece]) ? { ...form, placements: sheet.placements } : null;
  });
  return made.includes(null) ? plan.sheets : made;
}

/** @param {any[]} all @param {any} drag */
function dragged(all, drag) {
  if (!drag) return all;
  return all.map((sheet, i) => (i === drag.i ? { ...sheet, placements: sheet.placements.map((/** @type {Placement} */ each) => (each.label === drag.label ? { ...each, x: drag.x, y: drag.y } : each)) } : sheet));
}

/** @param {string | null} label @returns {{i: number, at: number, sheet: any, placement: Placement} | null} */
export function find(label) {
  const all = sheets();
  for (let i = 0; i < all.length; i++) {
    const at = all[i].placements.findIndex((/** @type {Placement} */ placement) => placement.label === label);
    if (at >= 0) return { i, at, sheet: all[i], placement: all[i].placements[at] };
  }
  return null;
}

/** @param {"lay" | "knot"} next */
export function mode(next) {
  if (!fresh(state().answer.plan)) {
    ui({ note: "The layout shown is for your earlier numbers; wait for the new one." });
    return;
  }
  const to = state().ui.mode === next ? "look" : next;
  ui({ mode: to, note: "" });
  say(to === "lay" ? "Edit layout: drag a piece, or use the arrow keys, R to turn, P to pin." : to === "knot" ? "Click where the knot is, or press Enter on a piece near it." : "");
}

/** @param {string | null} label */
export function choose(label) {
  ui({ piece: label });
}

/** Keeps the sheets as they would be with that placement. @param {string} label @param {(placement: Placement) => Placement} change */
function change(label, change) {
  const found = find(label);
  if (!found) return;
  keep(sheets().map((sheet, i) => (i === found.i ? { ...sheet, placements: sheet.placements.map((/** @type {Placement} */ each) => (each.label === label ? change({ ...each }) : each)) } : sheet)));
  judge(found.i);
}

/** @param {any[]} all */
function keep(all) {
  setHand({
    sheets: all.map(({ stock, placements }) => ({
      stock,
      placements: placements.map((/** @type {Placement} */ { piece, label, x, y, rotation, pinned }) => ({ piece, label, x, y, rotation, ...(pinned ? { pinned } : {}) })),
    })),
  });
}

export function asFound() {
  setHand(null);
  ui({ gaps: {}, note: "" });
}

/** Asks for the true gaps of a sheet; while an answer is on its way only the latest question waits. @param {number} i */
export async function judge(i) {
  if (asking) {
    askAgain = i;
    return;
  }
  const sheet = sheets()[i];
  if (!sheet) return;
  asking = true;
  try {
    const labels = sheet.placements.map((/** @type {Placement} */ placement) => placement.label);
    const answer = await askGaps(asked(state()), { stock: sheet.stock, placements: sheet.placements.map((/** @type {Placement} */ { piece, x, y, rotation }) => ({ piece, x, y, rotation })) });
    const gaps = { ...state().ui.gaps };
    answer.gaps.forEach((/** @type {any} */ gap, /** @type {number} */ k) => { gaps[labels[k]] = gap; });
    ui({ gaps });
  } catch (refusal) {
    ui({ note: /** @type {Error} */ (refusal).message });
  } finally {
    asking = false;
    if (askAgain !== null) {
      const next = askAgain;
      askAgain = null;
      judge(next);
    }
  }
}

/** Whether every piece laid by hand lies where it may. */
export const holds = () => !state().doc.hand || Object.values(state().ui.gaps).every((gap) => gap.holds);

/** @param {string | null} label @returns {{words: string, bad: boolean}} */
export function gapWords(label) {
  const { ui: { gaps }, doc: { hand } } = state();
  if (!hand && !state().ui.drag) return { words: "", bad: false };
  const bad = Object.entries(gaps).filter(([, each]) => !each.holds).map(([each]) => each);
  const gap = label === null ? undefined : gaps[label];
  const others = bad.filter((each) => each !== label);
  return {
    words: [gap ? `Piece ${label}: ${gap.words}.` : "", others.length ? `Too close: ${others.join(", ")}.` : ""].filter(Boolean).join(" "),
    bad: bad.length > 0,
  };
}

/** Turned about its number, which lies in the wood, and not about the far centre of its arcs. @param {number} angle in degrees */
export function turn(angle) {
  const label = state().ui.piece;
  const found = find(label);
  if (!found || label === null || found.placement.pinned) return;
  const kind = state().answer.plan?.kinds[found.placement.piece];
  if (!kind) return;
  const place = (/** @type {number} */ rotation) => [
    Math.cos(rotation) * kind.labelX + Math.sin(rotation) * kind.labelY,
    Math.sin(rotation) * kind.labelX - Math.cos(rotation) * kind.labelY,
  ];
  change(label, (placement) => {
    const rotation = placement.rotation + (angle * Math.PI) / 180;
    const [before, after] = [place(placement.rotation), place(rotation)];
    return { ...placement, rotation, x: placement.x + before[0] - after[0], y: placement.y + before[1] - after[1] };
  });
}

export function pin() {
  const label = state().ui.piece;
  const found = find(label);
  if (!found || label === null) return;
  const pinned = !found.placement.pinned;
  say(pinned ? "pinned" : "unpinned");
  change(label, (placement) => ({ ...placement, pinned }));
}

/** @param {number} to */
export function toSheet(to) {
  const found = find(state().ui.piece);
  if (!found || to === found.i) return;
  keep(sheets().map((sheet, i) => ({
    ...sheet,
    placements: i === found.i ? sheet.placements.filter((/** @type {Placement} */ each) => each.label !== found.placement.label) : i === to ? [...sheet.placements, found.placement] : sheet.placements,
  })));
  judge(found.i);
  judge(to);
}

export const anyPinned = () => sheets().some((sheet) => sheet.placements.some((/** @type {Placement} */ placement) => placement.pinned));

export const improvePinned = () => improve(sheets());

/** Millimetres on the sheet under the pointer, y up. @param {any} event @param {any} sheet */
function place(event, sheet) {
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(event.currentTarget.getScreenCTM().inverse());
  return { x: at.x, y: sheet.top - at.y };
}

/** @param {any} event @param {any} sheet @param {number} i */
export function down(event, sheet, i) {
  const group = event.target.closest(".piece");
  if (state().ui.mode !== "lay" || !group || event.button !== 0) return;
  event.preventDefault();
  group.focus({ preventScroll: true });
  const label = group.dataset.label;
  choose(label);
  const found = find(label);
  if (!found) return;
  if (found.placement.pinned) {
    say("Pinned: unpin it to move it.");
    return;
  }
  event.currentTarget.setPointerCapture(event.pointerId);
  const { x, y } = found.placement;
  ui({ drag: { label, i, from: place(event, sheet), at: { x, y }, x, y, moved: false } });
}

/** @param {any} event @param {any} sheet */
export function move(event, sheet) {
  const { drag } = state().ui;
  if (!drag) return;
  const at = place(event, sheet);
  ui({ drag: { ...drag, x: drag.at.x + at.x - drag.from.x, y: drag.at.y + at.y - drag.from.y, moved: true } });
  judge(drag.i);
}

/** @param {any} event */
export function up(event) {
  const { drag } = state().ui;
  if (!drag) return;
  event.currentTarget.releasePointerCapture?.(event.pointerId);
  const all = sheets();
  ui({ drag: null });
  if (drag.moved) {
    keep(all);
    judge(drag.i);
  }
}

/** @param {any} event @param {any} sheet */
export function click(event, sheet) {
  if (state().ui.mode === "knot") {
    openKnot(sheet, place(event, sheet));
    return;
  }
  const group = event.target.closest(".piece");
  if (group) look(group);
}

/** @param {any} group */
function look(group) {
  group.focus({ preventScroll: true });
  choose(group.dataset.label);
}

/** @param {any} event @param {string[]} labels */
export function key(event, labels) {
  const group = event.target.closest(".piece");
  if (!group || event.ctrlKey || event.metaKey || event.altKey) return;
  const label = group.dataset.label;
  if (state().ui.mode === "lay" && laidByKey(event, label)) {
    event.preventDefault();
    return;
  }
  const at = labels.indexOf(label);
  const steps = /** @type {Record<string, number>} */ ({ ArrowRight: at + 1, ArrowDown: at + 1, ArrowLeft: at - 1, ArrowUp: at - 1, Home: 0, End: labels.length - 1 });
  const to = steps[event.key];
  if (to !== undefined) {
    event.preventDefault();
    const next = labels[Math.max(0, Math.min(labels.length - 1, to))];
    choose(next);
    event.currentTarget.querySelector(`.piece[data-label="${CSS.escape(next)}"]`)?.focus();
  } else if (event.key === "Enter" || event.key === " ") {
    event.preventDefault();
    const found = find(label);
    if (state().ui.mode === "knot" && found) openKnot(found.sheet, { x: found.sheet.width / 2, y: found.sheet.height / 2 });
    else look(group);
  } else if (event.key === "Escape") choose(null);
}

/** @param {any} event @param {string} label */
function laidByKey(event, label) {
  if (state().ui.piece !== label) choose(label);
  const found = find(label);
  if (!found) return false;
  const step = (shownUnit(state().doc.job) === "in" ? 25.4 / 16 : 1) * (event.shiftKey ? 16 : 1);
  const moves = /** @type {Record<string, [number, number]>} */ ({ ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, step], ArrowDown: [0, -step] });
  const by = moves[event.key];
  const name = event.key.toLowerCase();
  if (by && !found.placement.pinned) change(label, (placement) => ({ ...placement, x: placement.x + by[0], y: placement.y + by[1] }));
  else if (name === "r" && !found.placement.pinned) turn(event.shiftKey ? -15 : 1);
  else if (name === "p") pin();
  else return false;
  return true;
}
