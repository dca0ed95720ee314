// The questions, in the order in which a builder thinks. Each field knows its place in the job file;
// fields of the file that have no question stay as they are.

import { byId, h, show } from "./elements.js";
import { alter, get, job, set, shownUnit } from "./state.js";
import { kept, learn, shown, unitOf } from "./lengths.js";
import { sketch } from "./sketches.js";
import { renderPlywood } from "./plywood.js";

let usual = null;
let figures = { figures: {}, words: {} };
const fields = [];

const which = (inch, metric) => (shownUnit() === "in" ? inch : metric);
const pick = (pair) => which(pair[0], pair[1]);
const scaleUsual = () => usual.scales[get(job(), "helix.scale")] ?? null;

const helix = (name) => "helix." + name;

function suggestion(name, words) {
  return () => {
    const known = scaleUsual()?.[name];
    return known ? { words: words(known), take: pick(known) } : null;
  };
}

const SCALES = ["N", "TT", "HO", "H0", "S", "O", "0", "1", "IIm", "G", "Z"];

const GROUPS = [
  {
    title: "Which trains?",
    sketch: "trains",
    fields: [
      { path: helix("scale"), label: "Scale", kind: "choice", options: [["", "not said"], ...SCALES.map((s) => [s, s])], suggest: allUsual },
      { path: helix("tracks"), label: "Tracks", kind: "choice", options: [["", "one"], ["2", "two, side by side"]], also: widthFollows },
      { path: helix("track-spacing"), label: "Between the two tracks", kind: "length", when: (j) => get(j, helix("tracks")) === "2", hint: "Centre to centre. Left empty: by published table.", suggest: suggestion("spacing", (known) => `usual: ${pick(known)}`) },
      {
        path: helix("trains.tallest"), label: "Tallest car", kind: "length", hint: "From the rail's top to its roof.",
        suggest: suggestion("tallest", (known) => `often ${pick(known)}`),
      },
    ],
  },
  {
    title: "How high, how wide?",
    sketch: "climb",
    fields: [
      { path: helix("climb"), label: "Height to climb", kind: "length", hint: "From the lower track to the upper one.", suggest: usualClimb },
      {
        path: "second", label: "And you know …", kind: "custom", build: secondKnown,
      },
      { path: helix("turns"), label: "Turns", kind: "text", when: (j) => second(j) === "turns", hint: "Such as 5 1/4." },
      { path: helix("rise-per-turn"), label: "Rise in one turn", kind: "length", when: (j) => second(j) === "rise-per-turn", suggest: suggestion("rise", (known) => `usual: ${pick(known)}`) },
      { path: helix("steepest-grade"), label: "Steepest grade, percent", kind: "text", when: (j) => second(j) === "steepest-grade", hint: "Two is easy, three is steep." },
      {
        path: helix("radius"), label: "Radius", kind: "length", hint: "To the middle of the roadbed.",
        suggest: suggestion("radius", (known) => `usual: ${pick(scaleUsual().from)} and up`),
        when: (j) => get(j, helix("inner-track")) === undefined,
      },
      { path: helix("inner-track"), label: "Radius of the inner track", kind: "length", when: (j) => get(j, helix("inner-track")) !== undefined },
      {
        path: helix("width"), label: "Roadbed width", kind: "length", hint: "Across, edge to edge.",
        when: (j) => get(j, helix("side-margin")) === undefined,
        suggest: () => {
          const known = scaleUsual();
          const pair = known && (get(job(), helix("tracks")) === "2" ? known.width2 : known.width);
          return pair ? { words: `usual: ${pick(pair)}`, take: pick(pair) } : null;
        },
      },
      { path: helix("side-margin"), label: "From outer tracks to the edges", kind: "length", when: (j) => get(j, helix("side-margin")) !== undefined },
    ],
    more: [
      { path: helix("direction"), label: "Climbs, seen from above", kind: "choice", options: [["", "counter-clockwise"], ["clockwise", "clockwise"]] },
      { path: helix("straight"), label: "Straights of an oval", kind: "length", hint: "Length of each. Left empty: a circle." },
      { path: helix("trains.opening"), label: "Opening to stand in", kind: "length", hint: "Least width you need inside." },
    ],
  },
  {
    title: "How does it come in and go out?",
    sketch: "ends",
    more: ["bottom", "top"].flatMap((end) => [
      { path: helix(end + ".lead-in"), label: `Straight at the ${end}`, kind: "length", hint: "Cut in one piece with the first curve." },
      { path: helix(end + ".vertical-curve"), label: `Vertical curve at the ${end}`, kind: "length", hint: "Length over which the grade changes." },
      { path: helix(end + ".climb-lead"), label: `It reaches outside at the ${end}`, kind: "length" },
    ]),
  },
  { title: "Which plywood?", sketch: "plywood", custom: "plywood" },
  {
    title: "How will you cut and join?",
    sketch: "cut",
    fields: [
      { path: "tool", label: "You cut with", kind: "custom", build: toolChoice },
      { path: "cutting.kerf", label: "Width of the cut", kind: "length", hint: "The saw's kerf or the bit's diameter." },
      { path: "cutting.margin", label: "Off the sheet's edge", kind: "length", hint: "Factory edges are rarely straight." },
      { path: helix("segments-per-turn"), label: "Pieces in one turn", kind: "custom", build: segmentChoice },
      { path: helix("joint"), label: "Joint", kind: "custom", build: jointChoice },
      { path: helix("joint.half-lap"), label: "Length of the lap", kind: "length", when: (j) => jointKind(j) === "half-lap", hint: "Left empty: as usual." },
    ],
    more: [
      { path: "cutting.extra", label: "Wood to leave between cuts", kind: "length" },
      { path: helix("heights.underlay"), label: "Cork or foam on the wood", kind: "length", hint: "Its thickness; 0 for none." },
      { path: helix("heights.ties"), label: "Ties", kind: "length", hint: "Their thickness." },
      { path: helix("heights.rail"), label: "Rail", kind: "length", hint: "Its height." },
    ],
  },
  {
    title: "What holds it up?",
    sketch: "supports",
    more: [
      { path: helix("supports.per-turn"), label: "Supports in one turn", kind: "text" },
      { path: helix("supports.foot-height"), label: "Wood above the base where the climb begins", kind: "length" },
      { path: "risers", label: "Made of", kind: "custom", build: riserChoice },
    ],
  },
  {
    title: "What is it called?",
    fields: [
      { path: "title", label: "Name of the job", kind: "text", hint: "Printed on every drawing." },
      { path: "invented", label: "The figures are made up", kind: "flag", hint: "Drawings then say “invented data”." },
      { path: "currency", label: "Money", kind: "text", hint: "Printed before prices." },
      {
        path: "search.effort", label: "Look for layouts", kind: "choice",
        options: [["quick", "quickly"], ["normal", "for a while"], ["thorough", "patiently"]], usual: "normal",
        hint: "The first answer comes at once all the same.",
      },
    ],
  },
];

/** A roadbed of the usual width for one track gets that for two, and the other way round. */
function widthFollows(tree) {
  const known = scaleUsual();
  const [one, two] = [known?.width, known?.width2];
  const now = get(tree, helix("width"));
  const same = (text) => text === now || text === `${now} ${tree.units}`;
  if (get(tree, helix("tracks")) === "2" && one?.some(same)) set(tree, helix("width"), pick(two));
  else if (get(tree, helix("tracks")) !== "2" && two?.some(same)) set(tree, helix("width"), pick(one));
  spaced(tree, known);
}

/** Where no table has the distance of two tracks, the usual one is written down. */
function spaced(tree, known) {
  const path = helix("track-spacing");
  if (get(tree, helix("tracks")) !== "2") set(tree, path, "");
  else if (known?.spacing && get(tree, path) === undefined) set(tree, path, pick(known.spacing));
}

/** A number such as 5 1/4; not a number if it is none. */
function numberIn(text) {
  const found = /^\s*(\d+(?:\.\d+)?)(?:[ -]+(\d+)\/(\d+))?\s*(?:in|mm)?\s*$/.exec(text ?? "");
  return found ? Number(found[1]) + (found[2] ? Number(found[2]) / Number(found[3]) : 0) : NaN;
}

/** What so many turns climb at the scale's usual rise: for him who knows his turns and not his height. */
function usualClimb() {
  const known = scaleUsual();
  const turns = second(job()) === "turns" ? numberIn(get(job(), helix("turns"))) : NaN;
  if (!known || !(turns > 0)) return null;
  const climb = Math.round(turns * numberIn(pick(known.rise)) * 4) / 4;
  const text = shownUnit() === "in" ? inches(climb) : `${Math.round(climb)} mm`;
  return { words: `usual in ${get(job(), helix("turns"))} turns: ${text}`, take: text };
}

/** Quarters of an inch as people write them. */
function inches(value) {
  const part = { 0.25: "1/4", 0.5: "1/2", 0.75: "3/4" }[value % 1];
  return `${[Math.floor(value) || (part ? "" : "0"), part].filter(Boolean).join(" ")} in`;
}

/** A new helix of the scale in usual sizes: what a stranger begins with. Height and plywood stay his. */
function allUsual() {
  const known = scaleUsual();
  const scale = get(job(), helix("scale"));
  if (!known || get(job(), helix("radius")) === pick(known.radius)) return null;
  return {
    words: `take all usual sizes of ${scale}`,
    act: () => alter((tree) => {
      const { climb, tracks, direction, joint } = tree.helix;
      const segments = tree.helix["segments-per-turn"] ?? "4";
      tree.helix = {
        scale, climb: climb ?? pick(known.rise), "rise-per-turn": pick(known.rise),
        radius: pick(known.radius), width: pick(tracks === "2" ? known.width2 : known.width),
        "segments-per-turn": segments, trains: { tallest: pick(known.tallest) },
        // The climb begins before the ring and ends beyond it, so that trains clear the straights.
        bottom: { "climb-lead": pick(known.lead) }, top: { "climb-lead": pick(known.lead) },
      };
      // Half-laps hang into no train's way.
      for (const [name, value] of Object.entries({ tracks, direction, joint: joint ?? "half-lap" })) set(tree, helix(name), value);
      spaced(tree, known);
      if (tree.invented) {
        // From here on it is his own job and not the one made up for a first look.
        delete tree.invented;
        delete tree.note;
        tree.title = `My helix in ${scale}`;
      }
    }),
  };
}

function second(tree) {
  if (get(tree, helix("rise-per-turn")) !== undefined) return "rise-per-turn";
  if (get(tree, helix("steepest-grade")) !== undefined) return "steepest-grade";
  return "turns";
}

function jointKind(tree) {
  const joint = get(tree, helix("joint"));
  return joint === undefined ? "" : typeof joint === "string" ? joint : Object.keys(joint)[0] ?? "";
}

function choose(id, options, value, onchange) {
  return h("select", { id, onchange }, options.map(([v, words]) => h("option", { value: v, selected: v === value }, words)));
}

function secondKnown(id) {
  const options = [["turns", "how many turns"], ["rise-per-turn", "the rise in a turn"], ["steepest-grade", "the steepest grade"]];
  return choose(id, options, second(job()), (event) => {
    const to = event.target.value;
    const guess = { turns: figures.words.turns, "rise-per-turn": figures.words.risePerTurn, "steepest-grade": figures.figures.grade?.toFixed(2) };
    alter((tree) => {
      for (const [name] of options) set(tree, helix(name), "");
      set(tree, helix(to), guess[to] ?? { turns: "4", "rise-per-turn": which("4 in", "100 mm"), "steepest-grade": "2.5" }[to]);
    });
  });
}

function toolChoice(id) {
  const kerf = get(job(), "cutting.kerf");
  const options = usual.tools.map((tool) => [pick(tool.kerf), tool.name]);
  const match = usual.tools.find((tool) => tool.kerf.some((text) => text === kerf || text.replace(/ (in|mm)$/, "") === kerf));
  return choose(id, [["", "another tool"], ...options], match ? pick(match.kerf) : "", (event) => {
    if (event.target.value) alter((tree) => set(tree, "cutting.kerf", event.target.value));
  });
}

function segmentChoice(id) {
  const names = { 2: "2, halves", 3: "3, thirds", 4: "4, quarters", 5: "5", 6: "6, sixths", 8: "8, eighths", 10: "10", 12: "12" };
  const value = get(job(), helix("segments-per-turn")) ?? "";
  const angle = get(job(), helix("segment-angle"));
  const options = Object.entries(names);
  if (value && !names[value]) options.push([value, value]);
  if (angle !== undefined) options.unshift(["", `pieces of ${angle}°`]);
  return choose(id, options, value, (event) => {
    if (event.target.value) {
      alter((tree) => {
        set(tree, helix("segment-angle"), "");
        set(tree, helix("segments-per-turn"), event.target.value);
      });
    }
  });
}

function jointChoice(id) {
  const options = [["", "as usual: a plate below"], ["plate", "a plate below"], ["half-lap", "halved over each other"], ["two-layers", "two thin layers, staggered"], ["side-plates", "plates at the sides"]];
  return choose(id, options, jointKind(job()), (event) => alter((tree) => set(tree, helix("joint"), event.target.value)));
}

function riserChoice(id) {
  const supports = get(job(), helix("supports")) ?? {};
  const value = supports.rods ? "rods" : supports.blocks ? "blocks" : "";
  const options = [["", "as usual"], ["blocks", "wood blocks"], ["rods", "threaded rods"]];
  return choose(id, options, value, (event) =>
    alter((tree) => {
      set(tree, helix("supports.blocks"), undefined);
      set(tree, helix("supports.rods"), undefined);
      if (event.target.value === "blocks") set(tree, helix("supports.blocks"), { width: which("3/4 in", "18 mm"), along: which("1 1/2 in", "40 mm") });
      if (event.target.value === "rods") set(tree, helix("supports.rods"), { thread: which("1/4-20", "M8") });
    }),
  );
}

/** The element for one field: its label, its input, its hint, and room for an error. */
export function fieldFor(spec, index = "") {
  const id = "f-" + spec.path.replace(/[^a-z0-9]+/gi, "-") + index;
  const described = `${id}-hint ${id}-error`;
  const hint = h("span", { class: "hint", id: id + "-hint" }, spec.hint ?? "");
  const error = h("span", { class: "error", id: id + "-error" });
  const unit = spec.kind === "length" ? h("span", { class: "unit", "aria-hidden": "true" }) : null;
  let input;
  let draw;
  if (spec.kind === "custom") {
    input = h("span", { class: "slot" });
    draw = () => {
      const made = spec.build(id);
      const before = input.firstElementChild;
      // Whoever has it open or stands on it with the keyboard must not lose it.
      if (before && before.innerHTML === made.innerHTML) before.value = made.value;
      else if (before && document.activeElement === before) {
        before.replaceChildren(...made.children);
        before.value = made.value;
      } else input.replaceChildren(made);
    };
  } else if (spec.kind === "choice") {
    input = choose(id, spec.options, "", () => alter((tree) => {
      set(tree, spec.path, input.value);
      spec.also?.(tree);
    }));
    draw = () => {
      const value = String(get(job(), spec.path) ?? spec.usual ?? "");
      if (value && ![...input.options].some((option) => option.value === value)) input.append(h("option", { value }, value));
      input.value = value;
    };
  } else if (spec.kind === "flag") {
    input = h("input", { id, type: "checkbox", onchange: () => alter((tree) => set(tree, spec.path, input.checked ? "true" : "")) });
    draw = () => (input.checked = get(job(), spec.path) === "true");
  } else {
    const isLength = spec.kind === "length";
    const typed = () => {
      if (input.value === input.dataset.shown) return;
      alter((tree) => set(tree, spec.path, isLength ? kept(input.value, tree) : input.value.trim()));
      draw();
    };
    input = h("input", {
      id, type: "text", inputmode: spec.inputmode, autocomplete: "off", spellcheck: "false", list: spec.list,
      onchange: typed,
      oninput: () => debounce(typed),
    });
    draw = () => {
      const text = String(get(job(), spec.path) ?? "");
      const value = isLength ? shown(text, job()) : text;
      // While he types, the text stays as he types it.
      if (document.activeElement === input && kept(input.value, job()) === text) {
        input.dataset.shown = input.value;
        if (unit) unit.textContent = unitOf(input.value);
        return;
      }
      if (document.activeElement !== input || input.dataset.shown === undefined) {
        input.value = value;
        input.dataset.shown = value;
      }
      input.placeholder = spec.placeholder ?? "";
      if (unit) unit.textContent = unitOf(input.value);
    };
  }
  const take = h("span", { class: "suggestion" });
  const row = h("div", { class: "field", data: { path: spec.path } }, h("label", { for: id }, spec.label), unit ? h("span", { class: "slot" }, input, unit) : input, hint, take, error);
  const field = { spec, row, error, id, described };
  field.draw = () => {
    row.hidden = spec.when ? !spec.when(job()) : false;
    draw();
    const control = byIdIn(row, id);
    control?.setAttribute("aria-describedby", described);
    const found = spec.suggest?.();
    take.replaceChildren();
    const text = get(job(), spec.path);
    const taken = found && (found.take === text || found.take === `${text} ${job().units}`);
    if (found && (found.act || !taken)) {
      const act = found.act ?? (() => {
        alter((tree) => set(tree, spec.path, found.take));
        redrawOne(field);
      });
      const name = found.act ? found.words : `${spec.label}: take ${found.take}`;
      take.append(h("button", { type: "button", class: "take", "aria-label": name, onclick: act }, found.words));
    } else if (found) take.append(found.words);
  };
  return field;
}

const byIdIn = (row, id) => row.querySelector("#" + CSS.escape(id));

function redrawOne(field) {
  const input = byIdIn(field.row, field.id);
  if (input) delete input.dataset.shown;
  field.draw();
}

let timer = 0;
function debounce(call) {
  clearTimeout(timer);
  timer = setTimeout(call, 350);
}

export function register(field) {
  fields.push(field);
  return field.row;
}

/** Puts the questions on the page, once. */
export function buildQuestions(known) {
  usual = known;
  const form = byId("questions");
  GROUPS.forEach((group, number) => {
    const inner = [];
    for (const spec of group.fields ?? []) inner.push(register(fieldFor(spec)));
    if (group.custom === "plywood") inner.push(h("div", { id: "plywood" }));
    if (group.more) {
      const rows = group.more.map((spec) => register(fieldFor(spec)));
      const summary = group.fields ? "More" : "Say more, or leave it as usual";
      inner.push(h("details", {}, h("summary", {}, summary), h("div", { class: "fields" }, rows)));
    }
    form.append(
      h("fieldset", {},
        h("legend", {}, h("span", { class: "ordinal", "aria-hidden": "true" }, String(number + 1)), group.title),
        group.sketch ? sketch(group.sketch) : null,
        h("div", { class: "fields" }, inner)),
    );
  });
  form.addEventListener("submit", (event) => event.preventDefault());
}

/** Shows what the job says now. */
export async function drawQuestions() {
  const tree = job();
  renderPlywood(usual, register, fieldFor, forget);
  byId("no-helix").hidden = tree.helix !== undefined;
  const texts = fields.filter((field) => field.spec.kind === "length").map((field) => get(tree, field.spec.path));
  fields.forEach((field) => field.draw());
  await learn(texts.filter((text) => typeof text === "string"), tree.units ?? "");
  fields.forEach((field) => field.draw());
}

/** Forgets the fields whose rows are no longer on the page. */
function forget() {
  for (let i = fields.length - 1; i >= 0; i--) {
    if (!fields[i].row.isConnected && fields[i].spec.path.startsWith("sheets[")) fields.splice(i, 1);
  }
}

/** What the last answer found out, for fields that are filled from it. */
export function learnFigures(row) {
  figures = row;
}

/** Shows each problem beside its field, the others above the questions. */
export function showProblems(problems) {
  for (const field of fields) {
    field.error.textContent = "";
    byIdIn(field.row, field.id)?.removeAttribute("aria-invalid");
  }
  const rest = [];
  for (const problem of problems) {
    const visible = fields.filter((field) => !field.row.hidden);
    const exact = visible.find((field) => field.spec.path === problem.path);
    // A problem of a whole block may name the field that mends it.
    const named = /`([a-z-]+):/.exec(problem.message)?.[1];
    const under = exact
      ?? visible.find((field) => problem.path.startsWith(field.spec.path + ".") || problem.path.startsWith(field.spec.path + "["))
      ?? visible.find((field) => named && field.spec.path === `${problem.path}.${named}`);
    if (!under) {
      rest.push(problem);
      continue;
    }
    under.error.textContent = (under.error.textContent ? under.error.textContent + " " : "") + problem.message;
    byIdIn(under.row, under.id)?.setAttribute("aria-invalid", "true");
    const folded = under.row.closest("details");
    if (folded) folded.open = true;
  }
  show(byId("problems"), rest.map((problem) => h("li", {}, problem.path ? h("b", {}, problem.path + ": ") : null, problem.message)));
  byId("problems").hidden = rest.length === 0;
}
