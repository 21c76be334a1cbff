/** What the class sees, in small, and what can be changed on it. */

import { make, panel, put } from "./dom.js";
import { groupingButtons } from "./groupings.js";

const PHASES = ["before", "think", "answers", "ways"];
const STEPS = 3;
const MANY = 5;
/** The newest ways are shown with their steps; of those before only who told them. */
const newest = () => (innerHeight < 900 ? 2 : 3);

/** @param {HTMLElement} node @param {any} words */
export function phasesPanel(node, words) {
  let tell = (/** @type {string} */ _phase) => {};
  const show = panel(node, ({ phase }) =>
    PHASES.map((each) =>
      make(
        "button",
        {
          type: "button",
          class: "phase",
          "data-key": `phase-${each}`,
          "aria-pressed": String(each === phase),
          click: () => tell(each),
        },
        words.phases[each],
      ),
    ),
  );
  return (/** @type {import("./desk.js").Desk} */ desk) => {
    tell = (phase) => desk.tell("phase-set", { phase });
    show({ phase: desk.state.phase });
  };
}

/** The steps of a way; a long one only begins until it is opened, so that nothing scrolls. */
function shortly(/** @type {string[]} */ lines, /** @type {boolean} */ whole) {
  const some = whole ? lines : lines.slice(0, STEPS);
  return some.join(", ") + (some.length < lines.length ? " …" : "");
}

/** The name of a way's family, which opens its page beside the talk. @param {any} way */
function familyLink(way, /** @type {any} */ words) {
  if (!way.family_name) return null;
  return make(
    "a",
    {
      class: "family-link",
      href: `/ways/${way.family}`,
      target: "_blank",
      rel: "noopener",
      "data-key": `family-${way.id}`,
      "aria-label": put(words.about_family, { family: way.family_name }),
    },
    way.family_name,
  );
}

/** @param {any} way @param {any} words @param {import("./desk.js").Desk} desk @param {any} edit */
function options(way, words, desk, edit) {
  const select = /** @type {HTMLSelectElement} */ (
    make(
      "select",
      { class: "field small", "aria-label": words.draw_as, "data-key": `draw-${way.id}` },
      way.pictures.map((/** @type {string} */ picture) =>
        make(
          "option",
          { value: picture, selected: picture === way.drawn },
          words.pictures[picture] ?? words.pictures_more[picture] ?? picture,
        ),
      ),
    )
  );
  select.addEventListener("change", () =>
    desk.tell("way-drawn-as", { way: way.id, picture: select.value }),
  );
  return make(
    "div",
    { class: "options" },
    groupingButtons(way.groupings, words, {
      key: `seen-as-${way.id}`,
      chosen: (grouping) => grouping.chosen,
      choose: ({ seen, chosen }) => !chosen && desk.tell("way-seen-as", { way: way.id, seen }),
    }),
    select,
    make(
      "button",
      {
        type: "button",
        class: "button small quiet",
        "data-key": `edit-${way.id}`,
        click: () => edit(way),
      },
      words.write_anew,
    ),
  );
}

/**
 * @param {HTMLElement} node @param {any} words @param {(way: any) => void} edit
 */
export function seenPanel(node, words, edit) {
  /** @type {import("./desk.js").Desk} */
  let desk;
  let open = "";
  const turn = (/** @type {string} */ id) => {
    open = open === id ? "" : id;
    desk.update();
  };
  const wayItem = (/** @type {any} */ way, /** @type {string} */ opened) =>
    make(
      "li",
      { class: way.id === opened ? "opened" : null },
      make(
        "button",
        {
          type: "button",
          class: "seen-way",
          "data-key": `seen-${way.id}`,
          "aria-expanded": String(way.id === opened),
          click: () => turn(way.id),
        },
        make("strong", {}, `${way.name || words.no_name}: `),
        way.lines.length ? shortly(way.lines, way.id === opened) : way.words,
      ),
      desk.state.board_token && familyLink(way, words),
      way.flags
        .slice(0, way.id === opened ? undefined : 1)
        .map((/** @type {string} */ flag) => make("p", { class: "flag", title: flag }, flag)),
      way.id === opened && options(way, words, desk, edit),
    );
  const olderItem = (/** @type {any} */ way, /** @type {string} */ opened) =>
    make(
      "li",
      {},
      make(
        "button",
        {
          type: "button",
          class: "button small quiet",
          "data-key": `seen-${way.id}`,
          "aria-expanded": String(way.id === opened),
          click: () => turn(way.id),
        },
        way.name || words.no_name,
      ),
    );
  /** Return the ways in the order told, the older ones as names alone until one is opened. */
  const list = (/** @type {any[]} */ ways, /** @type {string} */ opened) => {
    const older = ways.length > newest() + 1 ? ways.slice(0, -newest()) : [];
    const folded = older.filter((way) => way.id !== opened);
    const shown = ways.filter((way) => !folded.includes(way));
    return [
      folded.length > 0 &&
        make("ul", { class: "seen-older" }, folded.map((way) => olderItem(way, opened))),
      make("ul", {}, shown.map((way) => wayItem(way, opened))),
    ];
  };
  const show = panel(node, ({ problem, ways, answers, phase, opened }) => [
    // Many ways need the room; the problem stands in the bar as well.
    ways.length < MANY && make("p", { class: "small-problem" }, problem ?? words.nothing_yet),
    phase === "answers" && make("p", {}, answers.join(", ")),
    list(ways, opened),
  ]);
  return (/** @type {import("./desk.js").Desk} */ given) => {
    desk = given;
    const { board, phase, answers } = desk.state;
    show({
      problem: board.problem?.text,
      ways: desk.ways,
      answers: [...new Set(answers.map((/** @type {any} */ each) => each.text))],
      phase,
      opened: open,
    });
  };
}
