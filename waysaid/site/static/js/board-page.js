/** The class's screen. */

import { Board } from "./board.js";
import { started, words } from "./dom.js";
import { keepable } from "./image-view.js";
import { follow, onReshape, wide } from "./live.js";
import { remembered, touchMark } from "./touch.js";

const root = /** @type {HTMLElement} */ (document.getElementById("main"));
const page = document.body.dataset;
const says = words();
const board = new Board(root, says);
const memory = remembered(`waysaid-board:${page.live}`);

const last = memory.get();
if (last) board.show(last);
started();

const reopen = follow({
  address: () => `${page.live}?wide=${wide()}`,
  onState: (state) => {
    board.show(state);
    // Kept once it is painted: the class waits for nothing but the board.
    setTimeout(() => memory.set(keepable(state)));
  },
  onTouch: touchMark(says.lost_touch),
});
onReshape(reopen);

/** Let a hand draw on the ways, where this window may record it. */
async function offerPen() {
  const [{ Pen, penButtons }, { Outbox, csrfToken }] = await Promise.all([
    import("./pen.js"),
    import("./outbox.js"),
  ]);
  const outbox = new Outbox({
    talk: page.talk ?? "",
    address: page.events ?? "",
    csrf: csrfToken(),
    onChange: () => {},
  });
  const pen = new Pen(board, (kind, body) => outbox.add({ kind, ...body }));
  board.onShown = () => pen.shown();
  document.getElementById("hand")?.append(penButtons(pen, says, "hand-button"));
}

if (page.events) offerPen();
