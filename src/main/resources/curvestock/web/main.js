// Begins: brings the questions, the answer and the bench's tools together.

import { byId } from "./elements.js";
import * as server from "./server.js";
import { alter, begin, canRedo, canUndo, onChange, redo, replace, set, shownUnit, undo } from "./state.js";
import { buildQuestions, drawQuestions } from "./questions.js";
import { ask, enough, handChanged, offerPacket } from "./answer.js";
import { openFile, saveFile, takePacket, tell } from "./files.js";
import { paint, setUpTurning } from "./turning.js";

const LIGHT = "curvestock-light";

function light(to) {
  document.documentElement.dataset.light = to;
  try {
    localStorage.setItem(LIGHT, to);
  } catch {
    // It then holds until the page is closed.
  }
  byId("light").value = to;
  paint();
}

function setUpTools(first) {
  byId("undo").addEventListener("click", undo);
  byId("redo").addEventListener("click", redo);
  byId("open").addEventListener("click", () => byId("file").click());
  byId("file").addEventListener("change", (event) => {
    openFile(event.target.files[0]);
    event.target.value = "";
  });
  byId("save").addEventListener("click", saveFile);
  byId("afresh").addEventListener("click", () => replace(first.job, first.text));
  byId("packet").addEventListener("click", takePacket);
  byId("enough").addEventListener("click", enough);
  byId("unit").addEventListener("change", (event) => {
    const inches = event.target.value === "in";
    alter((tree) => {
      tree.print = inches ? { unit: "in", fraction: "32" } : { unit: "mm" };
    });
  });
  byId("light").addEventListener("change", (event) => light(event.target.value));
  byId("stop").hidden = !first.mayStop;
  byId("stop").addEventListener("click", async () => {
    await server.stop().catch(() => {});
    tell("The program has ended. You can close this page; what you typed is kept for the next time.");
  });
  document.addEventListener("keydown", (event) => {
    const typing = event.target.matches?.("input, textarea, select");
    if (typing || !(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    if (key === "z" && !event.shiftKey) undo();
    else if (key === "y" || (key === "z" && event.shiftKey)) redo();
    else return;
    event.preventDefault();
  });
  new IntersectionObserver(([seen]) => {
    document.body.dataset.answer = seen.isIntersecting ? "seen" : "";
  }).observe(byId("sum"));
  document.addEventListener("judged", offerPacket);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", paint);
}

function showTools() {
  byId("undo").disabled = !canUndo();
  byId("redo").disabled = !canRedo();
  byId("unit").value = shownUnit();
}

async function run() {
  let kept = "as-machine";
  try {
    kept = localStorage.getItem(LIGHT) ?? kept;
  } catch {
    // As the machine has it.
  }
  light(kept);
  setUpTurning();
  let first;
  try {
    first = await server.start();
  } catch (refusal) {
    tell(refusal.message);
    return;
  }
  buildQuestions(first.usual);
  setUpTools(first);
  onChange((what) => {
    showTools();
    if (what === "hand") {
      handChanged();
      return;
    }
    drawQuestions();
    ask();
  });
  begin(first);
}

byId("add-helix").addEventListener("click", () => alter((tree) => set(tree, "helix", { scale: "HO", turns: "4", climb: "16 in", radius: "28 in", width: "4 1/2 in", "segments-per-turn": "4" })));

run();
