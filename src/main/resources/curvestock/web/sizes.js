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
  show(byId("sizes"), 
    h("p", { class: "hint" }, "First counts, by regular patterns. The purchase for each size follows."),
    table([["Pieces of a turn", (row) => nameOf(row.angle)], ["Pieces", (row) => String(row.pieces)], ["On a sheet", (row) => (row.perSheet ? String(row.perSheet) : "none")], ["Turns from a sheet", (row) => row.turns]], looks.rows));
}

/** The comparison with its chart. */
export function showSizes(sizes, work, segment) {
  const rows = sizes.rows.map((row) => ({ ...row, best: row.angle === sizes.best, now: Math.abs(row.angle - segment) < 0.01 }));
  const columns = [
    ["Pieces of a turn", (row) => [nameOf(row.angle), row.best ? " ★" : ""].join("")],
    ["Sheets", (row) => String(row.sheets)],
    ["Their cost", (row) => row.cost],
    ["Joints", (row) => String(row.joints)],
    ["On a sheet", (row) => `${row.perSheet}`],
    ["Proven limit", (row) => String(row.noMoreThan)],
    ["Largest piece", (row) => row.largest],
    ["", (row) => (row.now ? "as now" : h("button", { type: "button", "aria-label": `Cut ${nameOf(row.angle)}`, onclick: () => take(row.angle) }, "Cut these"))],
  ];
  const headings = ["Recommended", "How far that holds"];
  const [reason, ...more] = sizes.advice.filter((line) => line !== headings[0]);
  const advice = more.map((line) => h(headings.includes(line) ? "h4" : "p", {}, line.trim()));
  show(byId("sizes"), 
    h("p", { class: "hint" }, `Every size planned with all that the helix takes, on ${sizes.sheet}, by a quick search. ★ is recommended.`),
    reason ? h("p", { class: "reason" }, reason.trim()) : null,
    table(columns, rows),
    h("img", { class: "chart", src: `/api/work/${work}/chart.svg`, alt: "Chart of the table: sheets and joints for each segment size" }),
    sizes.refused.length ? h("p", { class: "hint" }, sizes.refused.map((each) => `${nameOf(each.angle)}: ${each.reason} `)) : null,
    advice.length ? h("details", {}, h("summary", {}, "More on that, and how far it holds"), advice) : null);
}
