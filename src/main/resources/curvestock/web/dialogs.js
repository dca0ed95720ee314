// Dialogs: a question that lies over the page, keeps the keyboard, and gives it back where it was.

import { h, lived } from "./elements.js";
import { state, ui } from "./store.js";

/**
 * @param {{title: string, wide?: boolean, body: () => any, confirm: string, id: string, back: string, ready: () => boolean, done: () => void}} dialog
 * `back` is where the keyboard goes if nothing had it before
 */
export const open = (dialog) => ui({ dialog });

/** @returns {HTMLDialogElement | null} */
const node = () => document.querySelector("dialog");

/** Closes it; the browser gives the keyboard back. */
export const close = () => node()?.close();

export function dialog() {
  const asked = state().ui.dialog;
  if (!asked) return null;
  const submit = (/** @type {Event} */ event) => {
    event.preventDefault();
    if (!asked.ready()) return;
    close();
    asked.done();
  };
  return lived(() => {
    const shown = node();
    if (shown && !shown.open) shown.showModal();
  },
  h("dialog", { key: asked.id, class: asked.wide ? "wide" : "", "aria-labelledby": "dialog-title", onclose: () => closed(asked) },
    h("form", { method: "dialog", novalidate: true, onsubmit: submit },
      h("h2", { id: "dialog-title" }, asked.title),
      asked.body(),
      h("p", { class: "row" },
        h("button", { type: "submit", class: "main", id: asked.id, "aria-disabled": asked.ready() ? null : "true" }, asked.confirm),
        h("button", { type: "button", onclick: close }, "Cancel")))));
}

/**
 * The browser tells of it a little later: another may have been opened by then, and stays.
 * @param {{back: string}} asked
 */
function closed(asked) {
  if (state().ui.dialog !== asked || node()?.open) return;
  ui({ dialog: null });
  requestAnimationFrame(() => {
    if (document.activeElement === document.body) document.getElementById(asked.back)?.focus();
  });
}

/**
 * A field of a dialog, checked while it is typed.
 * @param {{id: string, label: string, value: string, wrong: string, unit?: string, write: (text: string) => void}} field
 */
export function field({ id, label, value, wrong, unit, write }) {
  return h("div", { class: "field", key: id },
    h("label", { for: id }, label),
    h("span", { class: "slot" },
      h("input", { id, value, autocomplete: "off", "aria-describedby": id + "-under", "aria-invalid": wrong ? "true" : null, oninput: (/** @type {any} */ event) => write(event.target.value) }),
      unit ? h("span", { class: "unit", "aria-hidden": "true" }, unit) : null),
    h("p", { class: wrong ? "under error" : "under", id: id + "-under" }, wrong));
}
