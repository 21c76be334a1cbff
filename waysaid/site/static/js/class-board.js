/** The signals' icons beside the words they are chosen by. */

import { icon } from "./signals.js";

/** @param {Element} place @param {string} name */
function show(place, name) {
  place.replaceChildren(...(name ? [icon(name)] : []));
}

for (const place of document.querySelectorAll("[data-icon]")) {
  show(place, place.getAttribute("data-icon") ?? "");
}

for (const choice of document.querySelectorAll("[data-icon-choice]")) {
  choice.addEventListener("change", () => {
    const place = choice.closest("li")?.querySelector("[data-icon]");
    if (place && choice instanceof HTMLSelectElement) show(place, choice.value);
  });
}
