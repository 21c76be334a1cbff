/** Under a field for a problem: what was understood of it so far, said soon after the last key. */

const PAUSE = 250;

/** Return the line of a field that the caret is on. */
function lineOf(/** @type {HTMLInputElement | HTMLTextAreaElement} */ field) {
  const { value } = field;
  if (!(field instanceof HTMLTextAreaElement)) return value.trim();
  const caret = field.selectionStart ?? value.length;
  const start = value.lastIndexOf("\n", caret - 1) + 1;
  const end = value.indexOf("\n", caret);
  return value.slice(start, end < 0 ? value.length : end).trim();
}

/**
 * Say under a field what is understood; while it is empty there are the examples the page came with.
 * @param {HTMLInputElement | HTMLTextAreaElement} field with `data-understood`, an address, and
 *   `data-says`, the id of the line under it
 */
function watch(field) {
  const says = document.getElementById(field.dataset.says ?? "");
  const address = field.dataset.understood;
  if (!says || !address) return;
  const examples = says.textContent ?? "";
  let timer = 0;
  let newest = "";

  const show = (/** @type {string} */ text, /** @type {boolean} */ wrong) => {
    if (says.textContent !== text) says.textContent = text;
    says.classList.toggle("wrong-so-far", wrong);
  };
  const ask = async (/** @type {string} */ line) => {
    try {
      const response = await fetch(`${address}?text=${encodeURIComponent(line)}`, {
        headers: { Accept: "application/json" },
      });
      const answer = await response.json();
      if (newest === line && response.ok) show(answer.says, answer.wrong);
    } catch {
      if (newest === line) show(examples, false);
    }
  };
  const look = () => {
    clearTimeout(timer);
    newest = lineOf(field);
    if (!newest) return show(examples, false);
    timer = setTimeout(ask, PAUSE, newest);
  };
  if (field.value) look();
  field.addEventListener("input", look);
  field.addEventListener("focus", look);
  if (field instanceof HTMLTextAreaElement) {
    for (const moved of ["keyup", "click"]) {
      field.addEventListener(moved, () => {
        if (lineOf(field) !== newest) look();
      });
    }
  }
  field.form?.addEventListener("reset", () => show(examples, false));
}

/** Watch every field of a page, or of a part of it, that asks for it. */
export function watchFields(/** @type {ParentNode} */ root = document) {
  for (const field of root.querySelectorAll("[data-understood]")) {
    if (field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement) watch(field);
  }
}
