/** The desk by keyboard alone. Single letters work outside of text fields and can be turned off. */

const OFF = "waysaid-keys-off";

/** Whether single letters are off, kept for this browser. */
export const letters = {
  get off() {
    try {
      return localStorage.getItem(OFF) === "1";
    } catch {
      return false;
    }
  },
  set off(/** @type {boolean} */ off) {
    try {
      localStorage.setItem(OFF, off ? "1" : "0");
    } catch {
      // They are on again at the next visit.
    }
  },
};

/** @param {EventTarget | null} target */
const typing = (target) =>
  target instanceof HTMLElement && target.matches("input:not([type=checkbox]), select, textarea");

/**
 * @param {Record<string, () => void>} single by letter
 * @param {{chip: (index: number) => boolean, undo: () => void, escape: () => void}} others
 */
export function keys(single, { chip, undo, escape }) {
  addEventListener("keydown", (event) => {
    if (document.querySelector("dialog[open]")) return;
    if (event.key === "Escape") return escape();
    if (event.altKey && /^Digit[1-9]$/.test(event.code)) {
      if (chip(Number(event.code.slice(5)) - 1)) event.preventDefault();
      return;
    }
    const input = typing(event.target);
    if ((event.ctrlKey || event.metaKey) && event.key === "z") {
      if (input && /** @type {HTMLInputElement} */ (event.target).value) return;
      event.preventDefault();
      return undo();
    }
    if (input || event.ctrlKey || event.metaKey || event.altKey || letters.off) return;
    const act = single[event.key.toLowerCase()];
    if (!act) return;
    event.preventDefault();
    act();
  });
}
