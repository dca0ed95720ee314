// Does it work: the verdict of every rule, what was assumed, and what to buy for it.

import { byId, h, show } from "./elements.js";

const SIGNS = { ok: "✓", marginal: "≈", fail: "✗" };
const WORDS = { ok: "ok", marginal: "marginal", fail: "fail" };

function verdict(each) {
  return h("li", { class: each.result },
    h("span", { class: "sign", "aria-hidden": "true" }, SIGNS[each.result]),
    h("div", {}, h("b", {}, each.rule), ` — ${WORDS[each.result]}. `, each.finding, each.fix ? h("p", { class: "fix" }, "Fix: " + each.fix) : null));
}

/** Shows the verdicts; those that fail or are marginal first, the others folded away. */
export function showVerdicts(helix) {
  const open = helix.verdicts.filter((each) => each.result !== "ok").sort((a, b) => (a.result > b.result ? 1 : -1));
  const met = helix.verdicts.filter((each) => each.result === "ok");
  byId("verdict-line").textContent = helix.headline;
  byId("verdict-line").className = helix.works ? (open.length ? "marginal" : "ok") : "fail";
  show(byId("facts"), helix.facts.map((fact) => h("div", {}, h("dt", {}, fact.name), h("dd", {}, fact.value))));
  show(byId("verdicts"), 
    open.length ? h("ul", { class: "verdicts" }, open.map(verdict)) : "",
    h("details", {}, h("summary", {}, `${met.length} checks pass`), h("ul", { class: "verdicts" }, met.map(verdict))),
    helix.assumed.length
      ? h("details", {}, h("summary", {}, `${helix.assumed.length} things taken as usual, since you did not say`),
        h("ul", {}, helix.assumed.map((each) => h("li", {}, h("b", {}, each.field), `: ${each.value}. ${each.reason}`))))
      : "");
  show(byId("shopping"), helix.shopping.map((item) =>
    h("tr", {}, h("th", { scope: "row" }, item.item), h("td", {}, item.quantity), h("td", {}, item.price ?? ""), h("td", {}, item.note))));
  byId("shopping-part").hidden = helix.shopping.length === 0;
}
