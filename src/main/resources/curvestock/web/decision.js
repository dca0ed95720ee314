// The decision: a card for each segment size, and the sentence under them.

import { counted, h, kept } from "./elements.js";
import { fresh } from "./asking.js";
import { idOf, edit, readable } from "./questions.js";
import { get, set } from "./paths.js";
import { alter, settle, state, ui } from "./store.js";

/** Cuts the helix in another size: its plan is there already, or comes next. @param {number} degrees */
function choose(degrees) {
  const parts = Math.round(360 / degrees);
  const whole = Math.abs(360 / degrees - parts) < 1e-6;
  alter((tree) => {
    set(tree, "helix.lower-segments", undefined);
    set(tree, "helix.segments-per-turn", whole ? String(parts) : undefined);
    set(tree, "helix.segment-angle", whole ? undefined : String(degrees));
  });
}

/** How a card's figures are known. @param {any} card */
function standing(card) {
  if (card.state === "impossible") return "cannot be cut";
  return card.state === "pattern" ? "quick count" : "planned";
}

/** Sectors stand on their side in the drawing; here they lie like a bridge. @param {any} card */
function turned(card) {
  if (!card.outline) return h("svg", { class: "segment", viewBox: "0 0 10 10", "aria-hidden": "true" });
  const [x, y, wide, high] = card.box;
  const side = Math.max(high, wide * 2.2) * 1.04;
  return h("svg", { class: "segment", viewBox: `${-side / 2} ${-side / 4.4} ${side} ${side / 2.2}`, "aria-hidden": "true" },
    h("path", { transform: `rotate(-90) translate(${-(x + wide / 2)} ${-(y + high / 2)})`, d: card.outline, "fill-rule": "evenodd" }));
}

/** @param {any} card @param {boolean} former */
function drawn(card, former) {
  const about = card.state === "pattern" ? "≈ " : "";
  const possible = card.state !== "impossible";
  const [name, angle] = card.name.split(/ (?=\()/);
  const known = card.sheets > 0;
  return h("label", { class: ["card", card.state, card.best ? "best" : "", card.own ? "own" : "", former ? "former" : ""].join(" "), key: card.degrees + (card.mixed ? "m" : ""), "data-degrees": String(Math.round(card.degrees)) },
    h("input", {
      type: "radio", name: "size", checked: card.own, disabled: card.mixed,
      "aria-label": possible && known
        ? `${card.name}: ${card.state === "pattern" ? "about " : ""}${counted(card.sheets, "sheet")}, ${card.money}, ${counted(card.joints, "joint")}${card.best ? ", best" : ""}`
        : `${card.name}: ${standing(card)}`,
      onchange: () => choose(card.degrees),
    }),
    h("span", { class: "name" }, name, " ", h("small", null, angle ?? ""), card.best ? h("b", { class: "mark" }, "best") : null),
    turned(card),
    possible
      ? [
        h("b", { class: "count", key: "s" }, known ? about + counted(card.sheets, "sheet") : "…"),
        h("span", { class: "money", key: "m" }, known ? about + card.money : "not planned yet"),
        h("span", { class: "joints", key: "j" }, counted(card.joints, "joint")),
        h("span", { class: "largest", key: "l", title: "Largest piece" }, card.largest),
      ]
      : h("span", { class: "why", title: readable(card.why) }, "Cannot be cut: " + readable(card.why)));
}

function jointField() {
  const { doc, answer, ui: { draft } } = state();
  const decision = answer.decision;
  const said = get(doc.job, "rates.parts-per-joint") ?? "";
  const timed = get(doc.job, "rates.minutes-per-joint") !== undefined;
  const path = "rates.parts-per-joint";
  return h("div", { class: "joint", "data-path": path },
    h("label", { for: idOf(path) }, "A joint costs you"),
    h("input", {
      id: idOf(path), inputmode: "decimal", autocomplete: "off", value: draft?.path === path ? draft.text : said, placeholder: decision && !timed ? decision.joint.replace(/^[^\d]+/, "") : "",
      "aria-describedby": idOf(path) + "-under",
      oninput: (/** @type {any} */ event) => {
        ui({ draft: { path, text: event.target.value } });
        const value = event.target.value.trim();
        if (value === "" || /^\d+([.,]\d{1,2})?$/.test(value)) edit((tree) => set(tree, path, value), path);
      },
      onblur: () => {
        settle();
        if (state().ui.draft?.path === path) ui({ draft: null });
      },
    }),
    h("span", { class: "under", id: idOf(path) + "-under" }, decision?.jointAssumed ? "Empty: 1/20 of a sheet." : "Time and parts."));
}

/** The cards and their sentence. */
export function decision() {
  const { answer: { decision: found, problems, refusal } } = state();
  const former = !fresh(found);
  const cards = found?.sizes ?? [];
  const [first, ...changes] = found?.sentences ?? [];
  const why = problems.length ? "Fix the marked fields; showing your last result." : first ?? "";
  return h("section", { class: "decision", "aria-labelledby": "decision-title", "data-job": found?.fingerprint, "data-former": former ? "yes" : "no" },
    h("h2", { id: "decision-title", class: "unseen" }, "Which segment size?"),
    cards.length
      ? h("fieldset", { class: "cards" + (cards.length > 6 ? " seven" : ""), id: "cards", role: "radiogroup", "aria-labelledby": "decision-title" }, kept("cards", [cards, former], () => cards.map((/** @type {any} */ card) => drawn(card, former))))
      : h("p", { class: "cards none" }, state().doc.job.helix === undefined ? "No helix, so no segment sizes to compare." : refusal.length ? "" : "Quick count …"),
    cards.length ? h("div", { class: "reason" },
      h("p", { id: "why", class: former ? "former" : "" }, h("b", null, why), " ", problems.length ? "" : changes.join(" ")),
      jointField()) : null);
}
