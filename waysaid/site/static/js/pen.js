/** Draw on the ways with a pen, a finger or a mouse; each stroke is sent when it is finished. */

import { fill, make, randomId } from "./dom.js";
import { unit } from "./fit.js";
import { viewOf } from "./phases.js";
import { strokeGroups, strokePath } from "./strokes.js";

/** Points nearer than this to the last one are left out, in tenths of a unit. */
const NEAR = 6;
/** Numbers in one stroke; a longer one goes on as the next. */
const LONGEST = 1200;

export class Pen {
  /**
   * @param {import("./board.js").Board} board
   * @param {(kind: string, body: any) => Promise<number>} tell
   */
  constructor(board, tell) {
    this.board = board;
    this.tell = tell;
    this.on = false;
    /** @type {{id: string, problem: string, strokes: number[][]}[]} */
    this.drawn = [];
    this.points = /** @type {number[]} */ ([]);
    this.path = /** @type {SVGElement | null} */ (null);
    this.onChange = () => {};
    const { sheet } = board;
    sheet.addEventListener("pointerdown", (event) => this.down(event));
    sheet.addEventListener("pointermove", (event) => this.move(event));
    sheet.addEventListener("pointerup", () => this.up());
    sheet.addEventListener("pointercancel", () => this.up());
  }

  /** Whether there is something to draw on. */
  get ready() {
    const { state } = this.board;
    return Boolean(state?.problem) && viewOf(state) === "ways";
  }

  turn(on = !this.on) {
    this.on = on && this.ready;
    this.board.root.classList.toggle("drawing", this.on);
    this.onChange();
  }

  /** The board was painted anew: draw what is not in its state yet. */
  shown() {
    const { state, layer } = this.board;
    const saved = new Set((state.strokes ?? []).map((/** @type {any} */ one) => one.id));
    const problem = state.problem?.id;
    this.drawn = this.drawn.filter((one) => !saved.has(one.id) && one.problem === problem);
    layer.append(...strokeGroups(this.drawn));
    if (this.path) layer.append(this.path);
    if (this.on && !this.ready) this.turn(false);
    this.onChange();
  }

  /** @param {PointerEvent} event @returns {[number, number]} */
  place(event) {
    const box = this.board.sheet.getBoundingClientRect();
    const tenth = unit() / 10;
    return [
      Math.round((event.clientX - box.left) / tenth),
      Math.round((event.clientY - box.top) / tenth),
    ];
  }

  /** @param {PointerEvent} event */
  down(event) {
    if (!this.on || !event.isPrimary || event.button > 0) return;
    event.preventDefault();
    this.board.sheet.setPointerCapture(event.pointerId);
    this.begin(this.place(event));
  }

  /** @param {number[]} points */
  begin(points) {
    this.points = [...points];
    this.path = strokePath(this.points);
    this.board.layer.append(this.path);
  }

  /** @param {PointerEvent} event */
  move(event) {
    if (!this.path || !event.isPrimary) return;
    const [x, y] = this.place(event);
    const [lastX, lastY] = this.points.slice(-2);
    if (Math.hypot(x - lastX, y - lastY) < NEAR) return;
    this.points.push(x, y);
    this.path.setAttribute("d", strokePath(this.points).getAttribute("d") ?? "");
    if (this.points.length >= LONGEST) {
      this.up();
      this.begin([x, y]);
    }
  }

  up() {
    if (!this.path) return;
    const stroke = { id: randomId(), problem: this.board.state.problem.id, strokes: [this.points] };
    this.path.remove();
    this.path = null;
    this.drawn.push(stroke);
    this.board.layer.append(...strokeGroups([stroke]));
    this.tell("strokes-drawn", stroke).catch(() => this.forget(stroke.id));
    this.onChange();
  }

  /** @param {string} id */
  forget(id) {
    this.drawn = this.drawn.filter((one) => one.id !== id);
    this.board.layer.querySelector(`[data-id="${CSS.escape(id)}"]`)?.remove();
    this.onChange();
  }

  /** The last stroke on the board, or null. */
  get last() {
    return this.drawn.at(-1)?.id ?? this.board.state?.strokes?.at(-1)?.id ?? null;
  }

  /** Rub the last stroke out. */
  rub() {
    const id = this.last;
    if (!id) return;
    this.forget(id);
    this.tell("erased", { id });
  }
}

/** Return the pen's two buttons; they show only where there is something to draw on. */
export function penButtons(/** @type {Pen} */ pen, /** @type {any} */ words, name = "button") {
  const place = make("span", { class: "pen" });
  const show = () =>
    fill(
      place,
      pen.ready &&
        make(
          "button",
          {
            type: "button",
            class: name,
            "data-key": "pen",
            "aria-pressed": String(pen.on),
            click: () => pen.turn(),
          },
          words.pen,
        ),
      pen.on &&
        pen.last &&
        make(
          "button",
          { type: "button", class: name, "data-key": "rub", click: () => pen.rub() },
          words.pen_rub,
        ),
    );
  pen.onChange = show;
  show();
  return place;
}
