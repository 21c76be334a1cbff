/** What the desk's panels share: the state, who is speaking, and how to tell the server. */

import { randomId } from "./dom.js";
import { Undo } from "./undo.js";

/**
 * @typedef {{kind: "own" | "adds" | "changes", to: string | null}} Relation
 */

/** Milliseconds that a tap's own changes to this screen may wait for the next state (our choice). */
const BLINK = 100;

export class Desk {
  /** @param {any} words @param {import("./outbox.js").Outbox} outbox */
  constructor(words, outbox) {
    this.words = words;
    this.outbox = outbox;
    this.undoing = new Undo(outbox, (kind, body) => this.tell(kind, body));
    this.state = /** @type {any} */ (null);
    this.speaker = /** @type {string | null} */ (null);
    this.relation = /** @type {Relation} */ ({ kind: "own", to: null });
    this.editing = /** @type {string | null} */ (null);
    /** A way was just put on the board, and nobody was chosen since. */
    this.shared = false;
    this.settling = 0;
    /** @type {((desk: Desk) => void)[]} */
    this.panels = [];
    /** Told when a way was put on the board and the desk is ready for the next child. */
    this.onDone = () => {};
    /** Told at once when nobody is chosen any more. */
    this.onLetGo = () => {};
    /** Asks for a problem of the teacher's own. */
    this.onAdd = () => {};
    /** The child whose name is typed in the line. */
    this.typedChild = () => /** @type {string | null} */ (null);
    /** Told when a child was chosen. */
    this.onChosen = () => {};
  }

  /** Show a new state. */
  take(/** @type {any} */ state) {
    this.state = state;
    this.undoing.take(state.can_undo);
    this.update();
  }

  update() {
    clearTimeout(this.settling);
    if (this.shared) this.onDone();
    this.shared = false;
    if (this.state) this.panels.forEach((panel) => panel(this));
  }

  /** Choose who is speaking; the same child again means nobody. */
  choose(/** @type {string | null} */ child) {
    this.speaker = this.speaker === child ? null : child;
    this.relation = { kind: "own", to: null };
    this.update();
    if (this.speaker) this.onChosen();
  }

  /** Return the ways told for the problem of the moment, in the order heard. */
  get ways() {
    return this.state.ways.filter((/** @type {any} */ way) => way.problem === this.problem);
  }

  /** Return the chips, those this child is likely to say first. */
  get chips() {
    const { chips, chip_orders: orders } = this.state;
    const order = this.speaker && orders?.[this.speaker];
    return order ? order.map((/** @type {number} */ at) => chips[at]).filter(Boolean) : chips;
  }

  /** @param {string | null} child */
  name(child) {
    const known = this.state?.roster.find((/** @type {any} */ each) => each.id === child);
    return known?.name ?? this.words.no_name;
  }

  /** Return the id of the problem of the moment, or null. */
  get problem() {
    return this.state?.board.problem?.id ?? null;
  }

  /** @param {string} kind @param {Record<string, any>} [body] */
  tell(kind, body = {}) {
    return this.outbox.add({ kind, ...body });
  }

  /** Whose way it would be as things stand now, and of what; kept while a line is being read. */
  get telling() {
    const child = this.speaker ?? this.typedChild();
    return { problem: this.problem, child, relation: this.relation, editing: this.editing };
  }

  /**
   * Put a way on the board, or write the one that is being edited anew.
   * @param {any} way steps, words, family, answer, picture, foreseen
   * @param {Desk["telling"]} [telling]
   */
  record(way, { problem, child, relation, editing } = this.telling) {
    const { foreseen, ...told } = way;
    if (editing) {
      this.tell("way-edited", { way: editing, ...told });
    } else if (problem) {
      const { kind, to } = relation;
      const body = { id: randomId(), problem, child, relation: kind, to };
      this.tell("way-shared", { ...body, ...told, foreseen });
    }
  }

  /**
   * Put a way on the board and be ready for the next. This screen is drawn anew once, with the next
   * state, or in the blink of an eye where none comes: drawn at once as well, it would take from
   * the board the time to show what was just sent. Until then a second tap is the same tap again:
   * it tells nothing.
   */
  share(/** @type {any} */ way) {
    if (!this.problem || this.shared) return;
    this.record(way);
    this.letGo();
    this.shared = true;
    this.settling = setTimeout(() => this.update(), BLINK);
  }

  /** Be ready for the next child. */
  done() {
    this.letGo();
    this.onDone();
    this.update();
  }

  /** Choose nobody; what is typed from now on is the next child's. */
  letGo() {
    this.speaker = null;
    this.editing = null;
    this.relation = { kind: "own", to: null };
    this.onLetGo();
  }

  /** Take back the last thing done, saved or not yet. */
  undo() {
    this.undoing.press();
  }

  /** The problem that comes next, or null after the last. */
  get upcoming() {
    const { problems } = this.state;
    const now = problems.findIndex((/** @type {any} */ each) => each.now);
    const after = problems.slice(now + 1).find((/** @type {any} */ each) => !each.shown);
    return after ?? problems.find((/** @type {any} */ each) => !each.shown) ?? null;
  }

  /** What the main button does next: a problem, connecting, the thank-you, the end. */
  get nextStep() {
    const { phase, closed } = this.state;
    if (closed) return { label: this.words.open_again, act: () => this.tell("resumed") };
    if (phase === "after") return { label: this.words.end_talk, act: () => this.tell("closed") };
    if (phase === "connect") return this.turnTo("after", this.words.say_thanks);
    const next = this.upcoming;
    if (!next && !this.problem) return { label: this.words.add_problem, act: () => this.onAdd() };
    if (!next) return this.turnTo("connect", this.words.connect);
    const label = this.problem ? this.words.next_problem : this.words.first_problem;
    return { label, act: () => this.tell("problem-shown", { problem: next.id }) };
  }

  /** @param {string} phase @param {string} label */
  turnTo(phase, label) {
    return { label, act: () => this.tell("phase-set", { phase }) };
  }
}
