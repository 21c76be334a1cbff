/** Say quietly that the board has lost touch; what it showed last stays. */

/** @param {string} sentence @returns {(held: boolean) => void} */
export function touchMark(sentence) {
  const mark = document.getElementById("touch");
  let timer = 0;
  return (held) => {
    clearTimeout(timer);
    if (held && mark) mark.textContent = "";
    // A moment's loss, as when the stream opens anew, is not worth a word.
    if (!held) timer = setTimeout(() => mark && (mark.textContent = sentence), 2500);
  };
}

/** Keep the last state for a reload without the server; only what the board shows anyway. */
export function remembered(/** @type {string} */ key) {
  return {
    get: () => {
      try {
        return JSON.parse(sessionStorage.getItem(key) ?? "null");
      } catch {
        return null;
      }
    },
    set: (/** @type {any} */ state) => {
      try {
        sessionStorage.setItem(key, JSON.stringify(state));
      } catch {
        // A full or forbidden store only means that a reload has to wait for the server.
      }
    },
  };
}
