// Builds elements of the page. Text is always set as text, never as markup.

const SVG = "http://www.w3.org/2000/svg";

function fill(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes ?? {})) {
    if (value === undefined || value === null || value === false) continue;
    if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    else if (name === "data") Object.assign(node.dataset, value);
    else node.setAttribute(name, value === true ? "" : String(value));
  }
  node.append(...children.flat().filter((child) => child !== null && child !== undefined && child !== false));
  return node;
}

/** An element of HTML: `h("p", {class: "hint"}, "words")`. Attributes that begin with `on` are listeners. */
export function h(tag, attributes, ...children) {
  return fill(document.createElement(tag), attributes, children);
}

/** The same of SVG. */
export function s(tag, attributes, ...children) {
  return fill(document.createElementNS(SVG, tag), attributes, children);
}

/** Puts these in the place of what the element held; nothing stands for what is missing. */
export function show(node, ...children) {
  node.replaceChildren(...children.flat().filter((child) => child !== null && child !== undefined && child !== false && child !== ""));
}

export const byId = (id) => document.getElementById(id);

/** Says something to people who hear the page. */
export function say(words) {
  byId("spoken").textContent = words;
}

export function number(value, places = 2) {
  return Number(value.toFixed(places));
}
