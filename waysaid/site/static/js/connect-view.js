/** The whole string with the answers given, what children noticed, and what-if strings. */

import { fill, make, put } from "./dom.js";
import { overflows, stacked } from "./fit.js";
import { starters, talkMark } from "./phases.js";
import { answeredText } from "./problem.js";
import { paint, smallest } from "./scene.js";
import { nameTag } from "./tile.js";

let touched = "";

/** @param {any[]} rows @param {string} name @param {string} label */
function rowList(rows, name, label) {
  return make(
    "ol",
    { class: name, "aria-label": label },
    rows.map((row) => make("li", {}, answeredText(row, row.answers))),
  );
}

/** @param {any} connect @param {any} words */
function stringPart(connect, words) {
  const { rows, scene } = connect;
  const list = rowList(rows, scene ? "rows unseen" : "rows", words.string);
  return make("div", { class: "string" }, list, scene && paint(scene));
}

/** @param {any} noticing @param {any} words */
function noticingNode(noticing, words) {
  return make(
    "li",
    { class: "noticing" },
    nameTag(noticing.name, words),
    noticing.words &&
      make("blockquote", {}, `${words.open_quote}${noticing.words}${words.close_quote}`),
  );
}

/** @param {any} whatIf @param {any} words */
function whatIfPart(whatIf, words) {
  if (!whatIf) return null;
  const rows = rowList(whatIf.rows, "rows", words.what_if);
  rows.style.setProperty("--rows", String(whatIf.rows.length));
  return make(
    "section",
    { class: "what-if" },
    make(
      "h2",
      { class: "note" },
      words.what_if,
      " ",
      whatIf.name && nameTag(whatIf.name, words),
    ),
    rows,
  );
}

/** @param {any} noticing @param {any} words @param {() => void} again */
function foldedNoticing(noticing, words, again) {
  const come = () => {
    touched = noticing.id;
    again();
  };
  return make(
    "button",
    {
      type: "button",
      class: "folded",
      "data-key": noticing.id,
      "aria-label": put(words.show_noticing, { name: noticing.name || words.no_name }),
      click: come,
    },
    nameTag(noticing.name, words),
  );
}

/**
 * Open the noticing touched and the newest that fit; the others become tags. A stacked screen
 * scrolls, so that all of them stay open.
 * @param {HTMLElement} list @param {any[]} noticings @param {any} words
 */
function arrange(list, noticings, words) {
  let folded = 0;
  const again = () => arrange(list, noticings, words);
  const show = () => {
    // What was touched goes last into the fold.
    const late = (/** @type {any} */ one) => Number(one.id === touched);
    const order = [...noticings].sort((a, b) => late(a) - late(b));
    const shut = order.slice(0, folded).map((each) => each.id);
    fill(
      list,
      noticings.map((each) => !shut.includes(each.id) && noticingNode(each, words)),
      shut.length > 0 &&
        make(
          "li",
          { class: "fold" },
          noticings
            .filter((each) => shut.includes(each.id))
            .map((each) => foldedNoticing(each, words, again)),
        ),
    );
  };
  show();
  while (!stacked() && folded < noticings.length && overflows(list)) {
    folded += 1;
    show();
  }
}

/** Keep the picture of the string as large as fits, its labels never below 6 % of the height. */
function scaleString(/** @type {HTMLElement} */ part, /** @type {any} */ scene) {
  const picture = part.querySelector(".scene");
  if (!scene || !(picture instanceof SVGElement)) return;
  const box = picture.getBoundingClientRect();
  const wanted = Math.min(part.clientWidth / box.width, part.clientHeight / box.height, 1.4);
  picture.style.setProperty("--scale", String(Math.max(wanted, 60 / smallest(scene))));
}

/** Make the rows of a changed string smaller where they are too wide, and break them if they must be. */
function fitRows(/** @type {HTMLElement | null} */ rows) {
  for (const name of ["small", "broken"]) if (rows && overflows(rows)) rows.classList.add(name);
}

/** @param {any} state @param {any} words */
export function connectView(state, words) {
  const connect = state.connect;
  const list = make("ol", { class: "noticings", "aria-label": words.noticings });
  const left = stringPart(connect, words);
  const head = make(
    "header",
    { class: "head" },
    make("h1", { class: "lead" }, words.what_do_you_notice),
    talkMark(state, words),
  );
  const right = make(
    "div",
    { class: "right" },
    whatIfPart(connect.what_if, words),
    starters(state),
    list,
  );
  const settle = () => {
    scaleString(left, connect.scene);
    fitRows(right.querySelector(".rows"));
    const told = connect.noticings.filter((/** @type {any} */ one) => one.name || one.words);
    arrange(list, told, words);
  };
  return { nodes: [head, make("div", { class: "connect" }, left, right)], beside: null, settle };
}
