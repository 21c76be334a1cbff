/** Take back the last thing done, each press one thing more, however fast they come. */

/** @typedef {{client: string, sequence: number}} Done */

const same = (/** @type {Done | null} */ one, /** @type {Done | null} */ other) =>
  one?.client === other?.client && one?.sequence === other?.sequence;

export class Undo {
  /**
   * @param {import("./outbox.js").Outbox} outbox
   * @param {(kind: string, body: any) => any} tell
   */
  constructor(outbox, tell) {
    this.outbox = outbox;
    this.tell = tell;
    this.saved = /** @type {Done | null} */ (null);
    this.asked = /** @type {Done | null} */ (null);
    this.more = 0;
  }

  /** Hear which saved event is the last one now. */
  take(/** @type {Done | null | undefined} */ saved) {
    this.saved = saved ?? null;
    if (!this.more || same(this.saved, this.asked)) return;
    this.more -= 1;
    this.press();
  }

  /** What one press takes back would be the same as the press before: wait for the state. */
  press() {
    const last = this.outbox.last() ?? this.saved;
    if (!last) {
      this.more = 0;
      return;
    }
    if (same(last, this.asked)) {
      this.more += 1;
      return;
    }
    this.asked = { client: last.client, sequence: last.sequence };
    this.tell("undo", { event: this.asked });
  }
}
