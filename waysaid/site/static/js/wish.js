/** A wish for a string: what it is about follows the idea, and what it needs is made ready early. */

const PAUSE = 400;

for (const wish of document.querySelectorAll("[data-wish]")) {
  const pick = (/** @type {string} */ name) =>
    /** @type {HTMLSelectElement} */ (wish.querySelector(`[name=wish-${name}]`));
  const [grade, focus, topic] = [pick("grade"), pick("focus"), pick("topic")];
  let timer = 0;

  const suit = () => {
    const homes = (focus.selectedOptions[0]?.dataset.topics ?? "").split(" ");
    for (const one of topic.options) {
      one.hidden = one.disabled = one.value !== "" && !homes.includes(one.value);
    }
    if (topic.selectedOptions[0]?.disabled) topic.value = "";
  };

  const ready = () => {
    const asked = new URLSearchParams();
    for (const each of [grade, focus, topic, pick("length")]) asked.set(each.name, each.value);
    fetch(`${wish.getAttribute("data-wish")}?${asked}`).catch(() => {});
  };

  wish.addEventListener("change", () => {
    suit();
    clearTimeout(timer);
    timer = setTimeout(ready, PAUSE);
  });
  const form = wish.closest("form");
  form?.addEventListener("submit", (event) => {
    const busy = form.querySelector("[data-part=busy]");
    const pressed = /** @type {HTMLButtonElement | null} */ (event.submitter);
    const composes = !pressed?.name || pressed.value === "compose";
    if (busy && composes) busy.textContent = busy.getAttribute("data-busy");
  });
  suit();
}
