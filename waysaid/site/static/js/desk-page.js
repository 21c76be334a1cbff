/** The teacher's screen. */

import { answersPanel } from "./answers.js";
import { chipsPanel } from "./chips.js";
import { ConnectDesk, middlePanel } from "./connect-desk.js";
import { Desk } from "./desk.js";
import { addProblemDialog, dialog, moreDialog, screensDialog } from "./dialogs.js";
import { fill, make, started, words as pageWords } from "./dom.js";
import { imagePanel } from "./image-desk.js";
import { keys, letters } from "./keys.js";
import { Line } from "./line.js";
import { follow } from "./live.js";
import { namesPanel } from "./names.js";
import { csrfToken, Outbox } from "./outbox.js";
import { once } from "./press.js";
import { askPanel, privatePanel } from "./private.js";
import { relatePanel } from "./relate.js";
import { savedMark } from "./saved-mark.js";
import { phasesPanel, seenPanel } from "./seen.js";
import { stripPanel } from "./strip.js";
import { thinkPanel } from "./think.js";

const page = document.body.dataset;
const words = pageWords();
const csrf = csrfToken();
/** @type {(id: string) => any} */
const at = (id) => document.getElementById(id);

const showSaved = savedMark(at("saved"), at("alarm"), words);
const outbox = new Outbox({
  talk: page.talk ?? "",
  address: page.events ?? "",
  csrf,
  onChange: () => queueMicrotask(() => showSaved(outbox)),
});
outbox.onRefused = (sentence) => {
  const away = () => fill(at("refused"));
  fill(
    at("refused"),
    make("strong", {}, sentence),
    make("button", { type: "button", class: "button small", click: away }, words.understood),
  );
};

const desk = new Desk(words, outbox);
const line = new Line(
  { form: at("line"), preview: at("preview"), buttons: at("put"), who: at("who-typed") },
  desk,
  { address: page.read ?? "", csrf },
);
const chips = chipsPanel({ title: at("whose"), more: at("more-ways"), chips: at("chips") }, words);
const connect = new ConnectDesk(at("connecting"), desk, page.links ?? "");
const more = moreDialog(desk);
const screens = screensDialog(desk, {
  network: page.network ?? "",
  pairing: page.pairing ?? "",
  csrf,
});
const addProblem = addProblemDialog(desk);
const keyList = dialog("keys");
desk.onAdd = addProblem;
desk.typedChild = () => line.child;

/** The button says at once what was told: the state that says it too comes a moment later. */
const talk = () => {
  const on = at("talking").getAttribute("aria-pressed") !== "true";
  at("talking").setAttribute("aria-pressed", String(on));
  desk.tell("turn-and-talk", { on });
};
const pause = () => desk.tell(desk.state.board.paused ? "resumed" : "paused");

/** Keep the buttons of the bar in step with the state. */
function bar() {
  const { board, can_undo: undoable, closed } = desk.state;
  at("talking").setAttribute("aria-pressed", String(board.turn_and_talk));
  at("pause").textContent = board.paused ? words.go_on : words.pause;
  at("undo").disabled = !undoable && !outbox.last();
  at("next").textContent = desk.nextStep.label;
  at("closed").hidden = !closed;
}

desk.panels = [
  bar,
  stripPanel(at("strip"), words, addProblem),
  thinkPanel(at("thinking"), words),
  namesPanel(at("names"), at("legend"), words),
  answersPanel(at("answers"), at("another"), words),
  chips.update,
  relatePanel(at("relate"), words),
  phasesPanel(at("phases"), words),
  imagePanel(at("image"), words),
  seenPanel(at("seen"), words, (way) => line.edit(way)),
  privatePanel(at("private"), words),
  askPanel(at("ask"), words),
  middlePanel(at("telling"), at("connecting")),
  () => line.update(),
  () => connect.update(),
  () => more.update(),
  () => screens.update(),
];
const stacked = matchMedia("(max-width: 61.99rem)");
desk.onChosen = () => {
  const middle = desk.state.phase === "connect" ? "connecting" : "telling";
  if (stacked.matches) at(middle).scrollIntoView();
};
desk.onLetGo = () => line.clear();
desk.onDone = () => {
  if (stacked.matches) at("names").scrollIntoView({ block: "nearest" });
  if (!matchMedia("(pointer: coarse)").matches) line.input.focus();
};

at("next").addEventListener("click", once(() => desk.nextStep.act()));
at("undo").addEventListener("click", () => desk.undo());
at("pause").addEventListener("click", pause);
at("talking").addEventListener("click", talk);
at("no-name").addEventListener("click", () => desk.done());
at("open-screens").addEventListener("click", screens.open);
at("open-more").addEventListener("click", more.open);
at("open-keys").addEventListener("click", () => keyList.showModal());
at("letters-off").checked = letters.off;
at("letters-off").addEventListener("change", (/** @type {any} */ event) => {
  letters.off = event.target.checked;
});

keys(
  {
    n: () => desk.nextStep.act(),
    u: () => desk.undo(),
    t: talk,
    p: pause,
    a: () => at("another").querySelector("input").focus(),
    l: () => line.input.focus(),
    "/": () => line.input.focus(),
    "?": () => keyList.showModal(),
  },
  {
    chip: chips.press,
    undo: () => desk.undo(),
    escape: () => desk.done(),
  },
);

follow({
  address: () => page.live ?? "",
  onState: (state) => {
    outbox.confirm(state.saved_by, state.order);
    desk.take(state);
  },
  onTouch: (held) => {
    at("touch").textContent = held ? "" : words.no_touch;
  },
});
started();
