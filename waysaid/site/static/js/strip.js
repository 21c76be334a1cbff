/** The problems along the top, and the way to connecting. */

import { make, panel } from "./dom.js";

/** With more problems than this they stand closer. */
const MANY = 5;

/** @param {any} problem @param {(kind: string, body: any) => void} tell */
function problemButton(problem, tell) {
  const name = problem.now ? "stop now" : problem.shown ? "stop shown" : "stop";
  return make(
    "button",
    {
      type: "button",
      class: name,
      "data-key": `problem-${problem.id}`,
      "aria-current": problem.now ? "step" : null,
      click: () => tell("problem-shown", { problem: problem.id }),
    },
    problem.text,
  );
}

/** @param {HTMLElement} node @param {any} words @param {() => void} add */
export function stripPanel(node, words, add) {
  let tell = (/** @type {string} */ _kind, /** @type {any} */ _body) => {};
  const show = panel(node, ({ problems, phase }) => {
    const connecting = phase === "connect";
    const stops = problems.map((/** @type {any} */ each) =>
      problemButton({ ...each, now: each.now && !connecting }, (kind, body) => tell(kind, body)),
    );
    return [
      make("span", { class: stops.length > MANY ? "stops many" : "stops" }, stops),
      make(
        "button",
        {
          type: "button",
          class: "stop plus",
          "data-key": "add",
          title: words.add_problem,
          click: add,
        },
        make("span", { "aria-hidden": "true" }, "+"),
        make("span", { class: "unseen" }, words.add_problem),
      ),
      make(
        "button",
        {
          type: "button",
          class: connecting ? "stop now" : "stop",
          "data-key": "connect",
          "aria-current": connecting ? "step" : null,
          click: () => tell("phase-set", { phase: "connect" }),
        },
        words.connect,
      ),
    ];
  });
  return (/** @type {import("./desk.js").Desk} */ desk) => {
    tell = (kind, body) => desk.tell(kind, body);
    show({ problems: desk.state.problems, phase: desk.state.phase });
    const stops = node.querySelector(".stops");
    const now = stops?.querySelector(".now");
    if (stops && now instanceof HTMLElement) stops.scrollLeft = now.offsetLeft - stops.clientWidth / 2;
  };
}
