/** The year: days that can be dragged onto each other, and a look whether the work is done. */

const ASK_AGAIN = 1000;
const swap = /** @type {HTMLFormElement | null} */ (document.getElementById("swap"));
const days = /** @type {HTMLElement[]} */ ([...document.querySelectorAll("[data-movable]")]);

/** @type {HTMLElement | null} */
let dragged = null;

const clear = () => days.forEach((day) => day.classList.remove("over", "dragged"));

/** @param {HTMLElement} day */
function drop(day) {
  if (!swap || !dragged || dragged === day) return;
  for (const [name, one] of Object.entries({ one: dragged, other: day })) {
    const field = /** @type {HTMLInputElement} */ (swap.elements.namedItem(name));
    field.value = one.dataset.day ?? "";
  }
  swap.submit();
}

for (const day of days) {
  day.draggable = true;
  day.addEventListener("dragstart", () => {
    dragged = day;
    day.classList.add("dragged");
  });
  day.addEventListener("dragend", clear);
  day.addEventListener("dragover", (event) => {
    if (!dragged || dragged === day) return;
    event.preventDefault();
    day.classList.add("over");
  });
  day.addEventListener("dragleave", () => day.classList.remove("over"));
  day.addEventListener("drop", (event) => {
    event.preventDefault();
    clear();
    drop(day);
  });
}

const busy = /** @type {HTMLElement | null} */ (document.querySelector("[data-busy]"));

async function look() {
  const answer = await fetch(busy?.dataset.busy ?? "", { headers: { Accept: "application/json" } });
  const state = answer.ok ? await answer.json() : { busy: true };
  if (!state.busy) location.reload();
  else setTimeout(look, ASK_AGAIN);
}

const later = () => setTimeout(() => look().catch(later), ASK_AGAIN);
if (busy) later();
