/** A plan that saves itself while it is worked on, and whose rows can be dragged. */

const form = /** @type {HTMLFormElement} */ (document.getElementById("plan"));
const said = form.querySelector("[data-part=saved]");
const wrong = document.getElementById("wrong");

/** What is sent goes one after the other: a plan is taken and kept as a whole. */
let turn = Promise.resolve(true);

/** @param {() => Promise<boolean>} job what to do when all before is done */
function inTurn(job) {
  turn = turn.then(job);
  return turn;
}

/** @param {string} what the button this stands for */
const send = (what) => inTurn(() => post(what));

/** @param {string} what the button this stands for */
async function post(what) {
  const body = new FormData(form);
  body.delete("more");
  body.set("do", what);
  try {
    const response = await fetch(form.action, {
      method: "POST",
      headers: { Accept: "application/json" },
      body,
    });
    const answer = await response.json();
    tell(response.ok ? "" : answer.error);
    if (response.ok) {
      showCost(answer.cost);
      showLocks(answer.locked);
      const asText = document.querySelector("#as-text");
      if (asText instanceof HTMLTextAreaElement) asText.value = answer.as_text;
    }
    return response.ok;
  } catch {
    tell(said?.getAttribute("data-not-saved") ?? "");
    return false;
  }
}

/** @param {string} error */
function tell(error) {
  if (said) said.textContent = error || (said.getAttribute("data-saved") ?? "");
  if (!error) wrong?.remove();
}

/** @param {string[]} cost what the last change costs, a line for each row of the table */
function showCost(cost) {
  const part = /** @type {HTMLElement} */ (form.querySelector("[data-part=costs]"));
  part.hidden = cost.length === 0;
  const lines = cost.map((line) => {
    const item = document.createElement("li");
    item.textContent = line;
    return item;
  });
  part.querySelector("ul")?.replaceChildren(...lines);
}

form.addEventListener("change", (event) => {
  const field = /** @type {HTMLElement} */ (event.target);
  if (!field.hasAttribute("data-no-autosave")) send("save");
});

// What was typed before this script was there is kept, too.
const typed = [...form.elements].some(
  (field) =>
    (field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement) &&
    field.type !== "hidden" &&
    !field.hasAttribute("data-no-autosave") &&
    field.value !== field.defaultValue,
);
if (typed && !wrong) send("save");

// A lock is turned in place: the page, and where one is in it, stay as they are.
const locks = /** @type {HTMLButtonElement[]} */ ([
  ...form.querySelectorAll("button[value^='lock:']"),
]);

/** @param {string[]} locked the ids of the rows that are locked now */
function showLocks(locked) {
  for (const lock of locks) {
    const pressed = locked.includes(lock.value.replace("lock:", ""));
    const word = /** @type {HTMLElement} */ (lock.querySelector("[data-lock]"));
    lock.setAttribute("aria-pressed", String(pressed));
    word.textContent = word.dataset[pressed ? "locked" : "lock"] ?? "";
  }
}

for (const lock of locks) {
  lock.addEventListener("click", (event) => {
    event.preventDefault();
    const wanted = lock.getAttribute("aria-pressed") !== "true";
    inTurn(async () => {
      const done = lock.getAttribute("aria-pressed") === String(wanted);
      return done || post(lock.value);
    });
  });
}

/** @type {HTMLElement | null} */
let dragged = null;
const rows = () => /** @type {HTMLElement[]} */ ([...form.querySelectorAll("[data-row]")]);

const clear = () => rows().forEach((row) => row.classList.remove("over", "dragged"));

for (const row of rows()) {
  if (row.classList.contains("opened")) continue;
  row.draggable = true;
  row.addEventListener("dragstart", () => {
    dragged = row;
    row.classList.add("dragged");
  });
  row.addEventListener("dragend", clear);
  row.addEventListener("dragover", (event) => {
    if (!dragged || dragged === row) return;
    event.preventDefault();
    clear();
    row.classList.add("over");
  });
  row.addEventListener("drop", async (event) => {
    event.preventDefault();
    clear();
    if (!dragged || dragged === row) return;
    row.before(dragged);
    const order = rows().map((each) => each.dataset.row);
    if (await send(`order:${order.join(",")}`)) location.reload();
  });
}
