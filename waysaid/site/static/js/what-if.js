/** What a class may ask: what if a number were so much more or less, so many times as large, or swapped? */

const MORE = /^\+?\s*(-?\d+)$/;
const TIMES = /^[x×*·]\s*(\d+)$/i;
const OVER = /^[/÷:]\s*(\d+)$/;
const SWAP = /^(<->|↔|⇄)$/;
const MOVE = /^(?:->|→)\s*(-?\d+)$/;

/** Changes with a button of their own. */
export const COMMON = {
  double: { does: "times", amount: 2 },
  half: { does: "over", amount: 2 },
  tenfold: { does: "times", amount: 10 },
  swap: { does: "swap", amount: 1 },
};

/**
 * Read a change as it is typed, as `+1`, `-10`, `x 2`, `/ 2`, `<->` (swap) or `-> 3` (move 3
 * across); null for what is none.
 * @param {string} text
 */
export function changeOf(text) {
  const said = text.trim().replace("−", "-");
  const times = Number(TIMES.exec(said)?.[1]);
  if (times) return { does: "times", amount: times };
  const over = Number(OVER.exec(said)?.[1]);
  if (over) return { does: "over", amount: over };
  if (SWAP.test(said)) return COMMON.swap;
  const across = Number(MOVE.exec(said)?.[1]);
  if (across) return { does: "move", amount: across };
  const more = Number(MORE.exec(said)?.[1]);
  return more ? { does: "add", amount: more } : null;
}
