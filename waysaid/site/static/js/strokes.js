/** What was drawn by hand, over the sheet: lines in tenths of a percent of the board's height. */

import { draw } from "./dom.js";

/** Return a path through the points of one stroke: x, y, x, y ... */
export function strokePath(/** @type {number[]} */ points) {
  const pairs = [];
  for (let index = 0; index + 1 < points.length; index += 2) {
    pairs.push(`${points[index]} ${points[index + 1]}`);
  }
  const dot = pairs.length === 1 ? `l0.1 0` : "";
  return draw("path", { d: `M${pairs.join("L")}${dot}` });
}

/** @param {{id: string, strokes: number[][]}[]} drawn */
export function strokeGroups(drawn) {
  return drawn.map((one) => draw("g", { "data-id": one.id }, one.strokes.map(strokePath)));
}

/** Return the layer that lies over a sheet of this size in pixels; `u` is one unit in pixels. */
export function strokeLayer(/** @type {DOMRect} */ sheet, /** @type {number} */ u) {
  return draw("svg", {
    class: "strokes",
    viewBox: `0 0 ${(sheet.width / u) * 10} ${(sheet.height / u) * 10}`,
    "aria-hidden": "true",
  });
}
