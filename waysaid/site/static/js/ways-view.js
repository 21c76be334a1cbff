/** The ways told for one problem: open tiles in the order heard, the rest as name tags to touch. */

import { fill, make, put } from "./dom.js";
import { talkMark } from "./phases.js";
import { problemText } from "./problem.js";
import { nameTag, sizeTile, tileNode } from "./tile.js";
import { openOnes } from "./tiles.js";

/** Which folded way was touched last, and among how many; a new way lets it go. */
const touched = { id: /** @type {string | null} */ (null), among: 0 };

/** @param {any} tile @param {any} words @param {() => void} again */
function foldedTag(tile, words, again) {
  const label = put(words.show_way, { name: tile.name || words.no_name });
  const come = () => {
    touched.id = tile.id;
    again();
  };
  return make(
    "li",
    {},
    make(
      "button",
      { type: "button", class: "folded", "aria-label": label, "data-key": tile.id, click: come },
      nameTag(tile.name, words),
    ),
  );
}

/**
 * @param {any} state @param {any} words
 * @param {boolean} all whether every way is open, one under another, as on a phone
 * @param {() => void} again called when other ways are open than before
 */
export function waysView(state, words, all, again) {
  const folded = make("ul", { class: "fold", "aria-label": words.folded_ways });
  const grid = make("div", { class: "ways" });
  const bench = make("div", { class: "ways bench", "aria-hidden": "true" });
  const arrange = () => {
    if (touched.among !== state.tiles.length) {
      Object.assign(touched, { id: null, among: state.tiles.length });
    }
    const nodes = state.tiles.map((/** @type {any} */ tile) => tileNode(tile, words));
    /** @type {any[]} */
    const sized = state.tiles.map((/** @type {any} */ tile, /** @type {number} */ index) => ({
      id: tile.id,
      span: sizeTile(nodes[index], tile, bench),
      folded: tile.folded,
    }));
    bench.replaceChildren();
    const open = all ? sized.map((each) => each.id) : openOnes(sized, touched.id);
    fill(
      grid,
      nodes.filter((/** @type {any} */ _, /** @type {number} */ i) => open.includes(sized[i].id)),
    );
    fill(
      folded,
      state.tiles
        .filter((/** @type {any} */ tile) => !open.includes(tile.id))
        .map((/** @type {any} */ tile) => foldedTag(tile, words, arrange)),
    );
    again();
  };
  const head = make(
    "header",
    { class: "head" },
    state.problem && problemText(state.problem, "h1", "problem"),
    talkMark(state, words),
  );
  return { nodes: [head, grid, bench], beside: folded, settle: arrange };
}
