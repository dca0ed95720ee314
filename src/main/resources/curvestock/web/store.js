// The one state of the page. Every change goes through here; the page is drawn from it alone.

import { fingerprint } from "./paths.js";

/**
 * What the person has said: can be undone, is kept through a reload, tab by tab.
 * @typedef {object} Doc
 * @property {import("./paths.js").Tree} job a tree of texts, exactly as typed
 * @property {string} original the file it came from, whose comments are kept
 * @property {{sheets: any[]} | null} hand layouts laid by hand
 * @property {boolean} example whether it is the example, which goes away at the first edit
 * @property {boolean} assume whether what is not said is taken as typical of the scale
 */

/**
 * What the program has answered; each part carries the fingerprint of the job that it answers.
 * @typedef {object} Answer
 * @property {string} fingerprint of the job as it stands
 * @property {import("./api.js").Look | null} look the helix at once
 * @property {import("./api.js").Decision | null} decision the sizes
 * @property {import("./api.js").Plan | null} plan the best plan so far
 * @property {string | null} work the computation that runs or has run
 * @property {"idle" | "looking" | "searching" | "done" | "stopped" | "wrong" | "refused" | "failed"} phase
 * @property {{words: string, share: number | null}} progress
 * @property {{path: string, message: string}[]} problems
 * @property {string[]} refusal why it cannot be cut
 * @property {"ok" | "slow" | "lost"} link to the program
 */

/**
 * @typedef {object} Ui
 * @property {{path: string, text: string} | null} draft what is being typed
 * @property {string | null} piece the piece that is looked at
 * @property {string} tab
 * @property {"plan" | "turning" | "side"} view
 * @property {string} turn
 * @property {number} zoom
 * @property {"look" | "lay" | "knot"} mode
 * @property {any} drag
 * @property {Record<string, any>} gaps by the piece's number
 * @property {string} note
 * @property {string} spoken
 * @property {string} packet what is said of the packet
 * @property {boolean} packing
 * @property {any} dialog
 * @property {boolean} asking whether the questions are open, on a phone
 * @property {boolean} more
 * @property {string} theme
 * @property {number} sheetPixels width of the drawings
 */

/** @typedef {{doc: Doc, answer: Answer, ui: Ui, usual: any, example: any, mayStop: boolean, undo: number, redo: number}} State */

const MOST_STEPS = 200;

/** @type {State} */
let now = {
  doc: { job: {}, original: "", hand: null, example: false, assume: true },
  answer: {
    fingerprint: "", look: null, decision: null, plan: null, work: null, phase: "idle",
    progress: { words: "", share: null }, problems: [], refusal: [], link: "ok",
  },
  ui: {
    draft: null, piece: null, tab: "checks", view: "plan", turn: "all", zoom: 1, mode: "look", drag: null, gaps: {},
    note: "", spoken: "", packet: "", packing: false, dialog: null, asking: false, more: false, theme: "system", sheetPixels: 600,
  },
  usual: null, example: null, mayStop: false, undo: 0, redo: 0,
};

/** @type {((state: State, before: State) => void)[]} */
const listeners = [];
/** @type {Doc[]} */
let past = [];
/** @type {Doc[]} */
let future = [];
/** @type {string | null} */
let merging = null;

export const state = () => now;

/** Calls back after every change. @param {(state: State, before: State) => void} listener */
export function onChange(listener) {
  listeners.push(listener);
}

/** @param {Partial<State>} next */
export function put(next) {
  const before = now;
  now = { ...now, ...next, undo: past.length, redo: future.length };
  listeners.forEach((listener) => listener(now, before));
}

/** @param {Partial<Ui>} next */
export const ui = (next) => put({ ui: { ...now.ui, ...next } });

/** @param {Partial<Answer>} next */
export const answer = (next) => put({ answer: { ...now.answer, ...next } });

/**
 * A step that can be undone. Steps of one `merge`, such as keystrokes in one field, are one.
 * @param {Doc} doc
 * @param {string | null} [merge]
 */
export function step(doc, merge = null) {
  if (merge === null || merge !== merging) {
    past.push(now.doc);
    if (past.length > MOST_STEPS) past.shift();
  }
  merging = merge;
  future = [];
  put({ doc });
}

/** What is typed from now on is a step of its own. */
export function settle() {
  merging = null;
}

/** Begins with what this tab keeps, or with that. @param {Doc} doc */
export function begin(doc) {
  past = [];
  future = [];
  put({ doc });
}

export function undo() {
  const doc = past.pop();
  if (!doc) return;
  future.push(now.doc);
  merging = null;
  put({ doc, ui: { ...now.ui, draft: null } });
}

export function redo() {
  const doc = future.pop();
  if (!doc) return;
  past.push(now.doc);
  merging = null;
  put({ doc, ui: { ...now.ui, draft: null } });
}

/** The job without what does not matter to where pieces lie. @param {import("./paths.js").Tree} job */
function layoutOf({ title, note, invented, currency, print, search, rates, patterns, sheets, ...rest }) {
  const boards = Array.isArray(sheets) ? sheets.map(({ price, ...board }) => board) : sheets;
  return fingerprint([rest, boards]);
}

/**
 * Changes the job: `change` gets a copy that it may alter. Layouts laid by hand stay while they can.
 * @param {(tree: import("./paths.js").Tree) => void} change
 * @param {string | null} [merge]
 */
export function alter(change, merge = null) {
  const doc = now.doc;
  const copy = structuredClone(doc.job);
  change(copy);
  if (JSON.stringify(copy) === JSON.stringify(doc.job)) return;
  const hand = layoutOf(copy) === layoutOf(doc.job) ? doc.hand : null;
  step({ ...doc, job: copy, hand }, merge);
}

/** @param {{sheets: any[]} | null} hand */
export const setHand = (hand) => step({ ...now.doc, hand });

/** Says something to people who hear the page. @param {string} spoken */
export const say = (spoken) => ui({ spoken });
