// The whole page, drawn from the one state.

import { byId, counted, h } from "./elements.js";
import { enough, fresh, headline, search } from "./asking.js";
import { decision } from "./decision.js";
import { details, open as openChecks } from "./details.js";
import { dialog, open } from "./dialogs.js";
import { newJob, openExample, openFile, ready, saveFile, takePacket, tell } from "./files.js";
import { helixPanel } from "./helix.js";
import { holds } from "./hand.js";
import { questions } from "./questions.js";
import * as server from "./server.js";
import { sheetsPanel } from "./sheets.js";
import { alter, redo, settle, state, ui, undo } from "./store.js";
import { shownUnit } from "./lengths.js";

const closeMenu = () => byId("menu")?.hidePopover?.();

/** An act of the menu, which is closed first. @param {() => void} act */
const menu = (act) => () => {
  closeMenu();
  act();
};

function quit() {
  open({
    title: "Quit Curvestock?", id: "quit-now", confirm: "Quit Curvestock", back: "file-menu",
    body: () => h("p", null, "Curvestock stops on this computer, for all open pages. What you typed stays in this tab; save the job file to keep it."),
    ready: () => true,
    done: async () => {
      await server.stop().catch(() => {});
      tell("Curvestock has ended. You can close this page.");
    },
  });
}

/** @param {string} theme */
export function setTheme(theme) {
  document.documentElement.dataset.theme = theme;
  try {
    localStorage.setItem("curvestock-theme", theme);
  } catch {
    // It then holds until the page is closed.
  }
  ui({ theme });
}

function header() {
  const { doc, undo: undoes, redo: redoes, mayStop, ui: { theme } } = state();
  const unit = shownUnit(doc.job);
  return h("header", { class: "top" },
    h("h1", null, "Curvestock"),
    h("input", {
      id: "job-title", "aria-label": "Name of the job", value: doc.job.title ?? "", autocomplete: "off", spellcheck: "false",
      oninput: (/** @type {any} */ event) => alter((tree) => { tree.title = event.target.value; }, "title"), onblur: settle,
    }),
    doc.example ? h("p", { class: "example", id: "example" }, "Example, figures invented. Your first change starts a job of your own.") : null,
    h("div", { class: "tools", role: "group", "aria-label": "Job" },
      h("button", { type: "button", id: "undo", disabled: undoes === 0, onclick: undo, "aria-label": "Undo" }, h("span", { class: "long" }, "Undo"), h("span", { class: "short" }, "↶")),
      h("button", { type: "button", id: "redo", disabled: redoes === 0, onclick: redo, "aria-label": "Redo" }, h("span", { class: "long" }, "Redo"), h("span", { class: "short" }, "↷")),
      h("select", {
        id: "unit", "aria-label": "Unit", value: unit,
        onchange: (/** @type {any} */ event) => { const inches = event.target.value === "in"; alter((tree) => { tree.print = inches ? { unit: "in", fraction: "32" } : { unit: "mm" }; }); },
      }, h("option", { value: "in", selected: unit === "in" }, "inches"), h("option", { value: "mm", selected: unit === "mm" }, "mm")),
      h("button", { type: "button", id: "file-menu", popovertarget: "menu" }, "File ▾"),
      h("div", { id: "menu", popover: "auto", role: "group", "aria-label": "File" },
        h("button", { type: "button", id: "new", onclick: menu(newJob) }, "New job"),
        h("button", { type: "button", id: "open", onclick: menu(() => byId("file").click()) }, "Open job file …"),
        h("button", { type: "button", id: "save", onclick: menu(saveFile) }, "Save job file"),
        h("button", { type: "button", id: "show-example", onclick: menu(openExample) }, "Open the example"),
        h("label", null, "Theme: ", h("select", { id: "theme", value: theme, onchange: (/** @type {any} */ event) => setTheme(event.target.value) }, ["system", "light", "dark"].map((each) => h("option", { key: each, value: each, selected: each === theme }, each)))),
        mayStop ? h("button", { type: "button", id: "quit", onclick: menu(quit) }, "Quit Curvestock") : null)),
    h("input", { type: "file", id: "file", hidden: true, accept: ".yaml,.yml,text/yaml,application/yaml", "aria-label": "Job file", onchange: (/** @type {any} */ event) => { openFile(event.target.files[0]); event.target.value = ""; } }));
}

/** The answer in a line: sheets with money, and the verdict. */
function verdict() {
  const { answer: { plan, decision: sizes, look, phase, progress, problems } } = state();
  const own = sizes?.sizes.find((/** @type {any} */ card) => card.own);
  const exact = Boolean(plan && fresh(plan));
  const about = !exact && own && fresh(sizes) && own.sheets ? `≈ ${counted(own.sheets, "sheet")}, ${own.money}` : "";
  const words = phase === "refused" ? "Cannot be cut from these sheets"
    : about || (plan ? headline(plan) : "Counting sheets …");
  const former = phase !== "refused" && !exact && !about && Boolean(plan);
  const helix = look?.helix;
  const state_ = helix ? (helix.works ? (openChecks(helix).length ? "marginal" : "ok") : "fail") : "";
  return h("section", { class: "verdict", id: "answer", tabindex: "-1", "aria-label": "Answer", "data-former": former ? "yes" : "no", "data-job": exact ? plan?.fingerprint : sizes?.fingerprint },
    h("div", { class: "sum" },
      h("p", { id: "cost", class: "cost" + (former ? " former" : "") }, words),
      h("p", { id: "verdict-line", class: (fresh(look) ? state_ : "former") }, problems.length ? "Fix the marked fields; showing your last result." : helix?.decision ?? "")),
    searching(exact, phase, progress),
    h("div", { class: "take" },
      h("button", { type: "button", id: "packet", class: "main", disabled: !ready(), onclick: takePacket }, "Download cutting packet"),
      h("p", { id: "packet-words", class: "under", role: "status" }, packetWords())));
}

function packetWords() {
  const { ui: { packet }, answer: { plan } } = state();
  if (packet) return packet;
  if (!holds()) return "Some pieces are too close together or over the edge: move them first.";
  return fresh(plan) ? "Cut files, patterns, schedule and lists; every drawing is checked." : "Available once the first layout is found.";
}

/** How the search stands, in a place of fixed size. @param {boolean} exact @param {string} phase @param {{words: string, share: number | null}} progress */
function searching(exact, phase, progress) {
  const { answer: { plan, link } } = state();
  const busy = phase === "searching";
  const more = exact && Boolean(plan?.open) && (phase === "done" || phase === "stopped");
  const words = link === "lost" ? "Curvestock does not respond. What you typed is kept; trying again."
    : link === "slow" ? "Curvestock is slow to answer; still waiting."
      : busy || progress.words ? progress.words || "Searching"
        : phase === "looking" ? "Quick count"
          : phase === "stopped" ? "Stopped: best found so far."
            : phase === "done" ? (plan?.gained || "Search complete.")
              : phase === "wrong" ? "Fix the marked fields to go on." : "";
  return h("div", { class: "search" + (link === "ok" ? "" : " broken") },
    h("p", { id: "step", role: link === "ok" ? null : "alert" }, words),
    h("progress", { id: "bar", max: "1", value: progress.share ?? undefined, class: busy ? "" : "idle", "aria-label": "Progress of the search" }),
    busy
      ? h("button", { type: "button", id: "enough", disabled: !exact, onclick: enough }, "Stop and use this")
      : h("button", { type: "button", id: "continue", class: more ? "" : "idle", disabled: !more, onclick: () => search(true) }, "Continue searching"));
}

export function page() {
  const { ui: { asking, spoken, note }, usual, answer: { phase, fingerprint } } = state();
  document.body.dataset.state = phase;
  document.body.dataset.job = fingerprint;
  document.body.dataset.asking = asking ? "yes" : "no";
  if (!usual) return h("p", { class: "empty" }, state().answer.link === "lost" ? "Curvestock does not respond; trying again." : "");
  return [
    h("a", { key: "skip", class: "skip", href: "#answer" }, "Skip to the answer"),
    header(),
    h("main", { key: "main" },
      decision(),
      verdict(),
      h("section", { class: "ask", id: "ask", "aria-labelledby": "questions-title" },
        h("h2", { id: "questions-title" }, "Numbers"),
        questions()),
      h("div", { class: "stage" }, sheetsPanel(), helixPanel()),
      details()),
    h("button", { key: "questions", type: "button", class: "change", id: "change", "aria-expanded": String(asking), "aria-controls": "ask", onclick: () => ui({ asking: !asking }) }, asking ? "Done" : "Change numbers"),
    h("p", { key: "note", id: "note", class: "unseen" }, note),
    h("p", { key: "spoken", id: "spoken", class: "unseen", "aria-live": "polite" }, spoken),
    dialog(),
  ];
}
