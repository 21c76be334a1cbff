/** Walk through a talk with the arrow keys, and keep the step that is shown in sight. */

import "./class-board.js";

const here = document.querySelector(".steps [aria-current]");
const list = document.querySelector(".steps");
if (here instanceof HTMLElement && list) {
  list.scrollTop = here.offsetTop - list.clientHeight / 2;
}

const ways = { ArrowLeft: "prev", ArrowRight: "next", Home: "first", End: "last" };

// The slider keeps the focus over the page that each of its steps loads.
const HELD = "waysaid-slider";
const slider = /** @type {HTMLInputElement | null} */ (document.getElementById("step"));
if (sessionStorage.getItem(HELD)) slider?.focus();
sessionStorage.removeItem(HELD);
slider?.addEventListener("change", () => {
  sessionStorage.setItem(HELD, "yes");
  location.replace(`?step=${slider.value}`);
});

addEventListener("keydown", (event) => {
  const rel = ways[/** @type {keyof typeof ways} */ (event.key)];
  const target = /** @type {HTMLElement} */ (event.target);
  if (!rel || event.altKey || event.ctrlKey || event.metaKey || target.closest("input, select, .steps")) return;
  const link = document.querySelector(`.stepper a[rel=${rel}]`);
  if (link instanceof HTMLAnchorElement) {
    event.preventDefault();
    location.replace(link.href);
  }
});
