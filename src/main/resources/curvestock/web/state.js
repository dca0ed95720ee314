// What the user has said: the job as a tree of texts, the file it came from, and layouts laid by hand.
// Every change is a new snapshot, so that it can be undone; the newest is kept in the browser.

const KEEP = "curvestock-job-1";
const MOST_STEPS = 200;

const listeners = [];
let past = [];
let future = [];
let now = { job: {}, original: "", hand: null };

export const state = () => now;
export const job = () => now.job;

/** Calls back after every change, with what has changed: "job", "hand" or "all". */
export function onChange(listener) {
  listeners.push(listener);
}

function tell(what) {
  try {
    localStorage.setItem(KEEP, JSON.stringify(now));
  } catch {
    // A full or forbidden store only means that a reload begins anew.
  }
  listeners.forEach((listener) => listener(what));
}

/** Begins with what the browser keeps, or with the given job. */
export function begin(first) {
  let kept = null;
  try {
    kept = JSON.parse(localStorage.getItem(KEEP));
  } catch {
    kept = null;
  }
  const sound = kept && typeof kept.job === "object" && kept.job && typeof kept.original === "string";
  now = sound ? kept : { job: first.job, original: first.text, hand: null };
  tell("all");
}

function step(next, what) {
  past.push(now);
  if (past.length > MOST_STEPS) past.shift();
  future = [];
  now = next;
  tell(what);
}

/** Takes another job, from a file or afresh. */
export function replace(jobTree, original) {
  step({ job: jobTree, original, hand: null }, "all");
}

/** The job without what does not matter to the layouts. */
function layoutOf({ title, note, invented, currency, print, search, rates, ...rest }) {
  return JSON.stringify(rest);
}

/** Changes the job: `change` gets a copy that it may alter. Layouts laid by hand stay while they can. */
export function alter(change) {
  const copy = structuredClone(now.job);
  change(copy);
  if (JSON.stringify(copy) === JSON.stringify(now.job)) return;
  const hand = layoutOf(copy) === layoutOf(now.job) ? now.hand : null;
  step({ ...now, job: copy, hand }, "job");
}

export function setHand(hand) {
  step({ ...now, hand }, "hand");
}

export const canUndo = () => past.length > 0;
export const canRedo = () => future.length > 0;

function go(to) {
  const same = JSON.stringify(to.job) === JSON.stringify(now.job);
  now = to;
  tell(same ? "hand" : "all");
}

export function undo() {
  if (!canUndo()) return;
  future.push(now);
  go(past.pop());
}

export function redo() {
  if (!canRedo()) return;
  past.push(now);
  go(future.pop());
}

/** The keys of a path such as `sheets[2].price`; lists count from 1, as in the program's messages. */
export function keys(path) {
  return path
    .replace(/\[(\d+)\]/g, (_, n) => "." + (Number(n) - 1))
    .split(".")
    .filter((key) => key !== "");
}

export function get(tree, path) {
  let node = tree;
  for (const key of keys(path)) {
    if (node === null || typeof node !== "object") return undefined;
    node = node[key];
  }
  return node;
}

/** Sets the value at the path; an empty text or undefined takes the key away, and blocks left empty too. */
export function set(tree, path, value) {
  const steps = keys(path);
  const trail = [];
  let node = tree;
  steps.slice(0, -1).forEach((key, i) => {
    trail.push([node, key]);
    if (typeof node[key] !== "object" || node[key] === null) {
      node[key] = /^\d+$/.test(steps[i + 1]) ? [] : {};
    }
    node = node[key];
  });
  const last = steps[steps.length - 1];
  if (value !== undefined && value !== "") {
    node[last] = value;
    return;
  }
  delete node[last];
  for (const [parent, key] of trail.reverse()) {
    const child = parent[key];
    const empty = !Array.isArray(child) && Object.keys(child).length === 0;
    if (!empty || Array.isArray(parent) || parent === tree) break;
    delete parent[key];
  }
}

/** "in" or "mm": what the page prints and what a bare number means that is typed now. */
export function shownUnit(tree = now.job) {
  const print = tree.print?.unit;
  if (print) return print === "in" ? "in" : "mm";
  return tree.units === "in" || tree.units === "ft" ? "in" : "mm";
}
