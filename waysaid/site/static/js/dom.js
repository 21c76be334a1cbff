/** Build elements without markup strings, so that nothing a person typed can become markup. */

import { unlessPressed } from "./press.js";

const SVG = "http://www.w3.org/2000/svg";

/**
 * @typedef {Node | string | number | null | undefined | false} Child
 * @typedef {string | number | boolean | null | undefined | ((event: any) => void)} Value
 * @typedef {Record<string, Value>} Attributes
 */

/** @param {Element} node @param {Attributes} attributes */
function dress(node, attributes) {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") node.addEventListener(name, value);
    else if (value === true) node.setAttribute(name, "");
    else if (value !== false && value !== null && value !== undefined) {
      node.setAttribute(name, String(value));
    }
  }
}

/** @param {Element} node @param {Child[]} children */
function append(node, children) {
  for (const child of children.flat(Infinity)) {
    if (child !== null && child !== undefined && child !== false) {
      node.append(child instanceof Node ? child : String(child));
    }
  }
}

/**
 * Return a new element. A function among the attributes listens to the event of that name.
 * @param {string} tag @param {Attributes} [attributes] @param {...(Child | Child[])} children
 * @returns {HTMLElement}
 */
export function make(tag, attributes = {}, ...children) {
  const node = document.createElement(tag);
  dress(node, attributes);
  append(node, children);
  return node;
}

/**
 * Return a new SVG element.
 * @param {string} tag @param {Attributes} [attributes] @param {...(Child | Child[])} children
 * @returns {SVGElement}
 */
export function draw(tag, attributes = {}, ...children) {
  const node = document.createElementNS(SVG, tag);
  dress(node, attributes);
  append(node, children);
  return node;
}

/**
 * Put children in place of what a node holds; whoever has the focus keeps it (by `data-key`), and
 * the node stays scrolled as it was: nothing is laid out in between, and nothing asks for it here.
 * @param {Element} node @param {...(Child | Child[])} children
 */
export function fill(node, ...children) {
  const active = document.activeElement;
  const key = node.contains(active) ? active?.getAttribute("data-key") : null;
  node.replaceChildren();
  append(node, children);
  if (key) {
    const again = node.querySelector(`[data-key="${CSS.escape(key)}"]`);
    if (again instanceof HTMLElement) again.focus({ preventScroll: true });
  }
}

/**
 * Let a node hold these and nothing else, in order; those that are in their place are not touched.
 * @param {Element} node @param {Node[]} children
 */
export function keep(node, children) {
  const wanted = new Set(children);
  for (const child of [...node.childNodes]) if (!wanted.has(child)) child.remove();
  children.forEach((child, at) => {
    const there = node.childNodes[at] ?? null;
    if (there !== child) node.insertBefore(child, there);
  });
}

/**
 * Return a function that fills `node` only when what it is given differs from the last time, and
 * never under a finger.
 * @param {Element} node @param {(value: any) => (Child | Child[])} build
 */
export function panel(node, build) {
  let last = "";
  return (/** @type {any} */ value) => {
    const now = JSON.stringify(value);
    if (now === last) return;
    last = now;
    unlessPressed(node, () => fill(node, build(value)));
  };
}

/** Return the words the page carries, by key; a missing key is shown as itself. */
export function words() {
  const text = document.getElementById("words")?.textContent;
  const known = text ? JSON.parse(text) : {};
  return new Proxy(known, { get: (all, key) => all[key] ?? String(key) });
}

/**
 * Fill the `{name}` places of a sentence.
 * @param {string} sentence @param {Record<string, string | number>} values
 */
export function put(sentence, values) {
  return sentence.replace(/\{(\w+)\}/g, (whole, name) => String(values[name] ?? whole));
}

/** Return a random id; works where the page is not served safely, too. */
export function randomId() {
  const bytes = crypto.getRandomValues(new Uint8Array(9));
  return Array.from(bytes, (byte) => byte.toString(36).padStart(2, "0")).join("");
}

/** Take away the message that the page has not started. */
export function started() {
  document.getElementById("not-started")?.remove();
}
