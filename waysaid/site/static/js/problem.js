/** A problem as text: the print for the eye, the words for the ear, a frame for what is unknown. */

import { make } from "./dom.js";
import { withFractions } from "./fractions.js";
import { joint } from "./marks.js";

/** A sign between two numbers; a line is broken before it and never after it. */
const SIGN = /(?<=[\d\p{L}%)▢_] )([^\s\d\p{L}(]|x) (?=\S)/gu;
const MIXED = /(\d) (\d+\/\d)/gu;
const ASKED = / \?$/u;

/** Return a text with the spaces that must not part what they stand between. */
function kept(/** @type {string} */ text) {
  return text.replace(MIXED, "$1\u00a0$2").replace(SIGN, "$1\u00a0").replace(ASKED, "\u00a0?");
}

/**
 * @param {{text: string, spoken?: string}} problem
 * @param {string} [tag] @param {string} [name] the element and its class
 * @param {string} [after] what stands close behind it
 */
export function problemText(problem, tag = "span", name = "problem", after = "") {
  // Where the problem has the whole sheet there is room to stack fractions at full size.
  const whole = name.split(" ").includes("whole");
  const parts = (kept(problem.text) + after).split(/[_▢]/).flatMap((part, index) => {
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

/**
 * Return a problem with the answers that were heard behind it: `39 + 27 = 66, 56`, `3/4 ? 5/8: >`.
 * @param {{text: string, spoken?: string}} problem @param {string[]} answers
 */
export function answeredText(problem, answers) {
  if (!answers.length) return [problemText(problem)];
  const sign = joint(problem.text);
  const close = sign === "=" ? "" : ":";
  const given = [close ? "" : `${sign}\u00a0`, answers.join(", ")];
  return [
    problemText(problem, "span", "problem", close),
    " ",
    make("span", { class: "given" }, given),
  ];
}
