/** Make text as large as its place allows, in units of the board (`--u`, 1 % of its height). */

/** Return one unit in pixels, as board.css sets it. */
export function unit() {
  return Math.max(2.7, Math.min(innerHeight / 100, (innerWidth * 0.75) / 100));
}

/** Lay a line of text out at the size from which it is fitted; the same again costs nothing. */
export function loosen(/** @type {HTMLElement} */ node) {
  const { style } = node;
  if (style.getPropertyValue("--size") !== "10") style.setProperty("--size", "10");
  style.setProperty("white-space", "nowrap");
}

/**
 * Set the size of a line of text so that it fills the width and height, within bounds.
 * @param {HTMLElement} node shown, on one line
 * @param {{width: number, height: number, least: number, most: number}} place width and height in
 *   pixels, `least` and `most` in units; at `least` the text may wrap
 */
export function fitText(node, { width, height, least, most }) {
  loosen(node);
  const box = node.getBoundingClientRect();
  if (!box.width || !box.height) return;
  const size = Math.min(most, (width / box.width) * 10, (height / box.height) * 10);
  if (size < least) node.style.setProperty("white-space", "normal");
  node.style.setProperty("--size", String(Math.max(least, Math.floor(size * 10) / 10)));
}

/** How close the words of a line may stand before it is made smaller, in its own letters' size. */
const CLOSEST = "-0.16em";
/** How small a line may become, in units, that would not fit into its one row otherwise. */
const SMALLEST = 9;

/**
 * Fit a line that has one row and no more: its words stand closer before it is made smaller.
 * @param {HTMLElement} node @param {Parameters<typeof fitText>[1]} place
 */
export function fitRow(node, place) {
  const wraps = () => node.style.getPropertyValue("white-space") === "normal";
  node.style.removeProperty("word-spacing");
  fitText(node, place);
  if (!wraps()) return;
  node.style.setProperty("word-spacing", CLOSEST);
  fitText(node, place);
  if (wraps()) fitText(node, { ...place, least: SMALLEST });
}

/** Tell whether what a node holds does not fit in it. */
export function overflows(/** @type {HTMLElement} */ node) {
  return node.scrollWidth > node.clientWidth + 1 || node.scrollHeight > node.clientHeight + 1;
}

/** Tell whether the screen is so narrow that all stands one under another (see board.css). */
export function stacked() {
  return matchMedia("(max-aspect-ratio: 119/100), (max-width: 640px)").matches;
}
