/** Paint a scene: shapes in tenths of a percent of the screen's height, as SVG elements. */

import { draw } from "./dom.js";

/** @typedef {{width: number, height: number, title: string, desc: string, shapes: any[]}} Scene */

let count = 0;

/** @type {Record<string, (shape: any) => SVGElement>} */
const PAINT = {
  line: (s) => draw("line", { x1: s.x1, y1: s.y1, x2: s.x2, y2: s.y2, "stroke-width": s.stroke }),
  path: (s) => draw("path", { d: s.d, "stroke-width": s.stroke, fill: "none" }),
  dot: (s) => draw("circle", { cx: s.x, cy: s.y, r: s.r, fill: "currentColor", stroke: "none" }),
  label: (s) =>
    draw(
      "text",
      {
        x: s.x,
        y: s.y,
        "font-size": s.size,
        "text-anchor": s.anchor,
        fill: "currentColor",
        stroke: "none",
      },
      s.text,
    ),
  box: (s) =>
    draw("rect", {
      x: s.x,
      y: s.y,
      width: s.width,
      height: s.height,
      rx: s.radius,
      fill: s.filled ? "currentColor" : "none",
      "fill-opacity": s.filled ? 0.14 : null,
      "stroke-width": s.stroke ?? 5,
    }),
};

/**
 * Return the scene as a picture with its title and description.
 * @param {Scene} scene @param {string} [title] what to call it instead of its own title
 */
export function paint(scene, title) {
  count += 1;
  const named = `scene-${count}`;
  const svg = draw(
    "svg",
    {
      class: "scene",
      viewBox: `0 0 ${scene.width} ${scene.height}`,
      role: "img",
      "aria-labelledby": `${named}-title ${named}-desc`,
      stroke: "currentColor",
      "stroke-linecap": "round",
      "stroke-linejoin": "round",
    },
    draw("title", { id: `${named}-title` }, title || scene.title),
    draw("desc", { id: `${named}-desc` }, scene.desc),
    scene.shapes.map((shape) => PAINT[shape.t]?.(shape)),
  );
  svg.style.setProperty("--scene-width", String(scene.width / 10));
  svg.style.setProperty("--scene-height", String(scene.height / 10));
  return svg;
}

/** Return the size of the smallest label, in tenths; 80 for a scene without one. */
export function smallest(/** @type {Scene} */ scene) {
  const sizes = scene.shapes.filter((shape) => shape.t === "label").map((shape) => shape.size);
  return sizes.length ? Math.min(...sizes) : 80;
}
