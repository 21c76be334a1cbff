/** Answers heard, in the order heard; one tap for one more. */

import { make, panel, randomId } from "./dom.js";

/**
 * What a tap notes and what it says; `choice` where it is one of the few answers there can be.
 * @typedef {{text: string, says: string, choice?: boolean}} Tap
 */

/** @param {any} state the desk's; returns answers the desk can offer, in no order of worth */
function offered(state) {
  const heard = new Set(state.answers.map((/** @type {any} */ each) => each.text));
  const { choices } = state.answering;
  if (choices.length) {
    const open = choices.filter((/** @type {Tap} */ one) => !heard.has(one.text));
    return open.map((/** @type {Tap} */ one) => ({ ...one, choice: true }));
  }
  const known = [
    ...state.chips.map((/** @type {any} */ chip) => chip.answer),
    ...state.private.slips.map((/** @type {any} */ slip) => slip.wrong),
  ];
  const texts = new Set(known.filter(Boolean).map(String));
  const left = [...texts].filter((text) => !heard.has(text));
  const order = new Intl.Collator(undefined, { numeric: true });
  return left
    .sort(order.compare)
    .slice(0, Math.max(1, 5 - heard.size))
    .map((text) => ({ text, says: text }));
}

/**
 * @param {Tap} tap @param {boolean} heard @param {any} words
 * @param {(text: string) => void} say
 */
function answerButton({ text, says, choice }, heard, words, say) {
  return make(
    "button",
    {
      type: "button",
      class: heard ? "answer-chip" : choice ? "answer-chip choice" : "answer-chip offered",
      "data-key": `answer-${text}`,
      title: heard || choice ? null : words.if_you_hear,
      click: () => say(text),
    },
    heard ? text : choice ? says : `+ ${text}`,
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
    heard.map((/** @type {string} */ text) => answerButton({ text, says: text }, true, words, say)),
    more.map((/** @type {Tap} */ tap) => answerButton(tap, false, words, say)),
  ]);
  return (/** @type {import("./desk.js").Desk} */ given) => {
    desk = given;
    input.inputMode = desk.state.answering.whole ? "numeric" : "text";
    const heard = [...new Set(desk.state.answers.map((/** @type {any} */ each) => each.text))];
    show({ heard, more: offered(desk.state) });
  };
}
