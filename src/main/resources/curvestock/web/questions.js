// The questions at the left: a row for each field, which stays where it is whatever is typed.

import { byId, h } from "./elements.js";
import { CUT, MORE, SHAPE, TRAINS, said, secondField, sheetFields, sheetMore, slide, unusual } from "./fields.js";
import { kept, millimetres, shown, shownUnit, unitOf, written } from "./lengths.js";
import { get, set } from "./paths.js";
import { alter, say, settle, state, step, ui } from "./store.js";
import { blank, complete, second, typical } from "./typical.js";
import { openRemnant } from "./remnant.js";

/** @typedef {import("./fields.js").Field} Field */
/** @typedef {import("./paths.js").Tree} Tree */

/** @param {string} path */
export const idOf = (path) => "f-" + path.replace(/[^a-z0-9]+/gi, "-");

/**
 * An edit of the job. The first one of the example puts a job of one's own in its place.
 * @param {(tree: Tree) => void} change
 * @param {string | null} [merge]
 */
export function edit(change, merge = null) {
  const { doc } = state();
  if (!doc.example) {
    alter(change, merge);
    return;
  }
  const job = blank(shownUnit(doc.job));
  const own = get(doc.job, "helix.segments-per-turn");
  if (own) set(job, "helix.segments-per-turn", own);
  change(job);
  step({ job, original: "", hand: null, example: false, assume: true }, merge);
  say("The example is cleared. This is your own job now; empty fields take typical values.");
}

/** Writes a field. @param {Field} field @param {string} value @param {string | null} [merge] */
function write(field, value, merge = null) {
  edit((tree) => {
    if (field.write) field.write(tree, value);
    else set(tree, field.path, value);
  }, merge);
}

/** @param {Field} field @param {Tree} job */
function taken(field, job) {
  const { doc, usual } = state();
  if (!doc.assume) return undefined;
  const all = complete(job, usual);
  const value = get(all, field.path);
  return typeof value === "string" ? value : typical(job, usual, field.path);
}

/** What stands under a field: a mistake, else what is taken, else the hint. @param {Field} field */
function under(field) {
  const { doc, answer } = state();
  const problem = problemsOf(field.path, answer.problems)[0];
  if (problem) return { error: true, words: problem };
  if (field.off?.(doc.job)) return { error: false, words: "Does not apply now." };
  const assumed = said(field, doc.job) === "" && field.kind !== "choice" && field.kind !== "flag" ? taken(field, doc.job) : undefined;
  return { error: false, words: assumed ? `Empty: ${shown(assumed, doc.job)}.` : field.hint ?? "" };
}

/** @param {string} path @param {{path: string, message: string}[]} problems @returns {string[]} */
function problemsOf(path, problems) {
  return problems
    .filter((problem) => problem.path === path || problem.path.startsWith(path + ".") || problem.path.startsWith(path + "[") || names(problem, path))
    .map((problem) => readable(problem.message));
}

/** A problem of a whole block may name the field that fixes it. @param {{path: string, message: string}} problem @param {string} path */
function names(problem, path) {
  const named = /`([a-z-]+):/.exec(problem.message)?.[1];
  return Boolean(named) && path === `${problem.path}.${named}`;
}

/** Without the keys of job files. @param {string} message */
export const readable = (message) => message
  .replace(/(?:write )?`([a-z-]+): ([^`]+)`/g, (_, key, value) => `set ${labelOf(key)} to ${value}`)
  .replace(/`([a-z-]+):?`?/g, (_, key) => labelOf(key)).replace(/`/g, "");

/** @param {string} key */
function labelOf(key) {
  const all = [...TRAINS, ...SHAPE, ...CUT, ...MORE.flatMap((group) => group.fields), ...sheetFields(1), ...sheetMore(1)];
  return all.find((field) => field.path.endsWith("." + key) || field.path === key)?.label.toLowerCase() ?? key.replace(/-/g, " ");
}

/** @param {Field} field @param {boolean} unlabelled */
function input(field, unlabelled) {
  const { doc, ui: { draft }, answer } = state();
  const job = doc.job;
  const id = idOf(field.path);
  const wrong = problemsOf(field.path, answer.problems).length > 0;
  const common = { id, "aria-label": unlabelled ? field.label : null, "aria-describedby": id + "-under", "aria-invalid": wrong ? "true" : null, disabled: field.off?.(job) ?? false };
  if (field.kind === "choice") return choice(field, common);
  if (field.kind === "flag") {
    return h("input", { ...common, type: "checkbox", checked: said(field, job) === "true", onchange: (/** @type {any} */ event) => write(field, event.target.checked ? "true" : "") });
  }
  const length = field.kind === "length";
  const text = said(field, job);
  const value = draft?.path === field.path ? draft.text : length ? shown(text, job) : text;
  const assumed = text === "" ? taken(field, job) : undefined;
  return h("span", { class: "slot" },
    h("input", {
      ...common, type: "text", value, autocomplete: "off", spellcheck: "false", list: field.list, inputmode: field.mode,
      placeholder: assumed ? shown(assumed, job).replace(new RegExp(` ${shownUnit(job)}$`), "") : "",
      oninput: (/** @type {any} */ event) => {
        const typed = event.target.value;
        ui({ draft: { path: field.path, text: typed } });
        write(field, length ? kept(typed, state().doc.job) : typed.trim(), field.path);
      },
      onblur: () => {
        settle();
        if (state().ui.draft?.path === field.path) ui({ draft: null });
      },
    }),
    length ? h("span", { class: "unit", "aria-hidden": "true" }, unitOf(value, job)) : null);
}

/** @param {Field} field @param {Record<string, any>} common */
function choice(field, common) {
  const job = state().doc.job;
  const options = field.options ?? [];
  const value = said(field, job) || (options.some(([each]) => each === "") ? "" : taken(field, job) ?? "");
  const all = options.some(([each]) => each === value) ? options : [...options, [value, value || "typical"]];
  return h("select", { ...common, value, onchange: (/** @type {any} */ event) => write(field, event.target.value) },
    all.map(([each, words]) => h("option", { key: each, value: each, selected: each === value }, words)));
}

/** @param {Field} field @param {any} [label] another one than the field's own */
function row(field, label) {
  const { doc, usual } = state();
  const id = idOf(field.path);
  const { error, words } = under(field);
  const read = (/** @type {string | undefined} */ text) => millimetres(text, doc.job.units);
  const ends = slide(field, doc.job, usual, read);
  const now = read(said(field, doc.job) || taken(field, doc.job));
  return h("div", { class: "field" + (field.kind === "flag" ? " flag" : ""), "data-path": field.path, key: label ? "second" : field.path },
    label ?? h("label", { for: id }, field.label),
    input(field, Boolean(label)),
    ends ? h("input", {
      type: "range", class: "slider", "aria-label": field.label + ", slider", min: Math.min(ends.from, now || ends.from), max: Math.max(ends.to, now || ends.to), step: ends.step / 8,
      value: Number.isFinite(now) ? now : ends.from, "aria-valuetext": Number.isFinite(now) ? written(now, shownUnit(doc.job)) : "", disabled: field.off?.(doc.job) ?? false,
      oninput: (/** @type {any} */ event) => {
        const value = Math.round(Number(event.target.value) / ends.step) * ends.step;
        const unit = shownUnit(state().doc.job);
        const text = written(value, unit, 8);
        ui({ draft: null });
        write(field, state().doc.job.units === unit ? text.replace(/ (in|mm)$/, "") : text, field.path + " slider");
      },
      onchange: settle,
    }) : null,
    h("p", { class: error ? "under error" : "under", id: id + "-under" }, words));
}

/** What a figure begins with where none is known. */
const START = /** @type {Record<string, string>} */ ({ turns: "4", "rise-per-turn": "4 in", "steepest-grade": "2.5" });

/** The climb's second figure: which one, and how much. */
function secondRow() {
  const { doc, answer } = state();
  const field = secondField(doc.job);
  const figures = answer.look?.helix?.figures.rows[0];
  const options = [["rise-per-turn", "Rise per turn"], ["turns", "Turns"], ["steepest-grade", "Grade, %"]];
  const chosen = second(doc.job);
  const label = h("select", {
    class: "known", id: "f-second", "aria-label": "Also given", value: chosen,
    onchange: (/** @type {any} */ event) => edit((tree) => {
      const to = event.target.value;
      const guess = /** @type {Record<string, any>} */ ({ turns: figures?.words.turns, "rise-per-turn": figures?.words.risePerTurn, "steepest-grade": figures?.figures.grade?.toFixed(2) });
      for (const [name] of options) set(tree, "helix." + name, "");
      if (to !== "rise-per-turn" || !state().doc.assume) set(tree, "helix." + to, guess[to] ?? START[to]);
    }),
  }, options.map(([value, words]) => h("option", { key: value, value, selected: value === chosen }, words)));
  return row(field, label);
}

/** @param {Tree} sheet @param {number} i */
function otherSheet(sheet, i) {
  const n = i + 1;
  const count = state().doc.job.sheets?.length ?? 1;
  const notes = [
    sheet.corners ? `A remnant with ${sheet.corners.length} corners.` : "",
    sheet.defects ? `${sheet.defects.length} ${sheet.defects.length === 1 ? "knot" : "knots"} to keep clear of.` : "",
  ].filter(Boolean).join(" ");
  const first = i === 0;
  return h("fieldset", { class: "sheet-kind", key: "sheet " + i },
    h("legend", null, sheet.name || "Sheet " + n),
    (first ? [] : sheetFields(n).filter((field) => !(sheet.corners && field.path.endsWith(".size")))).map((field) => row(field)),
    sheetMore(n).map((field) => row(field)),
    h("p", { class: "under" }, notes),
    h("p", { class: "row" },
      sheet.corners ? h("button", { type: "button", onclick: () => openRemnant(i) }, "Redraw remnant") : null,
      sheet.defects ? h("button", { type: "button", onclick: () => edit((tree) => delete tree.sheets[i].defects) }, "Remove knots") : null,
      count > 1 ? h("button", { type: "button", "aria-label": `Remove sheet ${n}`, onclick: () => edit((tree) => tree.sheets.splice(i, 1)) }, "Remove") : null));
}

function addSheet() {
  edit((tree) => {
    const sheets = tree.sheets ?? [{ name: "plywood" }];
    const taken = new Set(sheets.map((/** @type {Tree} */ sheet) => sheet.name));
    let n = 2;
    while (taken.has(`plywood ${n}`)) n++;
    const size = shownUnit(tree) === "in" ? "5x5 ft" : "1525 x 1525 mm";
    tree.sheets = [...sheets, { name: `plywood ${n}`, size, thickness: sheets[0].thickness ?? typical(tree, state().usual, "sheets[1].thickness"), price: sheets[0].price ?? "60.00" }];
  });
}

/** A line of what is folded away and still counts. */
function differing() {
  const { doc, usual } = state();
  const all = unusual(doc.job, usual);
  if (!all.length) return h("p", { class: "differing" }, "All other options are typical.");
  return h("p", { class: "differing" }, "Changed from typical: ",
    all.map(({ field, value }, i) => [
      h("button", { type: "button", class: "link", key: field.path, onclick: () => goTo(field.path) }, `${groupOf(field)}${field.label.toLowerCase()} ${field.kind === "length" ? shown(value, doc.job) : value}`),
      i < all.length - 1 ? ", " : ".",
    ]));
}

/** @param {Field} field */
const groupOf = (field) => (/^helix\.(bottom|top)\./.exec(field.path)?.[1] ?? "") + (/^helix\.(bottom|top)\./.test(field.path) ? " " : "");

/** Opens what is folded and puts the keyboard there. @param {string} path */
export function goTo(path) {
  ui({ more: true, asking: true });
  requestAnimationFrame(() => byId(idOf(path))?.focus());
}

/** Problems of no field that is shown. */
function unplaced() {
  const { doc, answer } = state();
  const paths = [...TRAINS, ...SHAPE, secondField(doc.job), ...CUT, ...MORE.flatMap((group) => group.fields),
    ...(doc.job.sheets ?? [1]).flatMap((/** @type {any} */ _, /** @type {number} */ i) => [...sheetFields(i + 1), ...sheetMore(i + 1)])].map((field) => field.path);
  return answer.problems.filter((problem) => !paths.some((path) => problemsOf(path, [problem]).length));
}

export function questions() {
  const { doc, usual, ui: { more } } = state();
  const job = doc.job;
  const rest = unplaced();
  const sheets = Array.isArray(job.sheets) && job.sheets.length ? job.sheets : [{}];
  const count = unusual(job, usual).length;
  return h("form", { id: "questions", novalidate: true, onsubmit: (/** @type {Event} */ event) => event.preventDefault() },
    h("ul", { class: "problems", id: "problems", hidden: rest.length === 0 }, rest.map((problem) => h("li", { key: problem.path + problem.message }, readable(problem.message)))),
    job.helix === undefined
      ? h("p", { class: "under" }, "This job lists its pieces one by one and has no helix. ", h("button", { type: "button", onclick: () => edit((tree) => { tree.helix = complete({ ...blank(shownUnit(tree)) }, usual).helix; }) }, "Add a helix"))
      : [
        h("div", { class: "pair", key: "trains" }, TRAINS.map((field) => row(field))),
        SHAPE.map((field) => row(field)),
        secondRow(),
      ],
    h("hr", { key: "to plywood" }),
    sheetFields(1).filter((field) => !(sheets[0].corners && field.path.endsWith(".size"))).map((field) => row(field)),
    h("hr", { key: "to cutting" }),
    CUT.filter((field) => job.helix !== undefined || field.path === "cutting.kerf").map((field) => row(field)),
    h("datalist", { id: "sheet-sizes" }, usual.sheets.map((/** @type {string} */ size) => h("option", { value: size }))),
    h("datalist", { id: "kerfs" }, usual.tools.map((/** @type {any} */ tool) => h("option", { value: tool.kerf[shownUnit(job) === "in" ? 0 : 1] }, tool.name))),
    differing(),
    h("details", { class: "more", open: more, ontoggle: (/** @type {any} */ event) => event.target.open !== state().ui.more && ui({ more: event.target.open }) },
      h("summary", null, count ? `More options (${count} set)` : "More options"),
      (job.helix === undefined ? MORE.slice(-1) : MORE).map((group) => h("fieldset", { key: group.title }, h("legend", null, group.title), group.fields.map((field) => row(field)))),
      h("div", { id: "plywood" },
        sheets.map(otherSheet),
        h("p", { class: "row" },
          h("button", { type: "button", onclick: addSheet }, "Add sheet"),
          h("button", { type: "button", id: "add-remnant", onclick: () => openRemnant(-1) }, "Add remnant")))));
}
