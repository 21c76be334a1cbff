/** Fractions as a class writes them: one number over another. */

import { make } from "./dom.js";

const FRACTION = /(?<![\d/])(\d+)\/(\d+)(?![\d/])/gu;

/** @param {string} top @param {string} bottom */
function stacked(top, bottom) {
  return make(
    "span",
    { class: "fraction" },
    make("span", { class: "top" }, top),
    make("span", { class: "bottom" }, bottom),
  );
}

/**
 * Return a text with each fraction in it stacked; a mixed number's whole stands close to its part.
 * @param {string} text
 * @returns {(string | HTMLElement)[]}
 */
export function withFractions(text) {
  const parts = /** @type {(string | HTMLElement)[]} */ ([]);
  let place = 0;
  for (const found of text.matchAll(FRACTION)) {
    const before = text.slice(place, found.index);
    parts.push(/\d[ \u00a0]$/u.test(before) ? before.slice(0, -1) : before);
    parts.push(stacked(found[1], found[2]));
    place = found.index + found[0].length;
  }
  parts.push(text.slice(place));
  return parts.filter((part) => part !== "");
}
