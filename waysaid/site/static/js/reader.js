/**
 * Ask the server how it reads a line, at every key and never out of order. While an answer is on its
 * way the newest line waits, so that a slow machine is asked about fewer lines, not later ones.
 */

import { post } from "./outbox.js";

const PATIENCE = 5000;

/**
 * @param {{address: string, csrf: string, onRead: (reading: any | null) => void}} options
 */
export function reader({ address, csrf, onRead }) {
  let newest = "";
  let asking = false;
  /** @type {{problem: string, line: string} | null} */
  let wanted = null;
  /** @type {{key: string, reading: any} | null} */
  let last = null;

  const keyOf = (/** @type {string} */ problem, /** @type {string} */ line) =>
    `${problem}\n${line}`;

  /** @param {string} problem @param {string} line */
  async function ask(problem, line) {
    const key = keyOf(problem, line);
    if (last?.key === key) return last.reading;
    try {
      const patience = AbortSignal.timeout(PATIENCE);
      const answer = await post(address, csrf, { problem, line }, patience);
      if (!answer.ok) return null;
      last = { key, reading: answer.json };
      return answer.json;
    } catch {
      return null;
    }
  }

  async function askOn() {
    asking = true;
    while (wanted) {
      const { problem, line } = wanted;
      wanted = null;
      const reading = await ask(problem, line);
      if (reading && newest === keyOf(problem, line)) onRead(reading);
    }
    asking = false;
  }

  return {
    /**
     * Return how the line was read, for the record; null where that is not known yet.
     * @param {string} problem @param {string} line
     */
    known(problem, line) {
      return last?.key === keyOf(problem, line) ? last.reading : null;
    },
    /**
     * Read soon, for the preview; `onRead` hears of the newest line only.
     * @param {string} problem @param {string} line
     */
    soon(problem, line) {
      newest = keyOf(problem, line);
      wanted = line.trim() ? { problem, line } : null;
      if (!wanted) return onRead(null);
      if (!asking) askOn();
    },
  };
}
