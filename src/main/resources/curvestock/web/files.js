// Job files and packets: what leaves the page and what comes in.

import * as server from "./server.js";
import { fresh } from "./asking.js";
import { holds } from "./hand.js";
import { step, say, state, ui } from "./store.js";
import { asked, blank } from "./typical.js";
import { shownUnit } from "./lengths.js";
import { readable } from "./questions.js";

/** @param {Blob} blob @param {string} name */
function give(blob, name) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/** A plain name for a file, from the job's title. @param {string} ending */
function fileName(ending) {
  const title = String(state().doc.job.title ?? "helix").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "");
  return (title.slice(0, 60) || "helix") + ending;
}

/** @param {string} note */
export const tell = (note) => ui({ note, spoken: note });

export function newJob() {
  step({ job: blank(shownUnit(state().doc.job)), original: "", hand: null, example: false, assume: true });
  tell("New job: empty fields take typical values.");
}

export function openExample() {
  const { example } = state();
  step({ job: example.job, original: example.text, hand: null, example: true, assume: false });
}

/** Opens a job file that the person chose on his machine. @param {File | undefined} file */
export async function openFile(file) {
  if (!file) return;
  if (file.size > 1_000_000) {
    tell(`${file.name} is too large for a job file.`);
    return;
  }
  const text = await file.text();
  try {
    const { job, hand } = await server.open(text);
    step({ job, original: text, hand: hand ?? null, example: false, assume: false });
    tell(`Opened ${file.name}.`);
  } catch (error) {
    const refusal = /** @type {any} */ (error);
    const first = refusal.problems?.[0];
    tell(`${file.name} cannot be opened: ${first ? `line ${first.line}: ${readable(first.message)}` : refusal.message}`);
  }
}

export async function saveFile() {
  const { doc } = state();
  try {
    const { text } = await server.save(asked(state()), doc.original, doc.hand);
    give(new Blob([text], { type: "application/yaml" }), fileName(".yaml"));
    tell("Saved to your downloads folder.");
  } catch (refusal) {
    tell(/** @type {Error} */ (refusal).message);
  }
}

/** Whether the packet can be made: there is a plan of this very job, and nothing lies wrong. */
export const ready = () => fresh(state().answer.plan) && holds() && !state().ui.packing;

export async function takePacket() {
  const { answer: { work }, doc } = state();
  if (!work || !ready()) return;
  ui({ packing: true, packet: "Drawing and checking every sheet; the search is paused." });
  say("Making the packet.");
  try {
    const { text } = await server.save(asked(state()), doc.original, doc.hand);
    give(await server.packet(work, doc.hand, text), fileName("-packet.zip"));
    ui({ packing: false, packet: "Packet saved to your downloads folder. Start with its README.txt." });
  } catch (refusal) {
    ui({ packing: false, packet: "No packet: " + /** @type {Error} */ (refusal).message });
  }
  say(state().ui.packet);
}
