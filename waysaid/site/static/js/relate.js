/** What else a child may do: pass, agree with a way, add to it, or change her own. */

import { make, panel } from "./dom.js";

/** So many of the newest ways have a button each; those before them come when asked for. */
const NEWEST = 4;

/** @param {string} key @param {string} text @param {() => void} click @param {boolean} [on] */
const small = (key, text, click, on) =>
  make(
    "button",
    {
      type: "button",
      class: "button small quiet",
      "data-key": key,
      "aria-pressed": on === undefined ? null : String(on),
      click,
    },
    text,
  );

/**
 * @param {string} lead @param {any[]} ways @param {(way: any) => Element} button
 * @returns {Element | null}
 */
function group(lead, ways, button) {
  if (!ways.length) return null;
  const head = make("span", { class: "lead" }, lead);
  return make("span", { class: "group" }, head, ways.map(button));
}

/** @param {HTMLElement} node @param {any} words */
export function relatePanel(node, words) {
  /** @type {import("./desk.js").Desk} */
  let desk;
  /** The child for whom the earlier ways are shown too. @type {string | null} */
  let allFor = null;
  const pass = () => {
    desk.tell("passed", { problem: desk.problem, child: desk.speaker });
    desk.done();
  };
  const agree = (/** @type {string} */ way) => {
    desk.tell("way-agreed", { way, child: desk.speaker });
    desk.done();
  };
  const relate = (/** @type {"adds" | "changes"} */ kind, /** @type {string} */ to) => {
    const same = desk.relation.kind === kind && desk.relation.to === to;
    desk.relation = same ? { kind: "own", to: null } : { kind, to };
    desk.update();
  };
  const showAll = () => {
    allFor = desk.speaker;
    desk.update();
  };
  const show = panel(node, ({ ways, speaker, relation, all }) => {
    if (!speaker) return null;
    const told = ways.filter((/** @type {any} */ way) => way.child !== speaker);
    const others = all ? told : told.slice(-NEWEST);
    const own = ways.filter((/** @type {any} */ way) => way.child === speaker);
    const on = (/** @type {string} */ kind, /** @type {string} */ id) =>
      relation.kind === kind && relation.to === id;
    const name = (/** @type {any} */ way) => way.name || words.no_name;
    return [
      small("pass", words.pass, pass),
      own.map((/** @type {any} */ way, /** @type {number} */ index) =>
        small(
          `changes-${way.id}`,
          own.length > 1 ? `${words.changes_own} ${index + 1}` : words.changes_own,
          () => relate("changes", way.id),
          on("changes", way.id),
        ),
      ),
      group(words.same_as, others, (way) =>
        small(`same-${way.id}`, name(way), () => agree(way.id)),
      ),
      group(words.adds_to, others, (way) =>
        small(
          `adds-${way.id}`,
          name(way),
          () => relate("adds", way.id),
          on("adds", way.id),
        ),
      ),
      others.length < told.length && small("earlier-ways", words.earlier_ways, showAll),
    ];
  });
  return (/** @type {import("./desk.js").Desk} */ given) => {
    desk = given;
    const ways = desk.ways.map((/** @type {any} */ way) => ({
      id: way.id,
      child: way.child,
      name: way.name,
    }));
    const speaker = desk.problem && desk.speaker;
    show({ ways, speaker, relation: desk.relation, all: speaker === allFor });
  };
}
