/**
 * The board with a thin drawer, for a room that mirrors one screen. The drawer shows names and
 * what is typed, and nothing that was understood, foreseen or noted.
 */

import { Board } from "./board.js";
import { fill, make, panel, put, randomId, started, words as pageWords } from "./dom.js";
import { keepable } from "./image-view.js";
import { follow, onReshape, wide } from "./live.js";
import { Marks } from "./marks.js";
import { splitLine } from "./names.js";
import { csrfToken, Outbox } from "./outbox.js";
import { Pen, penButtons } from "./pen.js";
import { savedMark } from "./saved-mark.js";
import { laySpots } from "./spots.js";
import { remembered, touchMark } from "./touch.js";
import { Undo } from "./undo.js";
import { changeOf } from "./what-if.js";

const page = document.body.dataset;
const words = pageWords();
const board = new Board(/** @type {HTMLElement} */ (document.getElementById("main")), words);
const drawer = /** @type {HTMLElement} */ (document.getElementById("drawer"));
const memory = remembered(`waysaid-one:${page.live}`);

const alarm = make("p", { class: "drawer-alarm", role: "alert" });
const bar = make("div", { class: "drawer-alarm", role: "alert" });
const mark = make("p", { class: "saved", role: "status" });
const showSaved = savedMark(mark, bar, words);
const outbox = new Outbox({
  talk: page.talk ?? "",
  address: page.events ?? "",
  csrf: csrfToken(),
  onChange: () => queueMicrotask(() => showSaved(outbox)),
});
outbox.onRefused = (sentence) => {
  alarm.textContent = sentence;
};
const tell = (/** @type {string} */ kind, /** @type {any} */ body = {}) => {
  alarm.textContent = "";
  return outbox.add({ kind, ...body });
};

const undoing = new Undo(outbox, tell);

/** @type {any} */
let state = null;
let speaker = /** @type {string | null} */ (null);

const input = /** @type {HTMLInputElement} */ (
  make("input", {
    class: "field one-line",
    autocomplete: "off",
    autocapitalize: "off",
    spellcheck: "false",
    placeholder: words.line_hint,
    "aria-label": words.line_hint,
  })
);
const names = make("ul", { class: "one-names", hidden: true });
const who = make("button", {
  type: "button",
  class: "button small quiet who-button",
  "aria-expanded": "false",
  click: () => openNames(names.hidden),
});
const picture = /** @type {HTMLSelectElement} */ (
  make(
    "select",
    { class: "field small", "aria-label": words.draw_as },
    Object.entries({ ...words.pictures, ...words.pictures_more }).map(([value, text]) =>
      make("option", { value }, String(text)),
    ),
  )
);
const phase = /** @type {HTMLSelectElement} */ (
  make(
    "select",
    { class: "field small", "aria-label": words.board_shows },
    Object.entries(words.phases).map(([value, text]) => make("option", { value }, String(text))),
  )
);
phase.addEventListener("change", () => tell("phase-set", { phase: phase.value }));

/** @param {string} text @param {() => void} click @param {string} [more] */
const button = (text, click, more = "") =>
  make("button", { type: "button", class: `button small quiet ${more}`, click }, text);

/** One more look at a quick image, then to let it stay or hide it again. */
const look = button(words.once_more, () => {
  const problem = state?.problem?.id;
  if (state?.once_more && !state.image?.scene) tell("looked-again", { problem });
  else tell("image-kept", { problem, on: !state?.image?.scene });
});

/** @param {boolean} open */
function openNames(open) {
  names.hidden = !open;
  who.setAttribute("aria-expanded", String(open));
  if (open) /** @type {HTMLElement | null} */ (names.querySelector("button"))?.focus();
}

/** @param {string | null} child */
function choose(child) {
  speaker = speaker === child ? null : child;
  openNames(false);
  showWho();
  input.focus();
}

function showWho() {
  const known = state?.roster.find((/** @type {any} */ each) => each.id === speaker);
  who.textContent = known?.name ?? words.who_is_speaking;
}

/** Return who speaks and what was said; null where the child has to be chosen first. */
function said() {
  const line = input.value.trim();
  if (speaker || !state) return { child: speaker, line };
  const { who: found, said: rest } = splitLine(state.roster, line);
  if (found.length > 1) {
    alarm.textContent = put(words.which_of, { names: found.map((one) => one.name).join(", ") });
    return null;
  }
  return { child: found[0]?.id ?? null, line: rest };
}

function done() {
  input.value = "";
  speaker = null;
  showWho();
  input.focus();
}

/** Put what was said on the board: a way, or while connecting what a child noticed. */
function shareWay() {
  const given = said();
  if (given && state?.phase === "connect") return shareNoticing(given);
  if (!given?.line || !state?.problem) return;
  tell("way-shared", {
    id: randomId(),
    problem: state.problem.id,
    child: given.child,
    line: given.line,
    picture: picture.value,
  });
  done();
}

/** @param {{child: string | null, line: string}} given */
function shareNoticing({ child, line }) {
  const { chosen } = marks;
  if (!line && !chosen.length) return;
  const join = chosen.length > 1;
  tell("noticed", { id: randomId(), child, words: line, marks: chosen, join });
  marks.clear();
  done();
}

/** Change the numbers chosen on the board by what stands in the line. */
function suppose() {
  const given = said();
  if (!given) return;
  const change = changeOf(given.line);
  const places = marks.chosen.filter((mark) => typeof mark.place === "number");
  if (!change || !places.length) {
    alarm.textContent = words.what_if_needs;
    return input.focus();
  }
  tell("what-if", { id: randomId(), ...change, places, child: given.child });
  marks.clear();
  done();
}

function shareAnswer() {
  const given = said();
  if (!given?.line || !state?.problem) return;
  const { child, line } = given;
  tell("answer-heard", { id: randomId(), problem: state.problem.id, text: line, child });
  done();
}

async function shareProblem() {
  const text = input.value.trim();
  if (!text) return input.focus();
  const problem = randomId();
  try {
    await tell("problem-added", { problem, text, after: state?.problem?.id ?? null });
    tell("problem-shown", { problem });
    done();
  } catch {
    input.focus();
  }
}

function undo() {
  undoing.press();
}

function next() {
  if (state?.next) tell("problem-shown", { problem: state.next });
  else tell("phase-set", { phase: state?.phase === "connect" ? "after" : "connect" });
}

const main = make("button", { class: "button small main" }, words.as_way);
const asAnswer = button(words.as_answer, shareAnswer);
const asProblem = button(words.as_problem, shareProblem);
const whatIf = button(words.what_if, suppose);
const form = make(
  "form",
  {
    class: "drawer-line",
    submit: (/** @type {Event} */ event) => {
      event.preventDefault();
      shareWay();
    },
  },
  who,
  input,
  main,
  picture,
  asAnswer,
  asProblem,
  whatIf,
);
/** What is chosen on the board while connecting. */
const marks = new Marks(() => laySpots(board, marks));
const pen = new Pen(board, tell);
const tools = make(
  "div",
  { class: "drawer-tools" },
  penButtons(pen, words, "button small quiet"),
  button(words.undo, undo),
  button(words.turn_and_talk, () => tell("turn-and-talk", { on: !state?.turn_and_talk })),
  phase,
  look,
  button(words.next, next, "next"),
  mark,
);
const handle = make("button", {
  type: "button",
  class: "button small handle",
  click: () => open(inside.hidden),
});
const row = make("div", { class: "drawer-row" }, form, tools);
const inside = make("div", { class: "drawer-inside" }, alarm, bar, names, row);
row.inert = true;
fill(drawer, inside, handle);

/** @param {boolean} wanted */
function open(wanted) {
  inside.hidden = !wanted;
  handle.textContent = wanted ? words.shut_drawer : words.show_drawer;
  handle.setAttribute("aria-expanded", String(wanted));
  if (wanted) input.focus();
}

/** Let the drawer be used once it is known where the talk stands: what a tap says hangs on it. */
function allowed() {
  if (!row.inert) return;
  row.inert = false;
  if (!inside.hidden) input.focus();
}

const showNames = panel(names, ({ roster }) =>
  roster.map((/** @type {any} */ child) =>
    make("li", {}, button(child.name, () => choose(child.id))),
  ),
);

/** @param {any} given */
function take(given) {
  state = given;
  allowed();
  outbox.show(given.order);
  undoing.take(given.can_undo);
  board.show(given);
  showNames({ roster: given.roster });
  showWho();
  phase.value = given.phase;
  look.hidden = !given.image;
  const asking = given.once_more ? words.once_more : words.image_keep;
  look.textContent = given.image?.scene ? words.image_hide : asking;
  const connecting = given.phase === "connect";
  main.textContent = connecting ? words.put_on_board : words.as_way;
  for (const node of [picture, asAnswer, asProblem]) node.hidden = connecting;
  whatIf.hidden = !connecting;
  if (!connecting && marks.chosen.length) marks.clear();
}

/** Leave the drawer its room; the names lie over the board for as long as one is chosen. */
new ResizeObserver(() => {
  const high = inside.hidden ? 0 : inside.offsetHeight;
  document.body.style.setProperty("--drawer", `${high}px`);
  board.again();
}).observe(inside);

board.onShown = () => {
  pen.shown();
  laySpots(board, marks);
};
const before = memory.get();
if (before) take(before);
open(true);
showWho();
started();
const reopen = follow({
  address: () => `${page.live}?wide=${wide()}`,
  onState: (given) => {
    memory.set(keepable(given));
    take(given);
  },
  onTouch: touchMark(words.lost_touch),
});
onReshape(reopen);
