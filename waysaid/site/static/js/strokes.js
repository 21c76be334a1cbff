/** What was drawn by hand, over the sheet, each group of strokes where its ground lies. */

import { draw } from "./dom.js";
import { placeOf } from "./ground.js";

/**
 * @typedef {{id: string, on: import("./ground.js").Ground["on"], way: string | null,
 *   strokes: number[][]}} Drawn
 */

/** Return the line through the points of one stroke: x, y, x, y ... */
export function lineThrough(/** @type {number[]} */ points) {
  const pairs = [];
  for (let index = 0; index + 1 < points.length; index += 2) {
    pairs.push(`${points[index]} ${points[index + 1]}`);
  }
  return `M${pairs.join("L")}${pairs.length === 1 ? "l0.1 0" : ""}`;
}

/** Return a group that lies at a place of the sheet. */
export function groupAt(/** @type {import("./ground.js").Place} */ place, /** @type {string} */ id) {
  return draw("g", {
    "data-id": id,
    transform: `translate(${place.x} ${place.y}) scale(${place.wide} ${place.scale})`,
  });
}

/**
 * Return the groups whose ground is to be seen.
 * @param {HTMLElement} sheet @param {Drawn[]} drawn
 */
export function strokeGroups(sheet, drawn) {
  return drawn.flatMap((one) => {
    const place = placeOf(sheet, one);
    if (!place) return [];
    const group = groupAt(place, one.id);
    group.append(...one.strokes.map((points) => draw("path", { d: lineThrough(points) })));
    return [group];
  });
}

/** Return the layer that lies over the sheet, one unit a pixel. */
export function strokeLayer() {
  return draw("svg", { class: "strokes", "aria-hidden": "true" });
}
