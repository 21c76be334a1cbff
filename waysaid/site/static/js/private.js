/** Only the teacher sees this: ways nobody used yet, slips to listen for, what she could ask. */

import { make, panel, put } from "./dom.js";

const ENOUGH = { unused: 3, slips: 2, questions: 2, not_heard: 4 };

/** @param {HTMLElement} node @param {any} words */
export function privatePanel(node, words) {
  const show = panel(node, (given) => [
    given.range && make("p", {}, put(words.sensible_range, given.range)),
    given.why && make("p", {}, put(words.why_here, { why: given.why })),
    given.unused.length > 0 &&
      make("p", {}, put(words.nobody_yet, { families: given.unused.join(", ") })),
    given.slips.map((/** @type {any} */ slip) =>
      make("p", {}, put(slip.heard ? words.heard_slip : words.if_you_hear_slip, slip)),
    ),
    given.not_heard.length > 0 &&
      make("p", {}, put(words.not_heard, { names: given.not_heard.join(", ") })),
    !given.why &&
      !given.range &&
      !given.unused.length &&
      !given.slips.length &&
      !given.not_heard.length &&
      make("p", {}, words.nothing_yet),
  ]);
  return (/** @type {import("./desk.js").Desk} */ desk) => {
    const { unused, slips, not_heard } = desk.state.private;
    const now = desk.state.problems.find((/** @type {any} */ each) => each.now);
    const range = desk.state.answering.range;
    show({
      range: range && { low: range[0], high: range[1] },
      why: now?.why,
      unused: unused.slice(0, ENOUGH.unused),
      slips: slips.slice(0, ENOUGH.slips),
      not_heard: not_heard.slice(0, ENOUGH.not_heard),
    });
  };
}

/** @param {HTMLElement} node @param {any} words */
export function askPanel(node, words) {
  const show = panel(node, ({ questions }) =>
    questions.map((/** @type {string} */ text) =>
      make("p", {}, `${words.open_quote}${text}${words.close_quote}`),
    ),
  );
  return (/** @type {import("./desk.js").Desk} */ desk) =>
    show({ questions: desk.state.private.questions.slice(0, ENOUGH.questions) });
}
