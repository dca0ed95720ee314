// Which segment size: the comparison as a table to read and to choose from, and its chart.

import { byId, h, show } from "./elements.js";
import { alter, set } from "./state.js";

const NAMES = { 180: "halves", 120: "thirds", 90: "quarters", 72: "fifths", 60: "sixths", 45: "eighths", 36: "tenths", 30: "twelfths" };

const nameOf = (angle) => NAMES[Math.round(angle * 1000) / 1000] ?? `${Math.round(angle * 100) / 100}°`;

function take(angle) {
  const parts = Math.round(360 / angle);
  const whole = Math.abs(360 / angle - parts) < 1e-9;
  alter((tree) => {
    set(tree, "helix.segments-per-turn", whole ? String(parts) : "");
    set(tree, "helix.segment-angle", whole ? "" : String(angle));
  });
}

function table(columns, rows) {
  return h("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": "Segment sizes" },
    h("table", {}, h("thead", {}, h("tr", {}, columns.map(([words]) => h("th", { scope: "col" }, words)))),
      h("tbody", {}, rows.map((row) => h("tr", { class: row.best ? "best" : null },
        columns.map(([, cell], i) => h(i ? "td" : "th", i ? {} : { scope: "row" }, cell(row))))))));
}

/** The first counts, by regular patterns. */
export function showLooks(looks) {
  const shown = ["segment", "pieces", "perSheet", "turnsPerSheet"];
  show(byId("sizes"), 
    h("p", { class: "hint" }, looks.caption),
    table(looks.columns.filter((column) => shown.includes(column.key)).map((column) => [column.title, (row) => row.words[column.key]]), looks.rows));
}

/** The comparison with its chart. */
export function showSizes(sizes, work, segment) {
  const rows = sizes.options.rows.map((row) => ({
    ...row,
    best: row.words.best !== "",
    mixed: row.figures.lowerCount !== undefined,
    now: Math.abs(row.figures.angle - segment) < 0.01,
  }));
  const columns = [
    ["Segment", (row) => [row.words.segment, row.best ? " ★" : ""].join("")],
    ...["sheets", "cost", "joints", "perSheet", "limit"].map((key) => [titleOf(sizes.options, key), (row) => row.words[key]]),
    ["Largest piece", (row) => `${row.words.largestLength} x ${row.words.largestWidth}`],
    ["", (row) => (row.mixed ? "" : row.now ? "as now" : h("button", { type: "button", "aria-label": `Cut ${nameOf(row.figures.angle)}`, onclick: () => take(row.figures.angle) }, "Cut these"))],
  ];
  show(byId("sizes"), 
    h("p", { class: "hint" }, `Every size planned with everything the helix needs, on ${sizes.sheet}, by a quick search. ★ is recommended.`),
    sizes.decision ? h("p", { class: "reason" }, sizes.decision) : null,
    sizes.reasons.map((line) => h("p", {}, line)),
    table(columns, rows),
    h("img", { class: "chart", src: `/api/work/${work}/chart.svg`, alt: "Chart of the table: sheets and joints for each segment size" }),
    sizes.remarks.map((line) => h("p", { class: "hint" }, line)),
    sizes.sensitivity.length ? h("details", {}, h("summary", {}, "How sensitive this is"), sizes.sensitivity.map((line) => h("p", {}, line))) : null);
}

const titleOf = (shown, key) => shown.columns.find((column) => column.key === key).title;
