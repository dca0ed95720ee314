// Values in a tree of texts by their paths, such as `sheets[2].price`; lists count from 1, as in the
// program's messages.

/** @typedef {{[key: string]: any}} Tree */

/**
 * @param {string} path
 * @returns {string[]}
 */
export function keys(path) {
  return path
    .replace(/\[(\d+)\]/g, (_, n) => "." + (Number(n) - 1))
    .split(".")
    .filter((key) => key !== "");
}

/**
 * @param {Tree} tree
 * @param {string} path
 * @returns {any}
 */
export function get(tree, path) {
  /** @type {any} */
  let node = tree;
  for (const key of keys(path)) {
    if (node === null || typeof node !== "object") return undefined;
    node = node[key];
  }
  return node;
}

/**
 * Sets the value at the path; an empty text or undefined takes the key away, and blocks left empty too.
 * @param {Tree} tree
 * @param {string} path
 * @param {any} value
 */
export function set(tree, path, value) {
  const steps = keys(path);
  /** @type {[any, string][]} */
  const trail = [];
  /** @type {any} */
  let node = tree;
  steps.slice(0, -1).forEach((key, i) => {
    trail.push([node, key]);
    if (typeof node[key] !== "object" || node[key] === null) {
      if (value === undefined || value === "") return;
      node[key] = /^\d+$/.test(steps[i + 1]) ? [] : {};
    }
    node = node[key] ?? {};
  });
  const last = steps[steps.length - 1];
  if (value !== undefined && value !== "") {
    node[last] = value;
    return;
  }
  delete node[last];
  for (const [parent, key] of trail.reverse()) {
    const child = parent[key];
    const empty = child && !Array.isArray(child) && Object.keys(child).length === 0;
    if (!empty || Array.isArray(parent) || parent === tree) break;
    delete parent[key];
  }
}

/**
 * A short text that is another for another tree, with overwhelming likelihood: 53 bits.
 * @param {unknown} tree
 * @returns {string}
 */
export function fingerprint(tree) {
  const text = JSON.stringify(tree);
  let a = 0xdeadbeef;
  let b = 0x41c6ce57;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 2654435761);
    b = Math.imul(b ^ code, 1597334677);
  }
  a = Math.imul(a ^ (a >>> 16), 2246822507) ^ Math.imul(b ^ (b >>> 13), 3266489909);
  b = Math.imul(b ^ (b >>> 16), 2246822507) ^ Math.imul(a ^ (a >>> 13), 3266489909);
  return (4294967296 * (2097151 & b) + (a >>> 0)).toString(36);
}
