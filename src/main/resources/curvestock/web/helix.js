// The helix from above, from the side and in three dimensions. Every piece can be pointed at.

import { counted, h, kept, lived } from "./elements.js";
import { fresh } from "./asking.js";
import { choose } from "./hand.js";
import { state, ui } from "./store.js";
import { setUpTurning, toggleTurning, isTurning } from "./turning.js";

/** @param {number[][]} list */
const points = (list) => list.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(" ");

/** @param {any} event */
const pointed = (event) => choose(event.target.dataset.label ?? null);

/** @param {string} label @param {string | null} chosen @param {string} shape */
const bed = (label, chosen, shape) => h("polygon", { key: label + shape.slice(0, 24), points: shape, class: label === chosen ? "bed chosen" : "bed", "data-label": label });

/** @param {any} helix @param {string} turn @param {string | null} chosen */
function fromAbove(helix, turn, chosen) {
  const all = helix.pieces.flatMap((/** @type {any} */ piece) => piece.sections.flatMap((/** @type {number[]} */ [, a, b, c, d]) => [[a, -b], [c, -d]]));
  const xs = all.map((/** @type {number[]} */ [x]) => x);
  const ys = all.map((/** @type {number[]} */ [, y]) => y);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const edge = (x1 - x0) / 18;
  const shown = helix.pieces.filter((/** @type {any} */ piece) => turn === "all" || String(piece.turn) === turn);
  // The piece that is looked at comes last, on top: the turns lie over each other.
  const ordered = [...shown].sort((a, b) => Number(a.number === chosen) - Number(b.number === chosen));
  const numbers = turn === "all" ? [] : shown.map((/** @type {any} */ piece) => {
    const [, a, b, c, d] = piece.sections[Math.floor(piece.sections.length / 2)];
    return h("text", { key: piece.number, x: (a + c) / 2, y: -(b + d) / 2 + edge * 0.4, "font-size": edge * 1.1, "text-anchor": "middle", class: "number" }, piece.number);
  });
  const across = helix.figures.rows[0].words.across;
  return h("svg", { class: "figure", id: "plan-view", viewBox: `${x0 - edge} ${y0 - edge} ${x1 - x0 + 2 * edge} ${y1 - y0 + 3.2 * edge}`, role: "img", "aria-label": "The helix from above; " + describe(helix), onclick: pointed },
    ordered.map((/** @type {any} */ piece) => {
      const left = piece.sections.map((/** @type {number[]} */ [, x, y]) => [x, -y]);
      const right = piece.sections.map((/** @type {number[]} */ [, , , x, y]) => [x, -y]).reverse();
      return bed(piece.number, chosen, points([...left, ...right]));
    }),
    helix.supports.map((/** @type {any} */ support) => h("circle", { key: support.station, cx: support.x, cy: -support.y, r: edge / 6, class: "support" })),
    h("path", { class: "pencil", d: `M${-edge} 0h${2 * edge}M0 ${-edge}v${2 * edge}` }),
    h("path", { class: "dim", d: `M${x0} ${y1 + edge * 0.8}H${x1}M${x0} ${y1 + edge * 0.4}v${edge * 0.8}M${x1} ${y1 + edge * 0.4}v${edge * 0.8}` }),
    across ? h("text", { x: (x0 + x1) / 2, y: y1 + edge * 1.9, "font-size": edge, "text-anchor": "middle", class: "number" }, across) : null,
    numbers);
}

/** The parts of a piece that lie on each turn of the unrolled line. @param {any} helix @param {any} piece */
function unrolled(helix, piece) {
  const parts = new Map();
  piece.sections.forEach((/** @type {number[]} */ [at, , , , , height], /** @type {number} */ i) => {
    const line = Math.floor(at / helix.run + 1e-9);
    if (!parts.has(line)) parts.set(line, []);
    parts.get(line).push([at - line * helix.run, height]);
    const next = piece.sections[i + 1];
    const nextLine = next ? Math.floor(next[0] / helix.run + 1e-9) : line;
    if (nextLine !== line) {
      const share = ((line + 1) * helix.run - at) / (next[0] - at);
      const middle = height + share * (next[5] - height);
      parts.get(line).push([helix.run, middle]);
      if (next[0] - nextLine * helix.run > 1e-6) parts.set(nextLine, [[0, middle]]);
    }
  });
  return [...parts.values()].filter((part) => part.length > 1);
}

const STRETCH = 3;

/** @param {any} helix @param {string | null} chosen */
function fromTheSide(helix, chosen) {
  const top = Math.max(...helix.pieces.flatMap((/** @type {any} */ piece) => piece.sections.map((/** @type {number[]} */ section) => section[5]))) + helix.rail;
  const edge = helix.run / 50;
  const y = (/** @type {number} */ height) => -STRETCH * height;
  return h("svg", { class: "figure", id: "side-view", viewBox: `${-edge} ${y(top) - edge} ${helix.run + 2 * edge} ${STRETCH * top + 2 * edge}`, role: "img", "aria-label": "The helix from the side, unrolled: every turn over the one below; " + describe(helix), onclick: pointed },
    helix.supports.map((/** @type {any} */ support) => {
      const line = Math.floor(support.at / helix.run + 1e-9);
      return h("rect", { key: support.station, class: "support", x: support.at - line * helix.run - support.wide / 2, y: y(support.top), width: support.wide, height: STRETCH * Math.max(0, support.top - support.bottom) });
    }),
    helix.pieces.flatMap((/** @type {any} */ piece) => unrolled(helix, piece).map((part) => {
      const low = part.map((/** @type {number[]} */ [x, height]) => [x, y(height)]);
      const high = part.map((/** @type {number[]} */ [x, height]) => [x, y(height + helix.plywood)]).reverse();
      return bed(piece.number, chosen, points([...low, ...high]));
    })),
    h("path", { class: "pencil", d: `M${-edge} 0H${helix.run + edge}` }));
}

/** @param {any} helix */
const turns = (helix) => Math.max(...helix.pieces.map((/** @type {any} */ piece) => piece.turn));

/** @param {any} helix */
const describe = (helix) => `${counted(helix.pieces.length, "piece")} on ${counted(turns(helix), "turn")}. All are listed under Pieces.`;

/** @param {"plan" | "turning" | "side"} view @param {string} words */
const viewButton = (view, words) => h("button", { type: "button", key: view, id: "view-" + view, "aria-pressed": String(state().ui.view === view), onclick: () => ui({ view }) }, words);

export function helixPanel() {
  const { answer: { look }, ui: { view, turn, piece } } = state();
  const helix = look?.helix;
  const former = helix && !fresh(look);
  const most = helix ? turns(helix) : 0;
  const shownTurn = turn !== "all" && Number(turn) > most ? "all" : turn;
  return h("section", { class: "panel helix-panel" + (former ? " former" : ""), id: "helix-part", "aria-labelledby": "helix-title", "data-job": look?.fingerprint, "data-former": former ? "yes" : "no", hidden: state().doc.job.helix === undefined },
    h("div", { class: "bar" },
      h("h2", { id: "helix-title" }, "Helix"),
      h("span", { class: "group", role: "group", "aria-label": "View" }, viewButton("plan", "Plan"), viewButton("turning", "3-D"), viewButton("side", "Side")),
      view === "plan" ? h("select", { id: "which-turn", "aria-label": "Turns shown", value: shownTurn, onchange: (/** @type {any} */ event) => ui({ turn: event.target.value }) },
        h("option", { value: "all", selected: shownTurn === "all" }, "all turns"), Array.from({ length: most }, (_, i) => h("option", { key: i, value: String(i + 1), selected: shownTurn === String(i + 1) }, `turn ${i + 1}`))) : null,
      view === "turning" ? h("button", { type: "button", id: "turn-on", "aria-pressed": String(isTurning()), onclick: () => { toggleTurning(); ui({}); } }, "Spin") : null),
    h("div", { class: "view" },
      helix && view === "plan" ? kept("plan", [helix, shownTurn, piece], () => fromAbove(helix, shownTurn, piece)) : null,
      helix && view === "side" ? kept("side", [helix, piece], () => fromTheSide(helix, piece)) : null,
      view === "turning" ? lived(setUpTurning, h("canvas", { key: "turning", id: "turning", tabindex: "0", role: "img", "aria-label": "The helix in three dimensions. Arrow keys spin it." })) : null,
      !helix ? h("p", { class: "empty" }, "Working out the helix …") : null),
    helix ? h("p", { class: "under caption" }, caption(helix.figures, view)) : null);
}

/** @param {any} figures @param {string} view */
function caption(figures, view) {
  if (view === "side") return "Unrolled: every turn over the one below; heights exaggerated 3 times.";
  const [{ words }] = figures.rows;
  return figures.columns.filter((/** @type {any} */ column) => ["turns", "risePerTurn", "grade"].includes(column.key)).map((/** @type {any} */ column) => `${column.title}: ${words[column.key]}`).join(" · ");
}
