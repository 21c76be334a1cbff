/** Ask the server how it reads a line, soon after the last key and never out of order. */

import { post } from "./outbox.js";

const PAUSE = 80;

/**
 * @param {{address: string, csrf: string, onRead: (reading: any | null) => void}} options
 */
export function reader({ address, csrf, onRead }) {
  let timer = 0;
  let newest = "";
  /** @type {AbortController | null} */
  let previewing = null;
  /** @type {{key: string, reading: any} | null} */
  let last = null;

  const keyOf = (/** @type {string} */ problem, /** @type {string} */ line) =>
    `${problem}\n${line}`;

  /** @param {string} problem @param {string} line @param {AbortSignal} signal */
  async function ask(problem, line, signal) {
    const key = keyOf(problem, line);
    if (last?.key === key) return last.reading;
    try {
      const answer = await post(address, csrf, { problem, line }, signal);
      if (!answer.ok) return null;
      last = { key, reading: answer.json };
      return answer.json;
    } catch {
      return null;
    }
  }

  /** Let go of a preview that nobody waits for any more. */
  function letGo() {
    clearTimeout(timer);
    previewing?.abort();
    previewing = null;
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
      letGo();
      newest = keyOf(problem, line);
      if (!line.trim()) return onRead(null);
      timer = setTimeout(async () => {
        previewing = new AbortController();
        const reading = await ask(problem, line, previewing.signal);
        if (newest === keyOf(problem, line) && reading) onRead(reading);
      }, PAUSE);
    },
  };
}
