// Does it work: the verdict of every rule, what was assumed, and what to buy for it.

import { byId, h, show } from "./elements.js";

const SIGNS = { ok: "✓", marginal: "≈", fail: "✗" };

/** The rows of a table of the answer: figures by key, and how each is written. */
const wordsOf = (table) => table.rows.map((row) => row.words);

function verdict(each) {
  return h("li", { class: each.state },
    h("span", { class: "sign", "aria-hidden": "true" }, SIGNS[each.state]),
    h("div", {}, h("b", {}, each.title), ` — ${each.state}. `, each.finding, each.fix ? h("p", { class: "fix" }, "Fix: " + each.fix) : null));
}

/** Shows the verdicts; those that fail or are marginal first, the others folded away. */
export function showVerdicts(helix) {
  const all = wordsOf(helix.verdicts);
  const open = [...all.filter((each) => each.state === "fail"), ...all.filter((each) => each.state === "marginal")];
  const met = all.filter((each) => each.state === "ok");
  byId("verdict-line").textContent = helix.decision;
  byId("verdict-line").className = helix.works ? (open.length ? "marginal" : "ok") : "fail";
  const [figures] = wordsOf(helix.figures);
  show(byId("facts"), helix.figures.columns.map((column) => h("div", {}, h("dt", {}, column.title), h("dd", {}, figures[column.key]))));
  const assumed = wordsOf(helix.assumed);
  show(byId("verdicts"), 
    open.length ? h("ul", { class: "verdicts" }, open.map(verdict)) : "",
    h("details", {}, h("summary", {}, `${met.length} checks pass`), h("ul", { class: "verdicts" }, met.map(verdict))),
    assumed.length
      ? h("details", {}, h("summary", {}, `${assumed.length} values assumed, since you did not say`),
        h("ul", {}, assumed.map((each) => h("li", {}, h("b", {}, each.field), `: ${each.value}. ${each.reason}`))))
      : "");
  const items = wordsOf(helix.shopping);
  show(byId("shopping"), items.map((item) =>
    h("tr", {}, h("th", { scope: "row" }, item.item), h("td", {}, [item.quantity, item.unit].filter(Boolean).join(" ")), h("td", {}, item.price), h("td", {}, item.note))));
  byId("shopping-part").hidden = items.length === 0;
}
