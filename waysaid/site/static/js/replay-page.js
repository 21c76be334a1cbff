/** A past talk on the whole screen, step by step, drawn by the board's own code. */

import { Board } from "./board.js";
import { started, words } from "./dom.js";
import { onReshape, wide } from "./live.js";

const { states = "", step: first = "1", last: end = "1" } = document.body.dataset;
const last = Number(end);
const board = new Board(/** @type {HTMLElement} */ (document.getElementById("main")), words());
const slider = /** @type {HTMLInputElement} */ (document.getElementById("step"));
const where = /** @type {HTMLElement} */ (document.getElementById("where"));
const leave = /** @type {HTMLAnchorElement} */ (document.getElementById("leave"));
const home = leave.href;

/** @type {Map<string, Promise<any>>} */
const kept = new Map();
let step = Number(first);

/** Ask for the talk as it stood after a step, once. */
function stateAfter(/** @type {number} */ place) {
  const address = `${states}?step=${place}&wide=${wide()}`;
  if (!kept.has(address)) {
    kept.set(
      address,
      fetch(address).then((response) => (response.ok ? response.json() : Promise.reject(response))),
    );
  }
  return /** @type {Promise<any>} */ (kept.get(address));
}

/** @param {number} place */
async function go(place) {
  step = Math.min(Math.max(place, 1), last);
  slider.value = String(step);
  where.textContent = `${step} / ${last}`;
  leave.href = `${home}?step=${step}`;
  for (const button of document.querySelectorAll("[data-go]")) {
    const back = ["first", "before"].includes(/** @type {HTMLElement} */ (button).dataset.go ?? "");
    button.toggleAttribute("disabled", back ? step === 1 : step === last);
  }
  const asked = step;
  try {
    const state = await stateAfter(asked);
    if (asked === step) board.show(state);
    if (asked < last) stateAfter(asked + 1).catch(() => {});
  } catch {
    kept.clear();
    where.textContent = "…";
  }
}

const moves = {
  first: () => go(1),
  before: () => go(step - 1),
  next: () => go(step + 1),
  last: () => go(last),
};

for (const button of document.querySelectorAll("[data-go]")) {
  const name = /** @type {keyof typeof moves} */ (/** @type {HTMLElement} */ (button).dataset.go);
  button.addEventListener("click", moves[name]);
}
slider.addEventListener("input", () => go(Number(slider.value)));

const keys = { ArrowLeft: moves.before, ArrowRight: moves.next, Home: moves.first, End: moves.last };
addEventListener("keydown", (event) => {
  const move = keys[/** @type {keyof typeof keys} */ (event.key)];
  if (!move || event.target === slider || event.altKey || event.ctrlKey || event.metaKey) return;
  event.preventDefault();
  move();
});
onReshape(() => go(step));

started();
go(step);
