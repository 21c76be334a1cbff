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

/**
 * Leave rows out while the list is longer than its room: the oldest, and where that is the one of
 * the moment the newest; no row is ever cut.
 */
export function showNewest(/** @type {HTMLElement | null} */ list) {
  if (!list) return;
  const rows = /** @type {HTMLElement[]} */ ([...list.children]);
  for (const row of rows) row.hidden = false;
  const now = rows.findIndex((row) => row.hasAttribute("aria-current"));
  const before = now < 0 ? rows : rows.slice(0, now);
  const after = now < 0 ? [] : rows.slice(now + 1).reverse();
  for (const row of [...before, ...after]) {
    if (list.scrollHeight <= list.clientHeight + ROUNDED) return;
    row.hidden = true;
  }
}
