/** The signals a class uses: each a simple drawing of our own, or the class's picture, and a word. */

import { draw, make } from "./dom.js";

const stroke = (/** @type {string} */ d) => draw("path", { d });
const ring = (/** @type {number} */ cx, /** @type {number} */ cy, /** @type {number} */ r) =>
  draw("circle", { cx, cy, r });

/** @type {Record<string, () => SVGElement[]>} Drawn in a square of 48. */
const ICONS = {
  way: () => [
    stroke("M12 22h5v18h-5a3 3 0 0 1-3-3V25a3 3 0 0 1 3-3z"),
    stroke("M17 23c5-3 8-8 8-14 5 0 7 4 5 12h7a4 4 0 0 1 4 5l-3 11a4 4 0 0 1-4 3H17"),
  ],
  thinking: () => [ring(27, 18, 12), ring(13, 34, 4), ring(6, 43, 2)],
  agree: () => [ring(18, 24, 12), ring(30, 24, 12)],
  same: () => [ring(9, 24, 6), ring(39, 24, 6), stroke("M15 24h18")],
  another: () => [
    stroke("M24 44V28M24 28C24 18 10 20 10 8M24 28c0-10 14-8 14-20"),
    stroke("M5 13l5-6 5 6M33 13l5-6 5 6"),
  ],
  question: () => [
    stroke("M6 8h36v26H22l-9 8v-8H6z"),
    stroke("M19 17a5 5 0 1 1 7 4.5c-1.5.7-2 1.5-2 3.5M24 29.5v.5"),
  ],
  talk: () => [
    stroke("M4 8h24v17H16l-6 6v-6H4z"),
    stroke("M33 17h11v17h-5v6l-6-6H20v-4"),
  ],
};

/** Return an icon by its name, hidden from screen readers: its word stands beside it. */
export function icon(/** @type {string} */ name) {
  return draw(
    "svg",
    { class: "icon", viewBox: "0 0 48 48", "aria-hidden": "true" },
    (ICONS[name] ?? ICONS.thinking)(),
  );
}

/** @param {{word: string, icon: string | null, picture: string | null}[]} signals */
export function signalList(signals) {
  if (!signals.length) return null;
  return make(
    "ul",
    { class: "signals" },
    signals.map((signal) =>
      make(
        "li",
        {},
        signal.picture
          ? make("img", { class: "icon", src: signal.picture, alt: "" })
          : signal.icon && icon(signal.icon),
        make("span", {}, signal.word),
      ),
    ),
  );
}
