/** One way on the board: a name tag and what the child asked for. Every way gets the same look. */

import { make } from "./dom.js";
import { unit } from "./fit.js";
import { paint, smallest } from "./scene.js";

/** Labels in a scene are never smaller than this, in tenths. */
const LEAST_LABEL = 60;
/** How far, in units, the box of a line's letters may reach below its place. */
const SLACK = 2;

/** @param {string} name @param {any} words */
export function nameTag(name, words) {
  return make(
    "span",
    { class: name ? "tag" : "tag blank" },
    name || make("span", { class: "unseen" }, words.no_name),
  );
}

/** @param {any} tile @param {any} words */
function tags(tile, words) {
  const note = { adds: words.adds_to, changes: words.changes_way }[tile.relation];
  return make(
    "div",
    { class: "tags" },
    nameTag(tile.name, words),
    tile.also.map((/** @type {string} */ name) => nameTag(name, words)),
    note && make("span", { class: "note" }, note),
    tile.relation === "adds" && tile.to_name && nameTag(tile.to_name, words),
  );
}

/** @param {any} tile @param {any} words */
function content(tile, words) {
  if (tile.scene && tile.picture !== "equations" && tile.picture !== "words") {
    return paint(tile.scene);
  }
  if (tile.lines.length && tile.picture !== "words") {
    return make(
      "ol",
      { class: "lines" },
      tile.lines.map((/** @type {string} */ line) => make("li", {}, line)),
    );
  }
  const said = tile.words || tile.lines.join(", ");
  return make("blockquote", { class: "said" }, `${words.open_quote}${said}${words.close_quote}`);
}

/** Return a way's tile, with the fewest slots; whether it fits in them is not yet seen. */
export function tileNode(/** @type {any} */ tile, /** @type {any} */ words) {
  return make(
    "article",
    { class: "way", "data-key": tile.id, "data-span": 1 },
    tags(tile, words),
    make("div", { class: "content" }, content(tile, words)),
  );
}

/** Tell whether nothing of a tile is cut off where it stands. */
export function fitsInside(/** @type {HTMLElement} */ node) {
  const content = /** @type {HTMLElement} */ (node.querySelector(".content"));
  const tags = /** @type {HTMLElement} */ (node.querySelector(".tags"));
  // The font's own box is higher than its line; what it reaches past the last line is no loss.
  const below = content.scrollHeight - content.clientHeight;
  return (
    below <= SLACK * unit() &&
    content.scrollWidth <= content.clientWidth + 1 &&
    tags.scrollWidth <= tags.clientWidth + 1
  );
}

/** @param {HTMLElement} node @param {any} tile */
function shrink(node, tile) {
  const content = /** @type {HTMLElement} */ (node.querySelector(".content"));
  const scene = content.querySelector(".scene");
  if (scene instanceof SVGElement) {
    const wanted = Math.min(
      content.clientWidth / scene.clientWidth,
      content.clientHeight / scene.clientHeight,
    );
    const least = LEAST_LABEL / smallest(tile.scene);
    scene.style.setProperty("--scale", String(Math.min(1, Math.max(wanted, least))));
  }
  node.classList.add("scrolls");
}

/**
 * Find how many slots a tile takes, by trying: the fewest in which nothing is cut off.
 * @param {HTMLElement} node @param {any} tile @param {HTMLElement} bench as wide as the sheet
 * @returns {1 | 2 | 4}
 */
export function sizeTile(node, tile, bench) {
  bench.replaceChildren(node);
  for (const span of /** @type {(1 | 2 | 4)[]} */ ([1, 2, 4])) {
    node.dataset.span = String(span);
    if (fitsInside(node)) return span;
  }
  shrink(node, tile);
  return 4;
}
