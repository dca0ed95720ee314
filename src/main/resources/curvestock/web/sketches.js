// The small pencil drawings beside the questions, of what is meant.

import { s } from "./elements.js";

const line = (d, kind = "pencil") => s("path", { d, class: kind });
const words = (x, y, text, anchor = "middle") => s("text", { x, y, "text-anchor": anchor }, text);
const wood = (d) => s("path", { d, class: "wood" });

/** A dimension line with ticks. */
function measure(x1, y1, x2, y2) {
  const across = x1 === x2;
  const tick = (x, y) => line(across ? `M${x - 3} ${y}h6` : `M${x} ${y - 3}v6`, "dim");
  return [line(`M${x1} ${y1}L${x2} ${y2}`, "dim"), tick(x1, y1), tick(x2, y2)];
}

const DRAWINGS = {
  trains: ["A car on its track: the tallest one counts, from the rail to its roof", () => [
    wood("M10 78h180v8H10z"), line("M18 74h164M18 78h164"),
    line("M44 72v-34h104v34z"), line("M40 38h112"), line("M62 72a6 6 0 1 0 12 0M118 72a6 6 0 1 0 12 0"), line("M58 46h18v12H58zM88 46h18v12H88zM118 46h18v12h-18z"),
    ...measure(166, 38, 166, 74), words(172, 60, "tallest", "start"),
  ]],
  climb: ["From above: the radius runs to the middle of the roadbed, the width across it. From the side: the height to climb", () => [
    s("circle", { cx: 52, cy: 50, r: 44, class: "wood" }), s("circle", { cx: 52, cy: 50, r: 28, class: "hole" }), s("circle", { cx: 52, cy: 50, r: 36, class: "dash" }),
    ...measure(52, 50, 88, 50), words(66, 46, "radius"), line("M49 50h6M52 47v6"),
    line("M118 86h70", "pencil"), line("M122 84l60 -14M182 68l-60 -12M122 54l60 -14M182 38l-60 -12M122 24l60 -6"),
    ...measure(194, 84, 194, 18), words(190, 98, "height", "end"), line("M8 94L24 78", "dim"), words(4, 99, "width", "start"),
  ]],
  ends: ["The track comes in on a straight that is cut in one with the first curve", () => [
    wood("M6 82h94a44 44 0 0 0 44 -44h-16a28 28 0 0 1 -28 28H6z"), line("M6 74h94a36 36 0 0 0 36 -36", "dash"),
    line("M8 60h22m-7 -4l7 4l-7 4"), words(52, 98, "straight"), ...measure(6, 88, 100, 88), words(150, 70, "first curve", "start"),
  ]],
  plywood: ["A sheet of plywood, measured with a caliper: half an inch is rarely half an inch", () => [
    wood("M20 24L150 12l30 40L46 66z"), wood("M20 24v9l26 42v-9z"), wood("M46 66v9l134 -14v-9z"),
    line("M40 30c30 -6 60 2 96 -8M58 50c30 -8 60 2 98 -8", "grain"), line("M8 24v9M5 24h6M5 33h6", "dim"), words(10, 50, "thickness", "start"),
  ]],
  cut: ["The saw takes a strip of wood away between two pieces; joints hold them together", () => [
    wood("M10 30a120 120 0 0 1 82 -14l-4 22a96 96 0 0 0 -64 11z"), wood("M98 17a120 120 0 0 1 76 40l-18 16a96 96 0 0 0 -62 -33z"),
    line("M95 6l-6 46", "cut"), words(96, 64, "width of the cut"), line("M95 56l-3 -10", "dim"),
    wood("M40 80h62v6h-18v6H40z"), wood("M86 94v-6h18v-8h56v14z"), words(176, 92, "lap", "middle"),
  ]],
  supports: ["Blocks or rods hold each turn above the one below", () => [
    wood("M14 22h172v7H14z"), wood("M14 56h172v7H14z"), line("M6 92h188"),
    line("M34 29v27h12V29zM94 29v27h12V29zM154 29v27h12V29zM34 63v29h12V63zM94 63v29h12V63zM154 63v29h12V63z"),
    ...measure(40, 14, 100, 14), words(70, 10, "one of so many in a turn"),
  ]],
};

/** The drawing of that name, with words for people who do not see it. */
export function sketch(name) {
  const [title, draw] = DRAWINGS[name];
  return s("svg", { class: "sketch", viewBox: "0 0 200 104", role: "img", "aria-label": title }, draw());
}
