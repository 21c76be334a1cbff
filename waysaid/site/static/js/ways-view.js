/** The ways told for one problem: open tiles in the order heard, the rest as name tags to touch. */

import { fill, keep, make, put } from "./dom.js";
import { problemOrImage } from "./image-view.js";
import { talkMark } from "./phases.js";
import { fitsInside, nameTag, sizeTile, tileNode } from "./tile.js";
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
 * @typedef {{tile: any, said: string, node: HTMLElement, span: 1 | 2 | 4, seen: boolean}} Kept
 *   a way's tile with its slots; `seen` once it is known that it needs no more
 */

/** What stays on the board from one state to the next, as long as the screen does. */
export class Standing {
  constructor() {
    /** @type {Map<string, Kept>} */
    this.tiles = new Map();
    this.grid = make("div", { class: "ways" });
    this.bench = make("div", { class: "ways bench", "aria-hidden": "true" });
    this.head = make("header", { class: "head" });
    this.headed = "";
    /** The name tags of the folded ways, and which they are. */
    this.folded = make("ul", { class: "fold" });
    this.shut = "";
    this.arrange = () => {};
  }

  /** Return a way's tile; a new one, in one slot, only where it says something new. */
  tile(/** @type {any} */ tile, /** @type {any} */ words) {
    const said = JSON.stringify({ ...tile, folded: null });
    const kept = this.tiles.get(tile.id);
    if (kept?.said === said) return kept;
    /** @type {Kept} */
    const made = { tile, said, node: tileNode(tile, words), span: 1, seen: false };
    this.tiles.set(tile.id, made);
    return made;
  }

  /**
   * Look at those of these tiles, in their places, that were not yet seen; give more slots to what
   * does not fit. Returns whether any grew. Most need one slot and so are laid out only once.
   */
  grew(/** @type {string[]} */ ids) {
    const fresh = [...this.tiles.values()].filter(({ tile, seen }) => !seen && ids.includes(tile.id));
    const small = fresh.filter(({ node }) => !fitsInside(node));
    for (const kept of fresh) kept.seen = true;
    for (const kept of small) kept.span = sizeTile(kept.node, kept.tile, this.bench);
    return small.length > 0;
  }

  /** Return the line above the ways; a new one only where it says something new. */
  top(/** @type {any} */ state, /** @type {any} */ words) {
    const said = JSON.stringify([state.problem, state.image?.scene, state.turn_and_talk]);
    if (said !== this.headed) {
      this.headed = said;
      const problem = problemOrImage(state, "h1", "problem");
      this.head = make("header", { class: "head" }, problem, talkMark(state, words));
    }
    return this.head;
  }

  /** Fold these ways to their name tags; new ones only where they say something new. */
  fold(/** @type {any[]} */ tiles, /** @type {any} */ words) {
    const shut = JSON.stringify(tiles.map(({ id, name }) => [id, name]));
    if (shut === this.shut) return;
    this.shut = shut;
    fill(
      this.folded,
      tiles.map((tile) => foldedTag(tile, words, () => this.arrange())),
    );
  }

  /** Forget the tiles of ways that are no longer told. */
  only(/** @type {any[]} */ tiles) {
    const told = new Set(tiles.map((tile) => tile.id));
    for (const id of [...this.tiles.keys()]) if (!told.has(id)) this.tiles.delete(id);
  }
}

/**
 * @param {any} state @param {any} words @param {Standing} standing
 * @param {boolean} all whether every way is open, one under another, as on a phone
 * @param {() => void} again called when other ways are open than before
 */
export function waysView(state, words, standing, all, again) {
  const { grid, bench, folded } = standing;
  folded.setAttribute("aria-label", words.folded_ways);
  /** Let the ways stand that are open as far as their slots are known; returns which. */
  const place = () => {
    const sized = state.tiles.map((/** @type {any} */ tile) => {
      const { node, span } = standing.tile(tile, words);
      return { id: tile.id, span, folded: tile.folded, node };
    });
    const open = all ? sized.map((/** @type {any} */ each) => each.id) : openOnes(sized, touched.id);
    keep(
      grid,
      sized
        .filter((/** @type {any} */ each) => open.includes(each.id))
        .map((/** @type {any} */ each) => each.node),
    );
    return open;
  };
  const arrange = () => {
    if (touched.among !== state.tiles.length) {
      Object.assign(touched, { id: null, among: state.tiles.length });
    }
    standing.only(state.tiles);
    let open = place();
    while (standing.grew(open)) open = place();
    bench.replaceChildren();
    standing.fold(
      state.tiles.filter((/** @type {any} */ tile) => !open.includes(tile.id)),
      words,
    );
    again();
  };
  standing.arrange = arrange;
  return { nodes: [standing.top(state, words), grid, bench], beside: folded, settle: arrange };
}
