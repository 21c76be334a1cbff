/** What the pages around a talk share: nothing here is needed to get by, all of it is nicer. */

import { startForms } from "./start-talk.js";
import { watchFields } from "./understood.js";

for (const node of document.querySelectorAll("[data-needs-script]")) node.removeAttribute("hidden");
for (const node of document.querySelectorAll("[data-needs-no-script]")) node.remove();

for (const button of document.querySelectorAll("[data-print]")) {
  button.addEventListener("click", () => print());
}

startForms();
watchFields();

document.getElementById("wrong")?.scrollIntoView({ block: "nearest" });

// The page's own script has run before this one: all is in place.
document.documentElement.dataset.ready = "yes";
