/** A problem as text: the print for the eye, the words for the ear, a frame for what is unknown. */

import { make } from "./dom.js";
import { withFractions } from "./fractions.js";

/**
 * @param {{text: string, spoken?: string}} problem
 * @param {string} [tag] @param {string} [name] the element and its class
 */
export function problemText(problem, tag = "span", name = "problem") {
  // Where the problem has the whole sheet there is room to stack fractions at full size.
  const whole = name.split(" ").includes("whole");
  const parts = problem.text.split(/[_▢]/).flatMap((part, index) => {
    const frame = index ? [make("span", { class: "frame" })] : [];
    return [...frame, ...(whole ? withFractions(part) : [part])];
  });
  if (!problem.spoken) return make(tag, { class: name }, parts);
  return make(
    tag,
    { class: name },
    make("span", { "aria-hidden": "true" }, parts),
    make("span", { class: "unseen" }, problem.spoken),
  );
}

/** Return the answers that were heard as they stand behind a problem: `= 66, 56`. */
export function answersText(/** @type {string[]} */ answers) {
  return answers.length ? make("span", { class: "given" }, `= ${answers.join(", ")}`) : null;
}
