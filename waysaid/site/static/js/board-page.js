/** The class's screen. */

import { Board } from "./board.js";
import { started, words } from "./dom.js";
import { follow, onReshape, wide } from "./live.js";
import { remembered, touchMark } from "./touch.js";

const root = /** @type {HTMLElement} */ (document.getElementById("main"));
const live = document.body.dataset.live ?? "";
const says = words();
const board = new Board(root, says);
const memory = remembered(`waysaid-board:${live}`);

const last = memory.get();
if (last) board.show(last);
started();

const reopen = follow({
  address: () => `${live}?wide=${wide()}`,
  onState: (state) => {
    memory.set(state);
    board.show(state);
  },
  onTouch: touchMark(says.lost_touch),
});
onReshape(reopen);

const hand = document.getElementById("hand");
if (hand) import("./pen.js").then(({ penOnBoard }) => penOnBoard(board, hand, says));
