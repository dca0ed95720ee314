// The helix from above and from the side. Every piece can be pointed at, in both drawings and on the
// sheets at once.

import { byId, h, s, show } from "./elements.js";
import { choosePiece, chosenPiece, onChosen } from "./sheets.js";

let helix = null;
let turn = "all";

const points = (list) => list.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(" ");

function pointable(node, piece) {
  node.addEventListener("click", () => choosePiece(piece.number));
  return node;
}

/** A ribbon of the piece seen from above. */
function fromAbove(piece) {
  const left = piece.sections.map(([, x, y]) => [x, -y]);
  const right = piece.sections.map(([, , , x, y]) => [x, -y]).reverse();
  return pointable(s("polygon", { points: points([...left, ...right]), class: "bed", data: { label: piece.number } }), piece);
}

function drawPlan() {
  const all = helix.pieces.flatMap((piece) => piece.sections.flatMap(([, a, b, c, d]) => [[a, -b], [c, -d]]));
  const xs = all.map(([x]) => x);
  const ys = all.map(([, y]) => y);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const edge = (x1 - x0) / 25;
  const shown = helix.pieces.filter((piece) => turn === "all" || String(piece.turn) === turn);
  const labels = turn === "all" ? [] : shown.map((piece) => {
    const [, a, b, c, d] = piece.sections[Math.floor(piece.sections.length / 2)];
    return s("text", { x: (a + c) / 2, y: -(b + d) / 2, "font-size": edge, "text-anchor": "middle", class: "number" }, piece.number);
  });
  return s("svg", { class: "figure", viewBox: `${x0 - edge} ${y0 - edge} ${x1 - x0 + 2 * edge} ${y1 - y0 + 2 * edge}`, role: "img", "aria-label": "The helix from above; " + describe() },
    shown.map(fromAbove),
    helix.supports.map((support) => s("circle", { cx: support.x, cy: -support.y, r: edge / 6, class: "support" })),
    s("path", { class: "pencil", d: `M${-edge} 0h${2 * edge}M0 ${-edge}v${2 * edge}` }),
    labels);
}

/** The parts of a piece that lie on each turn of the unrolled line. */
function unrolled(piece) {
  const parts = new Map();
  piece.sections.forEach(([at, , , , , height], i) => {
    const row = Math.floor(at / helix.run + 1e-9);
    if (!parts.has(row)) parts.set(row, []);
    parts.get(row).push([at - row * helix.run, height]);
    const next = piece.sections[i + 1];
    const nextRow = next ? Math.floor(next[0] / helix.run + 1e-9) : row;
    if (nextRow !== row) {
      const share = ((row + 1) * helix.run - at) / (next[0] - at);
      const middle = height + share * (next[5] - height);
      parts.get(row).push([helix.run, middle]);
      if (next[0] - nextRow * helix.run > 1e-6) parts.set(nextRow, [[0, middle]]);
    }
  });
  return [...parts.values()].filter((part) => part.length > 1);
}

const STRETCH = 2;

function drawSide() {
  const top = Math.max(...helix.pieces.flatMap((piece) => piece.sections.map((section) => section[5]))) + helix.rail;
  const edge = helix.run / 50;
  const y = (height) => -STRETCH * height;
  const beds = helix.pieces.flatMap((piece) => unrolled(piece).map((part) => {
    const low = part.map(([x, height]) => [x, y(height)]);
    const high = part.map(([x, height]) => [x, y(height + helix.plywood)]).reverse();
    return pointable(s("polygon", { points: points([...low, ...high]), class: "bed", data: { label: piece.number } }), piece);
  }));
  const supports = helix.supports.map((support) => {
    const row = Math.floor(support.at / helix.run + 1e-9);
    return s("rect", { class: "support", x: support.at - row * helix.run - support.wide / 2, y: y(support.top), width: support.wide, height: STRETCH * Math.max(0, support.top - support.bottom) });
  });
  return s("svg", { class: "figure", viewBox: `${-edge} ${y(top) - edge} ${helix.run + 2 * edge} ${STRETCH * top + 2 * edge}`, role: "img", "aria-label": "The helix from the side, unrolled: every turn over the one below; " + describe() },
    supports, beds, s("path", { class: "pencil", d: `M${-edge} 0H${helix.run + edge}` }));
}

const turns = () => Math.max(...helix.pieces.map((piece) => piece.turn));

function describe() {
  return `${helix.pieces.length} pieces on ${turns()} turns. All pieces are listed below.`;
}

function draw() {
  show(byId("plan-view"), drawPlan());
  show(byId("side-view"), drawSide());
  choosePiece(chosenPiece());
}

/** Shows the helix of an answer. */
export function drawHelix(found) {
  helix = found;
  if (turn !== "all" && Number(turn) > turns()) turn = "all";
  const choice = byId("which-turn");
  show(choice, h("option", { value: "all" }, "all turns, as they lie over each other"),
    ...Array.from({ length: turns() }, (_, i) => h("option", { value: String(i + 1) }, `turn ${i + 1} alone`)));
  choice.value = turn;
  choice.onchange = () => {
    turn = choice.value;
    draw();
  };
  show(byId("piece-list"), helix.pieces.map((piece) =>
    h("tr", { data: { label: piece.number } },
      h("th", { scope: "row" }, h("button", { type: "button", class: "link", onclick: () => choosePiece(piece.number) }, piece.number)),
      ["turn", "bearingFrom", "bearingTo", "undersideFrom", "undersideTo"].map((key) => h("td", {}, wordsOf(piece.number)[key])))));
  draw();
}

/** The row of the schedule, as written. */
const wordsOf = (number) => helix.schedule.rows.find((row) => row.words.piece === number).words;

/** What is known of the piece that is looked at. */
function tell(label) {
  const card = byId("piece-card");
  const piece = helix?.pieces.find((each) => each.number === label);
  card.hidden = label === null;
  if (label === null) return;
  const words = piece ? wordsOf(label) : {};
  const group = document.querySelector(`#sheets .piece[data-label="${CSS.escape(label)}"]`);
  const sheet = group?.closest(".sheet")?.dataset.sheet;
  const facts = [
    ["Piece", label],
    ["What", group?.getAttribute("aria-label").replace(/^piece [^,]+, /, "")],
    ["Cut from", sheet ? "sheet " + sheet : undefined],
    ["In the helix", piece ? `turn ${words.turn}, from ${words.bearingFrom} to ${words.bearingTo}` : undefined],
    ["Its underside", piece ? `from ${words.undersideFrom} to ${words.undersideTo} above the base` : undefined],
    ["Joined at", piece ? [words.lowerJoint, words.upperJoint].join(" and ") : undefined],
  ];
  show(card, 
    h("dl", {}, facts.filter(([, value]) => value).map(([name, value]) => h("div", {}, h("dt", {}, name), h("dd", {}, value)))),
    h("button", { type: "button", "aria-label": "Look at no piece", onclick: () => choosePiece(null) }, "✕"));
}

/** Brings the piece to the top, since the turns lie over each other. */
function raise(label) {
  const drawing = byId("plan-view").firstElementChild;
  const beds = [...(drawing?.querySelectorAll(".bed") ?? [])];
  const order = new Map(helix?.pieces.map((piece, i) => [piece.number, i]));
  beds.sort((a, b) => order.get(a.dataset.label) - order.get(b.dataset.label));
  const chosen = beds.find((bed) => bed.dataset.label === label);
  drawing?.prepend(...beds.filter((bed) => bed !== chosen), ...(chosen ? [chosen] : []));
}

onChosen((label) => {
  tell(label);
  raise(label);
});
