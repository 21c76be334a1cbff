/** Answers heard, in the order heard; one tap for one more. */

import { make, panel, randomId } from "./dom.js";

/** @param {any} state the desk's; returns answers the desk can offer, in no order of worth */
function offered(state) {
  const heard = new Set(state.answers.map((/** @type {any} */ each) => each.text));
  const known = [
    ...state.chips.map((/** @type {any} */ chip) => chip.answer),
    ...state.private.slips.map((/** @type {any} */ slip) => slip.wrong),
  ];
  const numbers = new Set(known.filter(Boolean).map(String));
  const left = [...numbers].filter((text) => !heard.has(text));
  return left.sort((a, b) => Number(a) - Number(b)).slice(0, Math.max(1, 5 - heard.size));
}

/**
 * @param {string} text @param {boolean} heard @param {any} words
 * @param {(text: string) => void} say
 */
function answerButton(text, heard, words, say) {
  return make(
    "button",
    {
      type: "button",
      class: heard ? "answer-chip" : "answer-chip offered",
      "data-key": `answer-${text}`,
      title: heard ? null : words.if_you_hear,
      click: () => say(text),
    },
    heard ? text : `+ ${text}`,
  );
}

/** @param {HTMLElement} node @param {HTMLFormElement} form @param {any} words */
export function answersPanel(node, form, words) {
  /** @type {import("./desk.js").Desk} */
  let desk;
  const say = (/** @type {string} */ text) => {
    if (!desk.problem || !text.trim()) return;
    const body = { id: randomId(), problem: desk.problem, text: text.trim(), child: desk.speaker };
    desk.tell("answer-heard", body);
  };
  const input = /** @type {HTMLInputElement} */ (form.querySelector("input"));
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    say(input.value);
    input.value = "";
  });
  const show = panel(node, ({ heard, more }) => [
    heard.map((/** @type {string} */ text) => answerButton(text, true, words, say)),
    more.map((/** @type {string} */ text) => answerButton(text, false, words, say)),
  ]);
  return (/** @type {import("./desk.js").Desk} */ given) => {
    desk = given;
    const heard = [...new Set(desk.state.answers.map((/** @type {any} */ each) => each.text))];
    show({ heard, more: offered(desk.state) });
  };
}
