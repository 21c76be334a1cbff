/** A mark that fills when all is saved, and a bar that cannot be missed when something is not. */

import { draw, fill, make, put } from "./dom.js";

/** Milliseconds without an answer after which the bar appears. */
const PATIENCE = 4000;

/** @param {HTMLElement} mark @param {HTMLElement} bar @param {any} words */
export function savedMark(mark, bar, words) {
  const dot = draw("circle", { cx: 12, cy: 12, r: 5, class: "inner" });
  const svg = draw(
    "svg",
    { viewBox: "0 0 24 24", "aria-hidden": "true" },
    draw("circle", { cx: 12, cy: 12, r: 9 }),
    dot,
  );
  const said = make("span", { class: "unseen" });
  fill(mark, svg, said);
  let since = 0;
  let timer = 0;
  let shown = "";

  /** @param {import("./outbox.js").Outbox} outbox */
  return function show(outbox) {
    const count = outbox.waiting.length;
    since = count ? since || Date.now() : 0;
    clearTimeout(timer);
    const late = count > 0 && (outbox.trouble || Date.now() - since > PATIENCE);
    if (count && !late) timer = setTimeout(() => show(outbox), PATIENCE + 50);
    mark.classList.toggle("full", !count);
    said.textContent = count ? "" : words.all_saved;
    bar.hidden = !late;
    const sentence = late ? put(words.not_saved, { why: outbox.why }) : "";
    if (sentence === shown) return;
    shown = sentence;
    fill(
      bar,
      make("strong", {}, sentence),
      make(
        "button",
        { type: "button", class: "button small", click: () => outbox.send() },
        words.try_now,
      ),
    );
  };
}
