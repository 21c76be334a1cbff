/** Which ways are open on the board: rows of two slots, two rows; the rest fold to name tags. */

const SLOTS = 2;
const ROWS = 2;

/**
 * @typedef {{id: string, span: 1 | 2 | 4, folded?: boolean}} Sized
 */

/** Tell whether these, placed in order, fit in the rows. */
export function fits(/** @type {Sized[]} */ tiles) {
  let row = 0;
  let slot = 0;
  for (const { span } of tiles) {
    if (span === 4) {
      if (row || slot) return false;
      row = ROWS;
      continue;
    }
    if (slot + span > SLOTS) {
      row += 1;
      slot = 0;
    }
    if (row >= ROWS) return false;
    slot += span;
    if (slot === SLOTS) {
      row += 1;
      slot = 0;
    }
  }
  return true;
}

/**
 * Return the ids that are open, in the order heard: what was touched, then the newest that fit.
 * One that its child changed since is folded until it is touched.
 * @param {Sized[]} tiles in the order heard @param {string | null} touched
 */
export function openOnes(tiles, touched) {
  let open = tiles.filter((tile) => tile.id === touched);
  for (const tile of [...tiles].reverse()) {
    if (tile.id === touched || tile.folded) continue;
    const more = tiles.filter((each) => each === tile || open.includes(each));
    if (!fits(more)) break;
    open = more;
  }
  return open.map((tile) => tile.id);
}
