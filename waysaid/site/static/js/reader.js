/** Ask the server how it reads a line, soon after the last key and never out of order. */

import { post } from "./outbox.js";

const PAUSE = 80;

/**
 * @param {{address: string, csrf: string, onRead: (reading: any | null) => void}} options
 */
export function reader({ address, csrf, onRead }) {
  let timer = 0;
  let asked = "";
  /** @type {AbortController | null} */
  let going = null;
  /** @type {{key: string, reading: any} | null} */
  let last = null;

  const key = (/** @type {string} */ problem, /** @type {string} */ line) => `${problem}\n${line}`;

  /** @param {string} problem @param {string} line @returns {Promise<any>} null where it cannot be read now */
  async function read(problem, line) {
    const wanted = key(problem, line);
    if (last?.key === wanted) return last.reading;
    going?.abort();
    going = new AbortController();
    try {
      const answer = await post(address, csrf, { problem, line }, going.signal);
      if (!answer.ok) return null;
      last = { key: wanted, reading: answer.json };
      return answer.json;
    } catch {
      return null;
    }
  }

  return {
    read,
    /** Read soon; `onRead` hears of the newest line only. */
    soon(/** @type {string} */ problem, /** @type {string} */ line) {
      clearTimeout(timer);
      asked = key(problem, line);
      if (!line.trim()) {
        going?.abort();
        onRead(null);
        return;
      }
      timer = setTimeout(async () => {
        const reading = await read(problem, line);
        if (asked === key(problem, line)) onRead(reading);
      }, PAUSE);
    },
  };
}
