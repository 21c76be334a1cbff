/** The string on the desk: its numbers are buttons, and the chosen ones become marks. */

import { make } from "./dom.js";

/** A number in any form, whole: 14, 0.65, 15%, 3/4, 1 1/4; or a blank. */
const NUMBER = /(\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?%?|[_▢])/;

/** An equation has nothing before its answer; a question has a colon. @param {string} text */
export function joint(text) {
  if (text.includes("=") && !text.endsWith("?")) return "";
  return /\?|^\p{L}{2}/u.test(text) ? ":" : "=";
}

/**
 * Split a problem's text into signs and numbers; each number has its place among the numbers.
 * @param {string} text @returns {{text: string, place: number | null}[]}
 */
export function parts(text) {
  let place = -1;
  return text
    .split(NUMBER)
    .filter((part) => part.trim() !== "")
    .map((part) => {
      if (!/^[\d_▢]/.test(part)) return { text: part.trim(), place: null };
      place += 1;
      return { text: part, place };
    });
}

/** What the teacher chose on the string, in the order chosen. */
export class Marks {
  constructor(/** @type {() => void} */ onChange) {
    /** @type {{problem: string, place: number | string}[]} */
    this.chosen = [];
    this.onChange = onChange;
  }

  /** @param {string} problem @param {number | string} place */
  has(problem, place) {
    return this.chosen.some((mark) => mark.problem === problem && mark.place === place);
  }

  /** @param {string} problem @param {number | string} place */
  turn(problem, place) {
    this.chosen = this.has(problem, place)
      ? this.chosen.filter((mark) => mark.problem !== problem || mark.place !== place)
      : [...this.chosen, { problem, place }];
    this.onChange();
  }

  clear() {
    this.chosen = [];
    this.onChange();
  }

  /** @param {any} row @param {string} text @param {number | string} place @param {string} label */
  button(row, text, place, label) {
    return make(
      "button",
      {
        type: "button",
        class: "spot",
        "data-key": `spot-${row.id}-${place}`,
        "aria-pressed": String(this.has(row.id, place)),
        "aria-label": label,
        click: () => this.turn(row.id, place),
      },
      text,
    );
  }

  /** @param {any} row @param {any} words */
  row(row, words) {
    const given = row.answers.join(", ");
    return make(
      "li",
      {},
      this.button(row, "•", "row", `${words.whole_row}: ${row.text}`),
      parts(row.text).map((part) =>
        part.place === null
          ? make("span", { class: "sign" }, part.text)
          : this.button(row, part.text, part.place, `${part.text}, ${row.text}`),
      ),
      row.answers.length > 0 && [
        joint(row.text) && make("span", { class: "sign" }, joint(row.text)),
        this.button(row, given, "answer", `${given}: ${words.answer_of} ${row.text}`),
      ],
    );
  }
}
