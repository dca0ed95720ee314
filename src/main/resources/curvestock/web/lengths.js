// Lengths as the user typed them, shown in the unit that he reads. The typed text itself is never
// converted: switching there and back gives the very same text.

import { lengths } from "./server.js";
import { shownUnit } from "./state.js";

const known = new Map();
const INCHES = /(in|inch|inches|ft|feet|foot|["'″′])\.?\s*$/i;
const METRIC = /(mm|cm|m)\.?\s*$/i;
const BARE = /^[\s\d.,/½¼¾⅛⅜⅝⅞xX×-]+$/;

/** Whether the text is written in the unit, as the file reads it. */
function isIn(text, unit, units) {
  if (BARE.test(text)) return unit === "in" ? units === "in" || units === "ft" : !(units === "in" || units === "ft");
  return unit === "in" ? INCHES.test(text) : METRIC.test(text);
}

/** Asks for the other unit of all texts at once; afterwards `shown` knows them. */
export async function learn(texts, units) {
  const fresh = [...new Set(texts)].filter((text) => text && !known.has(units + "|" + text));
  for (let i = 0; i < fresh.length; i += 300) {
    const part = fresh.slice(i, i + 300);
    const answer = await lengths(units ?? "", part);
    answer.lengths.forEach((length, k) => known.set(units + "|" + part[k], length));
  }
}

/** What the field shows: the text as typed if it is in the unit shown, else its value in that unit. */
export function shown(text, tree) {
  if (!text) return "";
  const unit = shownUnit(tree);
  const units = tree.units ?? "";
  const bare = BARE.test(text);
  if (isIn(text, unit, units)) return bare && units !== unit ? text + " " + units : text;
  const length = known.get(units + "|" + text);
  return (unit === "in" ? length?.inch : length?.metric) ?? text;
}

/** What the job keeps of a text typed now: a bare number gets the unit shown if the file's is another. */
export function kept(text, tree) {
  const typed = text.trim();
  const unit = shownUnit(tree);
  return typed !== "" && BARE.test(typed) && tree.units !== unit ? typed + " " + unit : typed;
}

/** The unit of a number that stands without one; nothing for a text that says its unit itself. */
export const unitOf = (text) => (text === "" || BARE.test(text) ? shownUnit() : "");

/** Millimetres as a text in the unit shown, for places that a pointer found. */
export function fromMillimetres(value, tree) {
  return shownUnit(tree) === "in" ? Math.round((value / 25.4) * 16) / 16 + " in" : Math.round(value) + " mm";
}
