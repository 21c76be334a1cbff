/** The problems so far, at the left, with the answers that were heard and no others. */

import { make } from "./dom.js";
import { answeredText } from "./problem.js";

/** @param {any[]} earlier @param {any} words */
export function sideColumn(earlier, words) {
  return make(
    "ol",
    { class: "earlier", "aria-label": words.problems_so_far },
    earlier.map((problem) =>
      make(
        "li",
        { "aria-current": problem.now ? "true" : null },
        answeredText(problem, problem.now ? [] : problem.answers),
      ),
    ),
  );
}

/** Heights are rounded to whole pixels; a list that fits may seem this much too long. */
const ROUNDED = 2;

/** Leave the oldest rows out while the list is longer than its room; no row is ever cut. */
export function showNewest(/** @type {HTMLElement | null} */ list) {
  if (!list) return;
  const rows = /** @type {HTMLElement[]} */ ([...list.children]);
  for (const row of rows) row.hidden = false;
  for (const row of rows) {
    if (list.scrollHeight <= list.clientHeight + ROUNDED || row.hasAttribute("aria-current")) return;
    row.hidden = true;
  }
}
