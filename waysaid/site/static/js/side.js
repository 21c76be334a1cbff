/** The problems so far, at the left, with the answers that were heard and no others. */

import { make } from "./dom.js";
import { answersText, problemText } from "./problem.js";

/** @param {any[]} earlier @param {any} words */
export function sideColumn(earlier, words) {
  return make(
    "ol",
    { class: "earlier", "aria-label": words.problems_so_far },
    earlier.map((problem) =>
      make(
        "li",
        { "aria-current": problem.now ? "true" : null },
        problemText(problem),
        " ",
        problem.now ? null : answersText(problem.answers, problem),
      ),
    ),
  );
}
