/** Ways foreseen for this problem: one tap puts one on the board as this child's. */

import { make, panel, put } from "./dom.js";
import { groupingButtons } from "./groupings.js";
import { once } from "./press.js";
import { paint } from "./scene.js";

const LINES = 3;
const CHIPS = 6;
/** A wider drawing would be too small to read beside the steps, in tenths. */
const WIDEST = 800;

/**
 * A chip; with the groupings to choose between beside it, where what it says fits several.
 * @param {any} chip @param {number} index @param {(chip: any) => void} share @param {any} words
 */
function chipPart(chip, index, share, words) {
  if (!chip.groupings?.length) return chipButton(chip, index, share);
  const choose = (/** @type {any} */ { seen }) => share({ ...chip, seen });
  return make(
    "div",
    { class: "chip-grouped" },
    chipButton({ ...chip, scene: null }, index, () => share(chip)),
    groupingButtons(chip.groupings, words, { key: `chip-${index}-seen`, choose }),
  );
}

/** @param {any} chip @param {number} index @param {(chip: any) => void} share */
function chipButton(chip, index, share) {
  const lines = chip.lines.slice(0, LINES);
  const more = chip.lines.length > LINES ? " …" : "";
  return make(
    "button",
    {
      type: "button",
      class: "chip",
      "data-key": `chip-${index}`,
      "aria-keyshortcuts": index < 9 ? `Alt+${index + 1}` : null,
      click: once(() => share(chip)),
    },
    make(
      "span",
      { class: "steps" },
      make("span", { class: "family" }, chip.ends ? `${chip.name} → ${chip.ends}` : chip.name),
      lines.map((/** @type {string} */ line, /** @type {number} */ at) =>
        make("span", { class: "step" }, at === lines.length - 1 ? line + more : line),
      ),
    ),
    chip.scene && chip.scene.width <= WIDEST && thumbnail(chip.scene),
  );
}

/** The drawing in small; the steps beside it say the same. */
function thumbnail(/** @type {any} */ scene) {
  const picture = paint(scene);
  picture.setAttribute("aria-hidden", "true");
  picture.classList.add("thumb");
  return picture;
}

/** @param {import("./desk.js").Desk} desk */
function heading(desk) {
  const { words, speaker, relation, editing } = desk;
  const problem = desk.state.board.problem?.text;
  if (!problem) return words.no_problem_yet;
  if (editing) return put(words.writing_anew, { problem });
  if (!speaker) return put(words.whose_way_open, { problem });
  const name = desk.name(speaker);
  if (relation.kind === "changes") return put(words.who_changes, { name, problem });
  if (relation.kind === "own") return put(words.whose_way, { name, problem });
  const to = desk.ways.find((/** @type {any} */ way) => way.id === relation.to);
  return put(words.who_adds, { name, other: to?.name || words.no_name });
}

/** @param {{title: HTMLElement, more: HTMLElement, chips: HTMLElement}} nodes @param {any} words */
export function chipsPanel({ title, more, chips: node }, words) {
  let all = false;
  /** @type {import("./desk.js").Desk} */
  let desk;
  const share = (/** @type {any} */ chip) => {
    const picture = chip.picture ?? (chip.scene ? "number-line" : "equations");
    const { steps, family, answer, seen } = chip;
    all = false;
    const told = { steps, words: "", family, answer: answer ?? null, picture, seen: seen ?? [] };
    desk.share({ ...told, foreseen: true });
  };
  const turn = () => {
    all = !all;
    desk.update();
  };
  const show = panel(node, ({ chips, all: every }) =>
    (every ? chips : chips.slice(0, CHIPS)).map(
      (/** @type {any} */ chip, /** @type {number} */ index) =>
        chipPart(chip, index, share, words),
    ),
  );
  more.addEventListener("click", turn);
  const update = (/** @type {import("./desk.js").Desk} */ given) => {
    desk = given;
    const said = heading(desk);
    if (title.textContent !== said) title.textContent = said;
    more.hidden = desk.chips.length <= CHIPS;
    more.textContent = all ? words.fewer_ways : words.more_ways;
    show({ chips: desk.chips, all });
  };
  return {
    update,
    press: (/** @type {number} */ index) => {
      const chip = desk?.state && desk.chips[index];
      if (chip) share(chip);
      return Boolean(chip);
    },
  };
}
