/** What the sheet holds in each phase but ways and connect. */

import { make } from "./dom.js";
import { imageStage, problemOrImage } from "./image-view.js";
import { problemText } from "./problem.js";
import { icon, signalList } from "./signals.js";
import { nameTag } from "./tile.js";

/** The calm mark that pairs are talking; null when they are not. */
export function talkMark(/** @type {any} */ state, /** @type {any} */ words) {
  return state.turn_and_talk
    ? make("p", { class: "talk-mark" }, icon("talk"), make("span", {}, words.turn_and_talk))
    : null;
}

/** Sentences to begin with, while pairs talk. */
export function starters(/** @type {any} */ state) {
  if (!state.turn_and_talk || !state.starters?.length) return null;
  return make(
    "ul",
    { class: "starters" },
    state.starters.map((/** @type {string} */ text) => make("li", {}, text)),
  );
}

/** @param {any} state @param {any} words */
function before(state, words) {
  return [
    make("h1", { class: "title", "data-fit": "title" }, state.title),
    state.norms.length > 0 &&
      make(
        "ul",
        { class: "norms", "aria-label": words.norms },
        state.norms.map((/** @type {string} */ norm) => make("li", {}, norm)),
      ),
    signalList(state.signals),
  ];
}

/** @param {any} state @param {any} words */
function think(state, words) {
  return [
    make(
      "div",
      { class: "stage" },
      imageStage(state, words) ??
        (state.problem && problemText(state.problem, "h1", "problem whole")),
    ),
    make(
      "div",
      { class: "foot" },
      talkMark(state, words),
      starters(state),
      signalList(state.signals),
    ),
  ];
}

/** @param {any} state @param {any} words */
function answers(state, words) {
  const one = (/** @type {any} */ answer) =>
    make(
      "li",
      {},
      make("span", { class: "answer" }, answer.text),
      answer.names.map((/** @type {string} */ name) => nameTag(name, words)),
    );
  return [
    make(
      "header",
      { class: "head" },
      problemOrImage(state, "h1", "problem"),
      talkMark(state, words),
    ),
    make("h2", { class: "lead" }, words.answers_we_have),
    make("ol", { class: "answers" }, state.answers.map(one)),
    make("div", { class: "foot" }, starters(state), signalList(state.signals)),
  ];
}

/** @param {any} state @param {any} words */
function after(state, words) {
  return [
    make("h1", { class: "title", "data-fit": "title" }, words.thank_you),
    make("p", { class: "lead" }, state.title),
  ];
}

/** @param {any} state @param {any} words */
function paused(state, words) {
  return [
    make("h1", { class: "title", "data-fit": "title" }, words.paused),
    make("p", { class: "lead" }, words.paused_more),
  ];
}

/** Return what to call the view: the phase, or what stands above it. */
export function viewOf(/** @type {any} */ state) {
  if (state.closed) return "after";
  if (state.paused) return "paused";
  return state.phase;
}

/** @type {Record<string, (state: any, words: any) => any[]>} */
export const PLAIN_VIEWS = { before, think, answers, after, paused };
