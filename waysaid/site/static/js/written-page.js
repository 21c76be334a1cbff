/** A talk on paper, typed in: each line is read soon after the last key, and nothing is lost. */

const PAUSE = 250;
const DRAFT = `written ${location.pathname}`;
const form = /** @type {HTMLFormElement} */ (document.getElementById("written"));
const fields = [...form.querySelectorAll("textarea")];
const mark = /** @type {HTMLInputElement} */ (form.elements.namedItem("mark"));
let timer = 0;
let newest = 0;
let kept = true;

/** @param {{number: number, says: string, wrong: boolean}} line */
function item({ number, says, wrong }) {
  const node = document.createElement("li");
  node.value = number;
  node.textContent = says;
  if (wrong) node.className = "wrong-line";
  return node;
}

/** @param {Record<string, {lines: any[], sum: string}>} sections */
function show(sections) {
  for (const [key, { lines, sum }] of Object.entries(sections)) {
    form.querySelector(`[data-part="${CSS.escape(key)}"]`)?.replaceChildren(...lines.map(item));
    const said = form.querySelector(`[data-sum="${CSS.escape(key)}"]`);
    if (said && said.textContent !== sum) said.textContent = sum;
  }
}

/** Ask how the lines are read; null where nobody answers. @param {FormData} body */
async function ask(body) {
  try {
    const headers = { Accept: "application/json" };
    const response = await fetch(form.dataset.read ?? "", { method: "POST", headers, body });
    return response.ok ? await response.json() : null;
  } catch {
    return null;
  }
}

async function read() {
  const asked = ++newest;
  const answer = await ask(new FormData(form));
  if (answer && asked === newest) show(answer.sections);
}

/** Keep what is typed in this tab, for when the page or the way to the server is lost. */
function keepDraft() {
  const typed = Object.fromEntries(fields.map((field) => [field.name, field.value]));
  try {
    sessionStorage.setItem(DRAFT, JSON.stringify({ mark: mark.value, typed }));
  } catch {
    // A browser may refuse to keep anything; then only the page has it.
  }
}

/** @returns {{mark: string, typed: Record<string, string>} | null} */
function draft() {
  try {
    return JSON.parse(sessionStorage.getItem(DRAFT) ?? "null");
  } catch {
    return null;
  }
}

/** Bring back what was typed, unless its talk was kept. */
async function bringBack() {
  const before = draft();
  if (!before) return;
  const body = new FormData(form);
  body.set("mark", before.mark);
  const answer = await ask(body);
  if (answer?.kept) sessionStorage.removeItem(DRAFT);
  if (answer?.kept || fields.some((field) => field.value)) return;
  for (const field of fields) field.value = before.typed[field.name] ?? "";
  mark.value = before.mark;
  kept = false;
  read();
}

form.addEventListener("input", () => {
  kept = false;
  keepDraft();
  clearTimeout(timer);
  timer = setTimeout(read, PAUSE);
});
form.addEventListener("submit", () => {
  kept = true;
});
addEventListener("beforeunload", (event) => {
  if (!kept) event.preventDefault();
});
if (fields.some((field) => field.value)) {
  kept = false;
  read();
} else {
  bringBack();
}
