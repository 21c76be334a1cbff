/** Start a talk: the board opens in a window of its own, the desk in this one. */

const BOARD = "waysaid-board";

/** Take over every form that starts a talk. */
export function startForms() {
  for (const form of document.querySelectorAll("form[data-start]")) {
    if (form instanceof HTMLFormElement) form.addEventListener("submit", (event) => start(event, form));
  }
}

/** Tell whether she wants the board in a window of its own; so it is unless she said no. */
function wantsWindow() {
  return localStorage.getItem("waysaid-board-window") !== "no";
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
