// Job files and packets: what leaves the page and what comes in.

import { byId, say } from "./elements.js";
import * as server from "./server.js";
import { job, replace, state } from "./state.js";
import { current } from "./answer.js";

function give(blob, name) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/** A plain name for a file, from the job's title. */
function fileName(ending) {
  const title = String(job().title ?? "helix").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "");
  return (title.slice(0, 60) || "helix") + ending;
}

export function tell(words) {
  byId("note").textContent = words;
  say(words);
}

/** Says it beside the button that was pressed, and to people who hear the page. */
function beside(words) {
  byId("packet-words").textContent = words;
  byId("packet-words").dataset.told = "yes";
  say(words);
}

/** Opens a job file that the user chose on his machine. */
export async function openFile(file) {
  if (!file) return;
  if (file.size > 1_000_000) {
    tell(`${file.name} is larger than a job file can be.`);
    return;
  }
  const text = await file.text();
  try {
    const opened = await server.open(text);
    replace(opened.job, text);
    tell(`Opened ${file.name}.`);
  } catch (refusal) {
    const first = refusal.problems?.[0];
    tell(`${file.name} cannot be opened: ${first ? `line ${first.line}: ${first.message}` : refusal.message}`);
  }
}

export async function saveFile() {
  try {
    const { text } = await server.save(job(), state().original);
    give(new Blob([text], { type: "application/yaml" }), fileName(".yaml"));
    tell("Saved where your browser puts downloads.");
  } catch (refusal) {
    tell(refusal.message);
  }
}

export async function takePacket() {
  const button = byId("packet");
  const id = current();
  if (!id) return;
  button.disabled = true;
  beside("Drawing and checking every sheet: some seconds. The search waits meanwhile …");
  try {
    const { text } = await server.save(job(), state().original);
    give(await server.packet(id, state().hand, text), fileName("-packet.zip"));
    beside("The packet is where your browser puts downloads. Begin with its README.txt; read the cautions before you cut.");
  } catch (refusal) {
    beside("No packet: " + refusal.message);
  } finally {
    button.disabled = false;
  }
}
