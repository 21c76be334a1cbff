/** What a class may ask: what if a number were so much more or less, or so many times as large? */

const MORE = /^\+?\s*(-?\d+)$/;
const TIMES = /^[x×*·]\s*(\d+)$/i;
const OVER = /^[/÷:]\s*(\d+)$/;

/** Changes with a button of their own. */
export const COMMON = {
  double: { does: "times", amount: 2 },
  half: { does: "over", amount: 2 },
  tenfold: { does: "times", amount: 10 },
};

/**
 * Read a change as it is typed, as `+1`, `-10`, `x 2` or `/ 2`; null for what is none.
 * @param {string} text
 */
export function changeOf(text) {
  const said = text.trim().replace("−", "-");
  const times = Number(TIMES.exec(said)?.[1]);
  if (times) return { does: "times", amount: times };
  const over = Number(OVER.exec(said)?.[1]);
  if (over) return { does: "over", amount: over };
  const more = Number(MORE.exec(said)?.[1]);
  return more ? { does: "add", amount: more } : null;
}
