/** A quick image on the board: shown for its seconds, then hidden by the page itself. */

import { make } from "./dom.js";
import { problemText } from "./problem.js";
import { paint } from "./scene.js";

/**
 * Return what stands where the problem does: the picture while it is in sight, else its name.
 * @param {any} state @param {string} tag @param {string} name the element and its class
 */
export function problemOrImage(state, tag, name) {
  const scene = state.image?.scene;
  if (scene) return make(tag, { class: `${name} pictured` }, paint(scene));
  return state.problem && problemText(state.problem, tag, name);
}

/** Return the whole stage of a picture, in sight or hidden again; null for any other problem. */
export function imageStage(/** @type {any} */ state, /** @type {any} */ words) {
  if (!state.image) return null;
  if (state.image.scene) return problemOrImage(state, "h1", "problem-image");
  return make(
    "div",
    { class: "asked" },
    make(
      "h1",
      { class: "problem" },
      make("span", { "aria-hidden": "true" }, words.how_many),
      make("span", { class: "unseen" }, `${state.problem.spoken}. ${words.how_many}`),
    ),
    make("p", { class: "lead" }, words.how_seen),
  );
}

/** Return the state as it is once the look is over. */
export function hidden(/** @type {any} */ state) {
  return { ...state, image: { scene: null, left: 0 } };
}

/** Return what may be kept for a reload: dots that are to be hidden again are not. */
export function keepable(/** @type {any} */ state) {
  return state.image?.scene && state.image.left !== null ? hidden(state) : state;
}

/** Call `then` when the look that is on is over; a later state takes the place of an earlier. */
export class Look {
  constructor() {
    this.timer = 0;
  }

  /** @param {any} state @param {(state: any) => void} then */
  take(state, then) {
    clearTimeout(this.timer);
    const left = state.image?.scene ? state.image.left : null;
    if (left !== null && left !== undefined) this.timer = setTimeout(() => then(hidden(state)), left);
  }
}
