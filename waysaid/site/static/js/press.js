/**
 * A press and its release make a tap only where they meet the same element: what would be drawn
 * anew under a finger waits until the finger is lifted, so that no tap is lost to a new state.
 */

let pressed = /** @type {Node | null} */ (null);
/** What waits, the newest for each node. @type {Map<Node, () => void>} */
const waiting = new Map();

function lift() {
  pressed = null;
  const draws = [...waiting.values()];
  waiting.clear();
  draws.forEach((draw) => draw());
}

addEventListener("pointerdown", (event) => (pressed = /** @type {Node} */ (event.target)), true);
// The tap itself comes with the release, before anything else is done.
for (const end of ["pointerup", "pointercancel"]) addEventListener(end, () => setTimeout(lift), true);

/**
 * Return a listener that lets a double tap act once. What the first tap drew anew would take the
 * second for another child or the next problem.
 * @param {() => void} act
 */
export function once(act) {
  return (/** @type {MouseEvent} */ event) => {
    if (event.detail < 2) act();
  };
}

/** Draw what `node` holds, at once or when the finger that presses it is lifted. */
export function unlessPressed(/** @type {Node} */ node, /** @type {() => void} */ draw) {
  if (pressed && node.contains(pressed)) {
    waiting.set(node, draw);
  } else {
    waiting.delete(node);
    draw();
  }
}
