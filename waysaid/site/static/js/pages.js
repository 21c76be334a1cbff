/** What the pages around a talk share: nothing here is needed to get by, all of it is nicer. */

import { startForms } from "./start-talk.js";

for (const node of document.querySelectorAll("[data-needs-script]")) node.removeAttribute("hidden");
for (const node of document.querySelectorAll("[data-needs-no-script]")) node.remove();

for (const form of document.querySelectorAll("form[data-submit-on-change]")) {
  form.addEventListener("change", () => /** @type {HTMLFormElement} */ (form).requestSubmit());
}

for (const box of document.querySelectorAll("input[data-remember]")) {
  if (!(box instanceof HTMLInputElement)) continue;
  const key = `waysaid-${box.dataset.remember}`;
  box.checked = localStorage.getItem(key) !== "no";
  box.addEventListener("change", () => localStorage.setItem(key, box.checked ? "yes" : "no"));
}

for (const button of document.querySelectorAll("[data-print]")) {
  button.addEventListener("click", () => print());
}

startForms();

document.getElementById("wrong")?.scrollIntoView({ block: "nearest" });

// The page's own script has run before this one: all is in place.
document.documentElement.dataset.ready = "yes";
