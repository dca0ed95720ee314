// Begins: brings the state, the program and the page together.

import { byId, draw, h } from "./elements.js";
import { page, setTheme } from "./app.js";
import { followJob } from "./asking.js";
import { judge, sheets } from "./hand.js";
import * as server from "./server.js";
import { begin, onChange, put, redo, state, undo } from "./store.js";

const TAB = "curvestock-tab";
const LAST = "curvestock-last";
const AGAIN_MILLIS = 1000;

const Page = () => page();

let due = 0;

/** Draws once for all changes of one turn. */
function drawSoon() {
  if (due) return;
  due = 1;
  queueMicrotask(() => {
    due = 0;
    draw(h(Page), byId("page"));
  });
}

/** @param {Storage} store @param {string} key @returns {any} */
function read(store, key) {
  try {
    const kept = JSON.parse(store.getItem(key) ?? "null");
    return kept && typeof kept.job === "object" && kept.job && typeof kept.original === "string" ? kept : null;
  } catch {
    return null;
  }
}

/** Each tab keeps its own job through a reload; a new tab begins with the last one typed anywhere. */
function keep() {
  const { doc } = state();
  try {
    const text = JSON.stringify(doc);
    sessionStorage.setItem(TAB, text);
    if (!doc.example) localStorage.setItem(LAST, text);
  } catch {
    // A full or forbidden store only means that a reload begins anew.
  }
}

function keys(/** @type {KeyboardEvent} */ event) {
  const typing = /** @type {Element} */ (event.target).matches?.("input:not([type=range], [type=radio], [type=checkbox]), textarea");
  if (typing || !(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  if (key === "z" && !event.shiftKey) undo();
  else if (key === "y" || (key === "z" && event.shiftKey)) redo();
  else return;
  event.preventDefault();
}

async function run() {
  let theme = "system";
  try {
    theme = localStorage.getItem("curvestock-theme") ?? theme;
  } catch {
    // As the machine has it.
  }
  onChange(drawSoon);
  setTheme(theme);
  followJob();
  const first = await started();
  onChange((now, before) => {
    if (now.doc !== before.doc) keep();
    if (now.answer.plan !== before.answer.plan && now.doc.hand) sheets().forEach((_, i) => judge(i));
  });
  const example = { job: first.job, original: first.text, hand: null, example: true, assume: false };
  begin(read(sessionStorage, TAB) ?? read(localStorage, LAST) ?? example);
  put({ usual: first.usual, example: { job: first.job, text: first.text }, mayStop: first.mayStop });
  document.addEventListener("keydown", keys);
}

/** Waits for the program, however long it takes. */
async function started() {
  for (;;) {
    try {
      return await server.start();
    } catch {
      await new Promise((resolve) => setTimeout(resolve, AGAIN_MILLIS));
    }
  }
}

run();
