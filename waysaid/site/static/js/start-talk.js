/** Start a talk: the board opens in a window of its own, the desk in this one. */

const BOARD = "waysaid-board";

/** Take over every form that starts a talk. */
export function startForms() {
  for (const box of document.querySelectorAll("input[data-part=window]")) {
    if (box instanceof HTMLInputElement) windowChoice(box);
  }
  for (const form of document.querySelectorAll("form[data-start]")) {
    if (form instanceof HTMLFormElement) form.addEventListener("submit", (event) => start(event, form));
  }
}

const KEY = "waysaid-board-window";

/**
 * Tell whether she wants the board in a window of its own: as she said last; before she said
 * anything, yes, but not on a tablet or phone, where a new window would lie over the desk.
 */
function wantsWindow() {
  const said = localStorage.getItem(KEY);
  return said ? said === "yes" : !matchMedia("(pointer: coarse)").matches;
}

/** Let a checkbox show and keep what she wants. */
function windowChoice(/** @type {HTMLInputElement} */ box) {
  box.checked = wantsWindow();
  box.addEventListener("change", () => localStorage.setItem(KEY, box.checked ? "yes" : "no"));
}

/** @param {SubmitEvent} event @param {HTMLFormElement} form */
async function start(event, form) {
  if (!wantsWindow()) return;
  event.preventDefault();
  const submitter = /** @type {HTMLButtonElement | null} */ (event.submitter);
  // A window may only open while the tap is fresh, so it opens before the answer is there.
  const board = open("", BOARD);
  const sent = new FormData(form, submitter);
  submitter?.setAttribute("disabled", "");
  const answer = await ask(form.action, sent);
  submitter?.removeAttribute("disabled");
  if (answer.desk) {
    if (board) board.location.href = answer.board;
    location.href = answer.desk;
    return;
  }
  board?.close();
  tell(form, answer.error);
}

/** @param {string} address @param {FormData} body @returns {Promise<any>} */
async function ask(address, body) {
  try {
    const response = await fetch(address, {
      method: "POST",
      headers: { Accept: "application/json" },
      body,
    });
    return await response.json();
  } catch {
    return {};
  }
}

/** Say what was wrong, or let the browser send the form by itself. */
function tell(/** @type {HTMLFormElement} */ form, /** @type {string | undefined} */ sentence) {
  const says = form.querySelector("[data-part=wrong]");
  if (!sentence || !says) return form.submit();
  says.textContent = sentence;
  says.removeAttribute("hidden");
  const field = form.querySelector("#problem");
  if (field instanceof HTMLInputElement) field.focus();
}
