/** How a child saw a quick image, where what was said fits more than one grouping: one tap each. */

import { make, put } from "./dom.js";
import { paint } from "./scene.js";

/** A grouping in words: its lines where it has such, else its place and how large its groups are. */
function nameOf(/** @type {any} */ grouping, /** @type {number} */ index, /** @type {any} */ words) {
  const sizes = grouping.seen.map((/** @type {number[]} */ group) => group.length).join(", ");
  return words.grouped_by[grouping.by] ?? put(words.grouped_so, { number: index + 1, sizes });
}

/**
 * A button for each grouping; none where there is nothing to choose. `chosen` says which one is
 * pressed; without it the buttons act at once and none stays pressed.
 * @param {any[]} groupings @param {any} words
 * @param {{key: string, choose: (grouping: any) => void, chosen?: (grouping: any) => boolean}} how
 */
export function groupingButtons(groupings, words, { key, choose, chosen }) {
  if (!groupings?.length) return null;
  return make(
    "div",
    { class: "groupings", role: "group", "aria-label": words.how_grouped },
    groupings.map((grouping, index) => {
      const picture = paint(grouping.scene);
      picture.setAttribute("aria-hidden", "true");
      const name = nameOf(grouping, index, words);
      return make(
        "button",
        {
          type: "button",
          class: "grouping",
          "data-key": `${key}-${index}`,
          "aria-label": name,
          "aria-pressed": chosen ? String(chosen(grouping)) : null,
          title: name,
          click: () => choose(grouping),
        },
        picture,
        words.grouped_by[grouping.by] && make("span", {}, name),
      );
    }),
  );
}
