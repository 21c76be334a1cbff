/** A quiet count of think time, for the teacher alone, with the class's usual time beside it. */

import { fill, make, put } from "./dom.js";

/** @param {number} seconds */
const clock = (seconds) => `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;

/** @param {HTMLElement} node @param {any} words */
export function thinkPanel(node, words) {
  /** @type {any} */
  let state = null;
  let skew = 0;
  const show = () => {
    const since = state?.phase === "think" && !state.board.paused ? state.think?.since : null;
    if (!since) {
      node.textContent = "";
      return;
    }
    const seconds = Math.max(0, Math.floor((Date.now() + skew - since) / 1000));
    const usual = state.think.usual;
    fill(
      node,
      make("span", {}, put(words.thinking, { time: clock(seconds) })),
      " ",
      usual && make("span", {}, put(words.usually, { time: clock(usual) })),
    );
  };
  setInterval(show, 1000);
  return (/** @type {import("./desk.js").Desk} */ desk) => {
    if (state !== desk.state && desk.state.now) skew = desk.state.now - Date.now();
    state = desk.state;
    show();
  };
}
