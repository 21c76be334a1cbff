/**
 * What the desk tells the server. An event is kept in this browser until the server says it is
 * saved, and sent again until then; the server knows each by client and sequence, so that sending
 * twice is harmless.
 */

import { randomId } from "./dom.js";

const FIRST_WAIT = 1000;
const LONGEST_WAIT = 15000;
const PATIENCE = 10000;
/** Answers that mean: never send this one again. */
const REFUSED = new Set([400, 409, 413, 422]);

/**
 * @typedef {{sequence: number, body: Record<string, any>}} Event
 * @typedef {{client: string, next: number, waiting: Event[]}} Kept
 * @typedef {object} Awaited
 * @property {(order: number) => void} done
 * @property {(why: Error) => void} failed
 * @property {boolean} awaited whether somebody tells of a refusal
 */

/** The server answered, and has not saved it. */
class NotSaved extends Error {}

export class Outbox {
  /**
   * @param {{talk: string, address: string, csrf: string, onChange: () => void}} options
   */
  constructor({ talk, address, csrf, onChange }) {
    this.key = `waysaid-outbox:${talk}`;
    this.address = address;
    this.csrf = csrf;
    this.onChange = onChange;
    this.trouble = false;
    /** What the server said about it; empty where it could not be reached. */
    this.why = "";
    this.wait = FIRST_WAIT;
    this.sending = false;
    this.timer = 0;
    /** Told of a refusal that nobody waits for. */
    this.onRefused = (/** @type {string} */ _sentence) => {};
    /** @type {Map<number, Awaited>} */
    this.promises = new Map();
    /** @type {Kept} */
    this.memory = { client: randomId(), next: 1, waiting: [] };
    /** The order of the state that is shown. */
    this.shown = -1;
    /** What is saved and not shown yet. @type {(Event & {order: number})[]} */
    this.unseen = [];
    this.keep(this.kept());
    addEventListener("online", () => this.send());
    this.send();
  }

  /**
   * Return what is kept; other windows of this browser may have written it since.
   * @returns {Kept}
   */
  kept() {
    try {
      return JSON.parse(localStorage.getItem(this.key) ?? "null") ?? this.memory;
    } catch {
      return this.memory;
    }
  }

  /** @param {Kept} kept */
  keep(kept) {
    this.memory = kept;
    try {
      localStorage.setItem(this.key, JSON.stringify(kept));
    } catch {
      // Where nothing can be stored, the events live as long as the page.
    }
  }

  get waiting() {
    return this.kept().waiting;
  }

  /**
   * Take an event. The promise gives its order once it is saved, or the sentence of a refusal;
   * where nobody waits for it, a refusal goes to `onRefused`.
   * @param {Record<string, any>} body @param {boolean} [awaited] @returns {Promise<number>}
   */
  add(body, awaited = false) {
    const kept = this.kept();
    const sequence = kept.next;
    kept.waiting.push({ sequence, body });
    this.keep({ ...kept, next: sequence + 1 });
    const promise = new Promise((done, failed) => {
      this.promises.set(sequence, { done, failed, awaited });
    });
    promise.catch(() => {});
    this.onChange();
    this.send();
    return promise;
  }

  /** Return the last event that is not shown yet, as an undo names it; null when all are. */
  last() {
    const kept = this.kept();
    const told = [...this.unseen, ...kept.waiting];
    const undone = told
      .filter(({ body }) => body.kind === "undo" && body.event.client === kept.client)
      .map(({ body }) => body.event.sequence);
    const undoable = told.filter(
      ({ sequence, body }) => body.kind !== "undo" && !undone.includes(sequence),
    );
    const event = undoable.at(-1);
    return event ? { client: kept.client, sequence: event.sequence } : null;
  }

  /** Hear up to which order what was saved is shown now. */
  show(/** @type {number} */ order) {
    this.shown = order;
    this.unseen = this.unseen.filter((event) => event.order > order);
  }

  /** Forget what the server says it has, by the last sequence of this client. */
  confirm(/** @type {Record<string, number>} */ savedBy, /** @type {number} */ order) {
    this.show(order);
    const kept = this.kept();
    const last = savedBy?.[kept.client] ?? 0;
    const had = kept.waiting.filter((event) => event.sequence <= last);
    if (kept.next <= last) this.keep({ ...kept, next: last + 1 });
    if (had.length && !this.sending) this.drop(had.map((event) => ({ ...event, order })));
  }

  /** @param {{sequence: number, order: number}[]} saved */
  drop(saved) {
    const gone = new Map(saved.map((event) => [event.sequence, event.order]));
    const kept = this.kept();
    for (const event of kept.waiting) {
      const order = gone.get(event.sequence) ?? -1;
      if (order > this.shown) this.unseen.push({ ...event, order });
    }
    this.keep({ ...kept, waiting: kept.waiting.filter((event) => !gone.has(event.sequence)) });
    for (const [sequence, order] of gone) {
      this.promises.get(sequence)?.done(order);
      this.promises.delete(sequence);
    }
    this.trouble = false;
    this.wait = FIRST_WAIT;
    this.onChange();
  }

  /** @param {number} sequence @param {string} sentence */
  refuse(sequence, sentence) {
    const kept = this.kept();
    this.keep({ ...kept, waiting: kept.waiting.filter((event) => event.sequence !== sequence) });
    const promise = this.promises.get(sequence);
    this.promises.delete(sequence);
    promise?.failed(new Error(sentence));
    if (!promise?.awaited) this.onRefused(sentence);
    this.onChange();
  }

  /** Send what waits; again and again until the server has it. */
  async send() {
    clearTimeout(this.timer);
    if (this.sending) return;
    this.sending = true;
    try {
      let alone = false;
      for (let waiting = this.waiting; waiting.length; waiting = this.waiting) {
        alone = await this.deliver(alone ? waiting.slice(0, 1) : waiting);
      }
    } catch (error) {
      this.trouble = true;
      this.why = error instanceof NotSaved ? error.message : "";
      this.timer = setTimeout(() => this.send(), this.wait);
      this.wait = Math.min(this.wait * 2, LONGEST_WAIT);
    } finally {
      this.sending = false;
      this.onChange();
    }
  }

  /**
   * Deliver these. Returns whether the next go alone, to find which one is refused.
   * @param {Event[]} events
   */
  async deliver(events) {
    const answer = await post(this.address, this.csrf, {
      client: this.kept().client,
      events: events.map(({ sequence, body }) => ({ sequence, ...body })),
    });
    if (answer.ok) {
      this.drop(answer.json.saved);
      return false;
    }
    const sentence = plainly(answer.json?.error) ?? `(${answer.status})`;
    if (!REFUSED.has(answer.status)) throw new NotSaved(sentence);
    if (events.length > 1) return true;
    this.refuse(events[0].sequence, sentence);
    return false;
  }
}

/**
 * Post JSON and read the answer's JSON. Raises where the server cannot be reached in time.
 * @param {string} address @param {string} csrf @param {any} body @param {AbortSignal} [signal]
 * @returns {Promise<{ok: boolean, status: number, json: any}>}
 */
export async function post(address, csrf, body, signal) {
  const response = await fetch(address, {
    method: "POST",
    headers: { "Content-Type": "application/json", "X-CSRFToken": csrf },
    body: JSON.stringify(body),
    credentials: "same-origin",
    signal: signal ?? AbortSignal.timeout(PATIENCE),
  });
  const text = await response.text();
  try {
    return { ok: response.ok, status: response.status, json: JSON.parse(text) };
  } catch {
    return { ok: false, status: response.status, json: null };
  }
}

/** Return a refusal without the name of the event it is about; the desk knows which one it sent. */
function plainly(/** @type {string | undefined} */ sentence) {
  return sentence?.replace(/^[a-z]+(-[a-z]+)*(, [a-z_]+)?: /, "");
}

/** Return the page's token against requests from elsewhere. */
export function csrfToken() {
  return document.querySelector("meta[name=csrf]")?.getAttribute("content") ?? "";
}
