/** Who is speaking: the names of the class, and finding one by its first letters. */

import { draw, make, panel } from "./dom.js";
import { once } from "./press.js";

/** Letters of a name that fit on one line where three names stand beside each other. */
const LONG = 8;
/** A class of so many children has room for wider names. */
const FEW = 22;

/** @param {boolean} full */
function mark(full) {
  return draw(
    "svg",
    { viewBox: "0 0 16 16", class: full ? "mark full" : "mark", "aria-hidden": "true" },
    draw("circle", { cx: 8, cy: 8, r: 5.5 }),
  );
}

const plain = (/** @type {string} */ text) =>
  text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .trim();

/**
 * Return the children whose name begins so; a whole name wins over longer ones.
 * @param {{id: string, name: string}[]} roster @param {string} letters
 */
export function named(roster, letters) {
  const wanted = plain(letters);
  if (!wanted) return [];
  const whole = roster.filter((child) => plain(child.name) === wanted);
  return whole.length ? whole : roster.filter((child) => plain(child.name).startsWith(wanted));
}

/**
 * Split a typed line at its first comma where what stands before it names children.
 * @param {{id: string, name: string}[]} roster @param {string} line
 * @returns {{who: {id: string, name: string}[], said: string}}
 */
export function splitLine(roster, line) {
  const comma = line.search(/[,:]/);
  if (comma < 1 || /\d/.test(line.slice(0, comma))) return { who: [], said: line };
  const who = named(roster, line.slice(0, comma));
  return who.length ? { who, said: line.slice(comma + 1).trim() } : { who, said: line };
}

/** The mark of one who was asked and passed. */
function dash() {
  return draw(
    "svg",
    { viewBox: "0 0 16 16", class: "mark dash", "aria-hidden": "true" },
    draw("path", { d: "M3 8h10" }),
  );
}

/** @param {any} child @param {any} given */
function note(child, { words, history }) {
  if (child.heard) return words.spoke_today;
  return history && !child.lately ? words.not_heard_lately : null;
}

/** @param {any} child @param {any} given @param {(id: string) => void} choose */
function nameButton(child, given, choose) {
  const said = note(child, given);
  return make(
    "li",
    {},
    make(
      "button",
      {
        type: "button",
        class: child.heard ? "name heard" : "name",
        "data-key": `child-${child.id}`,
        "aria-pressed": String(given.speaker === child.id),
        title: said,
        click: once(() => choose(child.id)),
      },
      make("span", { class: child.name.length > LONG ? "who long" : "who" }, child.name),
      child.passed && [dash(), make("span", { class: "unseen" }, `, ${given.words.passed}`)],
      said && mark(child.heard),
      said && make("span", { class: "unseen" }, `, ${said}`),
    ),
  );
}

/** @param {HTMLElement} node @param {HTMLElement} legend @param {any} words */
export function namesPanel(node, legend, words) {
  let choose = (/** @type {string} */ _id) => {};
  const list = panel(node, (given) =>
    given.roster.map((/** @type {any} */ child) =>
      nameButton(child, { ...given, words }, (id) => choose(id)),
    ),
  );
  const marks = panel(legend, ({ history, passed }) => [
    passed && make("span", {}, dash(), words.passed),
    history && make("span", {}, mark(false), words.not_heard_lately),
    make("span", {}, mark(true), words.spoke_today),
  ]);
  return (/** @type {import("./desk.js").Desk} */ desk) => {
    choose = (id) => desk.choose(id);
    node.classList.toggle("few", desk.state.roster.length <= FEW);
    list({ roster: desk.state.roster, history: desk.state.history, speaker: desk.speaker });
    const passed = desk.state.roster.some((/** @type {any} */ child) => child.passed);
    marks({ history: desk.state.history, passed });
  };
}
