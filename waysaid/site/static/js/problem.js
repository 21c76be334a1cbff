/** A problem as text: the print for the eye, the words for the ear, a frame for what is unknown. */

import { make } from "./dom.js";
import { withFractions } from "./fractions.js";
import { joint } from "./marks.js";

/**
 * @param {{text: string, spoken?: string}} problem
 * @param {string} [tag] @param {string} [name] the element and its class
 */
export function problemText(problem, tag = "span", name = "problem") {
  // Where the problem has the whole sheet there is room to stack fractions at full size.
  const whole = name.split(" ").includes("whole");
  const text = problem.text.replace(/(\d) (\d+\/\d)/gu, "$1\u00a0$2").replace(/ \?$/u, "\u00a0?");
  const parts = text.split(/[_▢]/).flatMap((part, index) => {
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
 * Return the answers that were heard as they stand behind a problem: `= 66, 56`, or `: >`.
 * @param {string[]} answers @param {{text: string}} problem
 */
export function answersText(answers, problem) {
  const given = `${joint(problem.text) || ":"} ${answers.join(", ")}`;
  return answers.length ? make("span", { class: "given" }, given) : null;
}
