/** The numbers of the string on the board as buttons, for the screen that has no other desk. */

import { make } from "./dom.js";
import { joint, parts } from "./marks.js";

/**
 * Return the parts of the drawn string that can be chosen, in order; none where the drawing and
 * the rows do not tell the same.
 * @param {SVGElement} scene @param {any[]} rows
 * @returns {{row: any, place: number | string, text: string, node: Element}[]}
 */
export function spotsOf(scene, rows) {
  const shapes = [...scene.querySelectorAll("text, rect")];
  const found = [];
  for (const row of rows) {
    for (const { text, place } of parts(row.text)) {
      const node = shapes.shift();
      if (!node || (node.tagName === "text" && node.textContent !== text)) return [];
      if (place !== null) found.push({ row, place, text, node });
    }
    if (!row.answers.length) continue;
    if (joint(row.text)) shapes.shift();
    const node = shapes.shift();
    const text = row.answers.join(", ");
    if (node?.textContent !== text) return [];
    found.push({ row, place: "answer", text, node });
  }
  return found;
}

/** How much of the height of a number's box is air above it. */
const ABOVE = 0.16;

/**
 * Lay a button over each number of the string.
 * @param {import("./board.js").Board} board @param {import("./marks.js").Marks} marks
 */
export function laySpots(board, marks) {
  const string = board.sheet.querySelector(".string");
  const scene = string?.querySelector(".scene");
  string?.querySelector(".spots")?.remove();
  if (!(string instanceof HTMLElement) || !(scene instanceof SVGElement)) return;
  const whole = string.getBoundingClientRect();
  const buttons = spotsOf(scene, board.state.connect.rows).map(({ row, place, text, node }) => {
    const box = node.getBoundingClientRect();
    const button = marks.button(row, "", place, `${text}, ${row.text}`);
    button.classList.add("number");
    const px = (/** @type {string} */ name, /** @type {number} */ value) =>
      button.style.setProperty(name, `${value}px`);
    px("left", box.left - whole.left + string.scrollLeft);
    px("top", box.top - whole.top + string.scrollTop + ABOVE * box.height);
    px("width", box.width);
    px("height", (1 - ABOVE) * box.height);
    return button;
  });
  string.append(make("div", { class: "spots" }, buttons));
}
