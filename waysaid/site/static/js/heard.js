/**
 * What was understood of a line: the steps with what is only implied told apart, the words taken
 * back, and the runners-up, one tap each.
 */

import { make, put } from "./dom.js";
import { groupingButtons } from "./groupings.js";

/** Steps that a runner-up's button shows. */
const STEPS = 3;

/** @param {any} reading @param {any} words */
function heading(reading, words) {
  const { steps, family_name: family, answer, perhaps } = reading;
  if (!steps.length && !family && answer === null) return words.only_words_kept;
  if (!family) return words.heard_as_steps;
  return put(perhaps ? words.heard_perhaps : words.heard_as, { family });
}

/** What the teacher alone may note of it. @param {any} reading @param {any} words */
function notes({ by_digits: byDigits, slip, answer }, words) {
  const said = [
    byDigits && words.by_digits,
    slip && put(words.heard_slip, { wrong: answer, note: slip }),
  ].filter(Boolean);
  return said.map((text) => make("p", { class: "note" }, text));
}

/**
 * The families that are likely here, one of which may be a better name for what was said.
 * @param {any} reading @param {any[]} families @param {any} words
 * @param {(family: any) => void} choose
 */
function familyChoice(reading, families, words, choose) {
  const others = families.filter(({ family }) => family !== reading.family);
  if (!reading.steps.length || !others.length) return null;
  const select = make(
    "select",
    {
      class: "field small",
      "aria-label": words.family_else,
      title: words.family_else,
      "data-key": "line-family",
    },
    make("option", { value: "" }, words.another_family),
    others.map(({ family, name }) => make("option", { value: family }, name)),
  );
  select.addEventListener("change", () => {
    const { value } = /** @type {HTMLSelectElement} */ (select);
    const chosen = others.find(({ family }) => family === value);
    if (chosen) choose(chosen);
  });
  return select;
}

/** A step in its parts. @param {{text: string, implied: boolean}[]} parts @param {any} words */
function step(parts, words) {
  return make(
    "span",
    { class: "step" },
    parts.map(({ text, implied }, index) => [
      index > 0 && " ",
      implied
        ? make(
            "span",
            { class: "implied", title: words.implied },
            text,
            make("span", { class: "unseen" }, ` (${words.implied})`),
          )
        : text,
    ]),
  );
}

/** The steps as they would stand, or the answer alone. @param {any} reading @param {any} words */
function told(reading, words) {
  const { told: steps, answer } = reading;
  if (!steps.length) {
    return answer === null ? null : make("p", { class: "read" }, put(words.only_answer, { answer }));
  }
  return make(
    "p",
    { class: "read" },
    steps.map((/** @type {any} */ parts) => step(parts, words)),
    answer === null && make("span", { class: "note" }, words.no_total_yet),
  );
}

/** @param {any} rival @param {number} index @param {any} words @param {(rival: any) => void} choose */
function rivalButton(rival, index, words, choose) {
  const { lines, family_name: family } = rival;
  const some = lines.slice(0, STEPS).join(", ") + (lines.length > STEPS ? " …" : "");
  const name = family ?? (lines.length ? words.other_steps : words.only_words);
  return make(
    "button",
    {
      type: "button",
      class: "button small quiet rival",
      "data-key": `rival-${index}`,
      title: put(words.heard_instead, { family: name }),
      click: () => choose(rival),
    },
    make("span", { class: "family" }, name),
    some && make("span", { class: "step" }, some),
  );
}

/**
 * Return what to show of a reading; nothing where there is none.
 * @param {any} reading @param {any} words @param {any[]} families as {family, name}
 * @param {Record<"group" | "family" | "rival", (chosen: any) => void>} choose
 */
export function heard(reading, words, families, choose) {
  if (!reading) return null;
  const { rivals, taken_back: back } = reading;
  return [
    make(
      "p",
      { class: "note heard-as" },
      make("span", {}, heading(reading, words)),
      familyChoice(reading, families, words, choose.family),
    ),
    told(reading, words),
    notes(reading, words),
    back.length > 0 &&
      make(
        "p",
        { class: "note" },
        `${words.taken_back} `,
        back.map((/** @type {string} */ said) => [make("s", {}, said), " "]),
      ),
    groupingButtons(reading.groupings, words, {
      key: "line-seen",
      chosen: (grouping) => String(grouping.seen) === String(reading.seen),
      choose: choose.group,
    }),
    rivals.length > 0 &&
      make(
        "div",
        { class: "rivals", role: "group", "aria-label": words.or_heard },
        make("span", { class: "note" }, words.or_heard),
        rivals.map((/** @type {any} */ rival, /** @type {number} */ index) =>
          rivalButton(rival, index, words, choose.rival),
        ),
      ),
  ];
}
