/** Draw on the board with a pen, a finger or a mouse; a stroke is sent when it is finished. */

import { draw, fill, make, randomId } from "./dom.js";
import { unit } from "./fit.js";
import { groundOf, groundUnder, placeOf } from "./ground.js";
import { viewOf } from "./phases.js";
import { groupAt, lineThrough } from "./strokes.js";
import { thinned } from "./thin.js";

/** Points nearer than this to the last one are left out, in units of the board. */
const NEAR = 0.25;
/** How far the line may be from where the hand was, in units of the board. */
const HAIR = 0.12;
/** Numbers in one stroke; a longer one goes on as the next. */
const LONGEST = 1200;
/** Milliseconds after a pen's stroke in which a touch is the side of the hand that holds it. */
const PALM = 1000;

/**
 * @typedef {object} Stroke the one being drawn
 * @property {number} pointer
 * @property {import("./ground.js").Ground} ground
 * @property {import("./ground.js").Place} place
 * @property {number[]} points
 * @property {SVGElement} group
 * @property {SVGElement} path
 */

export class Pen {
  /**
   * @param {import("./board.js").Board} board
   * @param {(kind: string, body: any) => Promise<number>} tell
   */
  constructor(board, tell) {
    this.board = board;
    this.tell = tell;
    this.on = false;
    /** @type {(import("./strokes.js").Drawn & {problem: string | null})[]} */
    this.drawn = [];
    this.stroke = /** @type {Stroke | null} */ (null);
    this.penSeen = -PALM;
    this.onChange = () => {};
    const { sheet } = board;
    sheet.addEventListener("pointerdown", (event) => this.down(event));
    sheet.addEventListener("pointermove", (event) => this.move(event));
    sheet.addEventListener("pointerup", (event) => this.up(event));
    sheet.addEventListener("pointercancel", (event) => this.up(event));
  }

  get view() {
    return viewOf(this.board.state);
  }

  /** Whether there is something to draw on. */
  get ready() {
    const { state } = this.board;
    return Boolean(state?.problem || state?.connect) && groundOf(this.view) !== null;
  }

  turn(on = !this.on) {
    this.on = on && this.ready;
    this.board.root.classList.toggle("drawing", this.on);
    this.onChange();
  }

  /** The board was painted anew: keep what is not in its state yet. */
  shown() {
    const { state } = this.board;
    const saved = new Set((state.strokes ?? []).map((/** @type {any} */ one) => one.id));
    this.drawn = this.drawn.filter((one) => !saved.has(one.id));
    this.lay();
    if (this.stroke) this.board.layer.append(this.stroke.group);
    if (this.on && !this.ready) this.turn(false);
    this.onChange();
  }

  /** Those of this window's strokes that belong to what is shown. */
  get here() {
    const on = groundOf(this.view);
    const problem = on === "string" ? null : this.board.state.problem?.id;
    return this.drawn.filter((one) => one.on === on && one.problem === problem);
  }

  lay() {
    this.board.fresh = this.here;
    this.board.drawStrokes();
  }

  /** @param {PointerEvent} event @param {import("./ground.js").Place} place */
  point(event, place) {
    const box = this.board.sheet.getBoundingClientRect();
    return [
      Math.round((event.clientX - box.left - place.x) / place.wide),
      Math.round((event.clientY - box.top - place.y) / place.scale),
    ];
  }

  /** Tell whether this touch is the hand that holds a pen. */
  isPalm(/** @type {PointerEvent} */ event) {
    if (event.pointerType === "pen") this.penSeen = event.timeStamp;
    return event.pointerType === "touch" && event.timeStamp - this.penSeen < PALM;
  }

  /** @param {PointerEvent} event */
  down(event) {
    if (!this.on || event.button > 0 || this.isPalm(event)) return;
    if (this.stroke && event.pointerType !== "pen") return;
    this.stroke?.group.remove();
    const { sheet } = this.board;
    const ground = groundUnder(sheet, this.view, event.clientX, event.clientY);
    const place = placeOf(sheet, ground);
    if (!place) return;
    event.preventDefault();
    sheet.setPointerCapture(event.pointerId);
    this.begin(event.pointerId, ground, place, this.point(event, place));
  }

  /**
   * @param {number} pointer @param {import("./ground.js").Ground} ground
   * @param {import("./ground.js").Place} place @param {number[]} points
   */
  begin(pointer, ground, place, points) {
    const path = draw("path", { d: lineThrough(points) });
    const group = groupAt(place, "");
    group.append(path);
    this.board.layer.append(group);
    this.stroke = { pointer, ground, place, points, group, path };
  }

  /** @param {PointerEvent} event */
  move(event) {
    const { stroke } = this;
    if (stroke?.pointer !== event.pointerId) return;
    if (event.pointerType === "pen") this.penSeen = event.timeStamp;
    const every = event.getCoalescedEvents?.() ?? [];
    const near = (NEAR * unit()) / stroke.place.scale;
    for (const each of every.length ? every : [event]) {
      const [x, y] = this.point(each, stroke.place);
      const [lastX, lastY] = stroke.points.slice(-2);
      if (Math.hypot(x - lastX, y - lastY) >= near) stroke.points.push(x, y);
    }
    stroke.path.setAttribute("d", lineThrough(stroke.points));
    if (stroke.points.length < LONGEST) return;
    const { pointer, ground, place, points } = stroke;
    this.finish();
    this.begin(pointer, ground, place, points.slice(-2));
  }

  /** @param {PointerEvent} event */
  up(event) {
    if (this.stroke?.pointer === event.pointerId) this.finish();
  }

  finish() {
    const { stroke } = this;
    if (!stroke) return;
    const points = thinned(stroke.points, (HAIR * unit()) / stroke.place.scale);
    const problem = stroke.ground.on === "string" ? null : this.board.state.problem?.id ?? null;
    const drawn = { id: randomId(), problem, ...stroke.ground, strokes: [points] };
    stroke.group.remove();
    this.stroke = null;
    this.drawn.push(drawn);
    this.lay();
    this.tell("strokes-drawn", drawn).catch(() => this.forget(drawn.id));
    this.onChange();
  }

  /** @param {string} id */
  forget(id) {
    this.drawn = this.drawn.filter((one) => one.id !== id);
    this.lay();
    this.board.layer.querySelector(`[data-id="${CSS.escape(id)}"]`)?.remove();
    this.onChange();
  }

  /** The last stroke on the board, or null. */
  get last() {
    return this.here.at(-1)?.id ?? this.board.state?.strokes?.at(-1)?.id ?? null;
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
