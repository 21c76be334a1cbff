/**
 * What a hand draws on: a way's tile, the problem, the string, or the bare sheet. A stroke is kept
 * in its ground's own measure, so that it moves and grows with what it was drawn on.
 */

import { unit } from "./fit.js";

/**
 * @typedef {{on: "sheet" | "problem" | "string", way: string | null}} Ground
 * @typedef {{x: number, y: number, wide: number, scale: number}} Place where a ground's zero lies on
 *   the sheet and how many pixels one of its units takes, across and down
 */

/** The ground that each view has besides its ways. @type {Record<string, Ground["on"]>} */
const GROUNDS = { think: "problem", answers: "problem", ways: "sheet", connect: "string" };

/** @param {string} view @returns {Ground["on"] | null} null where nothing is drawn by hand */
export function groundOf(view) {
  return GROUNDS[view] ?? null;
}

/** @param {HTMLElement} sheet @param {string} way @returns {HTMLElement | null} */
function tileOf(sheet, way) {
  return sheet.querySelector(`.ways:not(.bench) .way[data-key="${CSS.escape(way)}"]`);
}

/**
 * Return where a ground lies now; null where it is not to be seen, as a way that is folded.
 * @param {HTMLElement} sheet @param {Ground} ground @returns {Place | null}
 */
export function placeOf(sheet, { on, way }) {
  const whole = sheet.getBoundingClientRect();
  const at = (/** @type {Element | null} */ node, /** @type {number} */ scale, middle = 0) => {
    if (!node) return null;
    const box = node.getBoundingClientRect();
    return {
      x: box.left - whole.left + middle * box.width,
      y: box.top - whole.top + middle * box.height,
      wide: scale,
      scale,
    };
  };
  if (way) {
    const tile = tileOf(sheet, way);
    const scene = tile?.querySelector(".scene");
    const place = at(scene ?? tile, unit() / 10);
    // A drawing is as wide as its tile, whatever the screen; its height is always the same.
    return place && scene ? { ...place, wide: scene.getBoundingClientRect().width / 1000 } : place;
  }
  if (on === "problem") {
    const problem = sheet.querySelector("h1.problem");
    return problem && at(problem, parseFloat(getComputedStyle(problem).fontSize) / 1000, 0.5);
  }
  if (on === "string") {
    const scene = sheet.querySelector(".string .scene");
    if (!(scene instanceof SVGSVGElement)) return at(sheet, unit() / 10);
    return at(scene, scene.getBoundingClientRect().width / scene.viewBox.baseVal.width);
  }
  return { x: 0, y: 0, wide: unit() / 10, scale: unit() / 10 };
}

/**
 * Return what lies under a point of the screen.
 * @param {HTMLElement} sheet @param {string} view @param {number} x @param {number} y
 * @returns {Ground}
 */
export function groundUnder(sheet, view, x, y) {
  for (const tile of sheet.querySelectorAll(".ways:not(.bench) .way")) {
    const box = tile.getBoundingClientRect();
    if (x >= box.left && x <= box.right && y >= box.top && y <= box.bottom) {
      return { on: "sheet", way: tile.getAttribute("data-key") };
    }
  }
  return { on: groundOf(view) ?? "sheet", way: null };
}
