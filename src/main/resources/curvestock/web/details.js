// Everything behind the decision, in tabs of one fixed size: nothing moves under the pointer.

import { counted, h } from "./elements.js";
import { fresh } from "./asking.js";
import { choose } from "./hand.js";
import { readable } from "./questions.js";
import { state, ui } from "./store.js";

const SIGNS = /** @type {Record<string, string>} */ ({ ok: "✓", marginal: "≈", fail: "✗" });

/** The rows of a table of the answer, as written. @param {any} table */
const wordsOf = (table) => table.rows.map((/** @type {any} */ row) => row.words);

/** @param {any} each */
function verdict(each) {
  return h("li", { class: each.state, key: each.title + each.finding },
    h("span", { class: "sign", "aria-hidden": "true" }, SIGNS[each.state]),
    h("div", null, h("b", null, each.title), `: ${each.state}. `, each.finding, each.fix ? h("p", { class: "fix" }, "Fix: " + readable(each.fix)) : null));
}

/** Checks that need attention: those that fail first. @param {any} helix */
export function open(helix) {
  const all = wordsOf(helix.verdicts);
  return [...all.filter((/** @type {any} */ each) => each.state === "fail"), ...all.filter((/** @type {any} */ each) => each.state === "marginal")];
}

/** @param {any} helix */
function checks(helix) {
  if (!helix) return h("p", { class: "under" }, state().doc.job.helix === undefined ? "No helix, so nothing to check." : "Working it out …");
  const need = open(helix);
  const met = wordsOf(helix.verdicts).filter((/** @type {any} */ each) => each.state === "ok");
  const assumed = wordsOf(helix.assumed);
  return [
    h("p", { key: "line", id: "works", class: helix.works ? (need.length ? "marginal" : "ok") : "fail" }, h("b", null, helix.decision)),
    h("ul", { key: "need", class: "verdicts" }, need.map(verdict)),
    h("details", { key: "met" }, h("summary", null, `${counted(met.length, "check")} ${met.length === 1 ? "passes" : "pass"}`), h("ul", { class: "verdicts" }, met.map(verdict))),
    assumed.length
      ? h("details", { key: "assumed" }, h("summary", null, `${counted(assumed.length, "value")} assumed, as you left ${assumed.length === 1 ? "it" : "them"} open`), h("ul", null, assumed.map((/** @type {any} */ each) => h("li", { key: each.field }, h("b", null, each.what), `: ${each.value}. ${each.reason}`))))
      : null,
  ];
}

/** @param {string} label @param {string[]} heads @param {any[]} rows */
const table = (label, heads, rows) => h("table", { key: label, "aria-label": label }, h("thead", null, h("tr", null, heads.map((head) => h("th", { key: head, scope: "col" }, head)))), h("tbody", null, rows));

/** @param {any} plan @param {any} helix */
function buy(plan, helix) {
  if (!plan) return h("p", { class: "under" }, "Not planned yet.");
  const items = helix ? wordsOf(helix.shopping) : [];
  return [
    h("p", { key: "decision" }, h("b", null, plan.answer.decision)),
    table("Sheets to buy", ["Count", "Sheet", "Size", "Cost"], wordsOf(plan.answer.purchase).map((/** @type {any} */ words) =>
      h("tr", { key: words.sheet }, h("td", null, `${words.bought} ×`), h("th", { scope: "row" }, words.sheet), h("td", null, `${words.length} x ${words.width}`), h("td", null, words.cost)))),
    items.length ? table("Shopping list", ["Item", "Quantity", "Cost", "Note"], items.map((/** @type {any} */ item, /** @type {number} */ i) =>
      h("tr", { key: i }, h("th", { scope: "row" }, item.item), h("td", null, [item.quantity, item.unit].filter(Boolean).join(" ")), h("td", null, item.price), h("td", null, item.note)))) : null,
  ];
}

/** @param {any} helix */
function pieces(helix) {
  if (!helix) return h("p", { class: "under" }, state().doc.job.helix === undefined ? "No helix, so no schedule." : "Working it out …");
  const { piece } = state().ui;
  return table("All pieces in their order", ["Piece", "Turn", "From", "To", "Underside, low end", "High end", "Joined at"], wordsOf(helix.schedule).map((/** @type {any} */ words) =>
    h("tr", { key: words.piece, class: words.piece === piece ? "chosen" : "", "data-label": words.piece },
      h("th", { scope: "row" }, h("button", { type: "button", class: "link", onclick: () => choose(words.piece) }, words.piece)),
      ["turn", "bearingFrom", "bearingTo", "undersideFrom", "undersideTo"].map((key) => h("td", { key }, words[key])),
      h("td", null, [words.lowerJoint, words.upperJoint].filter(Boolean).join(", ")))));
}

/** @param {any} plan @param {any} helix */
function figures(plan, helix) {
  const sentences = state().answer.decision?.sentences ?? [];
  return [
    sentences.length ? h("p", { key: "decision" }, sentences.join(" ")) : null,
    helix ? h("dl", { key: "facts", class: "facts", id: "facts" }, helix.figures.columns.map((/** @type {any} */ column) => h("div", { key: column.key }, h("dt", null, column.title), h("dd", null, helix.figures.rows[0].words[column.key])))) : null,
    plan ? h("div", { key: "proof", id: "proof" },
      h("p", null, [plan.answer.used, plan.answer.sheetsProof, plan.answer.proof].filter(Boolean).join(" "), " ", plan.gained),
      plan.answer.remarks.map((/** @type {string} */ words) => h("p", { key: words }, words)),
      h("ul", { id: "capacities" }, wordsOf(plan.answer.perSheet).map((/** @type {any} */ words) => h("li", { key: words.kind + words.sheet }, h("b", null, `${words.kind}: ${words.found}`), ` to a sheet of ${words.sheet}, ${words.standing} (limit ${words.limit})`)))) : null,
  ];
}

const CAUTIONS = [
  "These figures are a planning aid. Measure your sheets, cut two test pieces and try the joint between them, and run your own trains round a mock-up of the curve before you cut the rest.",
  "Wear eye and hearing protection. Wood dust harms the lungs: use extraction and a mask. A laser also needs fume extraction and plywood sold as safe for lasers.",
  "Clamp the work, never hold a small piece by hand, never climb-cut, unplug before you change a blade or bit, and never leave a router or laser alone.",
  "A full sheet, or a helix, takes two people to lift. Leave house wiring, and anything hung from a ceiling, to a licensed electrician or builder; local codes come first.",
];

export function details() {
  const { answer: { plan, look }, ui: { tab } } = state();
  const helix = look?.helix;
  const need = helix ? open(helix).length : 0;
  /** @type {[string, string, () => any, any][]} */
  const tabs = [
    ["checks", need ? `Checks (${need})` : "Checks", () => checks(helix), look],
    ["buy", "Shopping list", () => buy(plan, helix), plan],
    ["pieces", "Pieces", () => pieces(helix), look],
    ["figures", "Limits", () => figures(plan, helix), plan],
    ["cautions", "Before you cut", () => h("ul", null, CAUTIONS.map((words) => h("li", { key: words }, words))), null],
  ];
  const at = Math.max(0, tabs.findIndex(([name]) => name === tab));
  const [name, , content, part] = tabs[at];
  const former = part && !fresh(part);
  const go = (/** @type {any} */ event) => {
    const to = /** @type {Record<string, number>} */ ({ ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: tabs.length - 1 })[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const next = tabs[(to + tabs.length) % tabs.length][0];
    ui({ tab: next });
    document.getElementById("tab-" + next)?.focus();
  };
  return h("section", { class: "panel details" + (former ? " former" : ""), "aria-label": "Details", "data-job": part?.fingerprint, "data-former": former ? "yes" : "no" },
    h("div", { class: "tabs", role: "tablist", "aria-label": "Details", onkeydown: go }, tabs.map(([each, words]) =>
      h("button", { type: "button", key: each, id: "tab-" + each, role: "tab", "aria-selected": String(each === name), "aria-controls": "tab-panel", tabindex: each === name ? "0" : "-1", onclick: () => ui({ tab: each }) }, words))),
    h("div", { class: "tab-panel", id: "tab-panel", role: "tabpanel", "aria-labelledby": "tab-" + name, tabindex: "0", key: name }, content()));
}
