// Describes what the page shows; Preact patches the page by key, so that focus, scroll and selection
// survive. Text is always set as text, never as markup.

import { Component, h as element, render } from "./preact.js";

/** @typedef {any} View a piece of the page, as described */

/**
 * An element: `h("p", {class: "hint"}, "words")`.
 * @param {any} tag
 * @param {Record<string, any> | null} [attributes]
 * @param {...any} children
 * @returns {View}
 */
export const h = (tag, attributes, ...children) => element(tag, attributes ?? null, ...children);

/** Draws anew only when one of the values it depends on is another. */
class Kept extends Component {
  /** @param {{deps: unknown[]}} next */
  shouldComponentUpdate(next) {
    return next.deps.length !== this.props.deps.length || next.deps.some((each, i) => each !== this.props.deps[i]);
  }
  render() {
    return this.props.draw();
  }
}

/**
 * A part that is costly to draw.
 * @param {string} key
 * @param {unknown[]} deps
 * @param {() => View} draw
 * @returns {View}
 */
export const kept = (key, deps, draw) => element(Kept, { key, deps, draw });

/** Does something with the node when it comes into the page, and when it leaves. */
class Lived extends Component {
  componentDidMount() {
    this.leave = this.props.came();
  }
  componentWillUnmount() {
    this.leave?.();
  }
  render() {
    return this.props.children;
  }
}

/**
 * @param {() => (void | (() => void))} came called once its children are in the page; what it gives is called when they leave
 * @param {View} child
 * @returns {View}
 */
export const lived = (came, child) => element(Lived, { came, key: child.key }, child);

/**
 * @param {View} view
 * @param {Element} into
 */
export const draw = (view, into) => render(view, into);

/** @param {string} id */
export const byId = (id) => /** @type {any} */ (document.getElementById(id));

/**
 * @param {number} count
 * @param {string} one
 * @param {string} [more]
 */
export const counted = (count, one, more = one + "s") => `${count} ${count === 1 ? one : more}`;
