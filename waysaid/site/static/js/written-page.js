/** A talk on paper, typed in: each line is read soon after the last key, and nothing is lost. */

const PAUSE = 250;
const form = /** @type {HTMLFormElement} */ (document.getElementById("written"));
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

async function read() {
  const asked = ++newest;
  try {
    const response = await fetch(form.dataset.read ?? "", {
      method: "POST",
      headers: { Accept: "application/json" },
      body: new FormData(form),
    });
    if (response.ok && asked === newest) show(await response.json());
  } catch {
    // The lines are read when they are kept.
  }
}

form.addEventListener("input", () => {
  kept = false;
  clearTimeout(timer);
  timer = setTimeout(read, PAUSE);
});
form.addEventListener("submit", () => {
  kept = true;
});
addEventListener("beforeunload", (event) => {
  if (!kept) event.preventDefault();
});
if ([...form.querySelectorAll("textarea")].some((field) => field.value)) {
  kept = false;
  read();
}
