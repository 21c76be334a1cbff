/** What a board says, part by part, as a reader sees it; for tests, evaluated in the page. */
() => {
  const seen = (node) => {
    if (node.checkVisibility && !node.checkVisibility({ visibilityProperty: true })) return "";
    if (node.matches(".unseen, title, desc")) return "";
    if (node.matches("svg.scene")) {
      return [...node.querySelectorAll("text")].map((label) => label.textContent).join(" | ");
    }
    if (node.matches(".frame")) return "▢";
    if (node.matches(".fraction")) return [...node.children].map(seen).join("/");
    return [...node.childNodes]
      .map((child) => (child.nodeType === Node.TEXT_NODE ? child.data : child.nodeType === 1 ? seen(child) : ""))
      .join("");
  };
  const text = (node) => seen(node).replace(/\s+/g, " ").trim();
  const all = (selector, within = document) => [...within.querySelectorAll(selector)];
  const texts = (selector, within) => all(selector, within).map(text).filter(Boolean);
  const sheet = document.querySelector(".sheet");
  const said = {
    view: document.querySelector("#main").dataset.view,
    side: texts(".side .earlier li"),
    now: texts(".side .earlier [aria-current]"),
    folded: all(".folded").map((one) => one.getAttribute("aria-label")),
    problem: sheet && texts(".head > .problem, .stage > .problem", sheet),
    title: sheet && texts(".title", sheet),
    lead: sheet && texts(".lead", sheet),
    norms: texts(".norms li"),
    signals: texts(".signals li"),
    starters: texts(".starters li"),
    talking: texts(".talk-mark"),
    answers: texts(".answers li"),
    ways: all(".ways:not(.bench) .way").map((way) => ({
      tags: all(".tags > *", way).map((tag) => text(tag) || "·"),
      says: texts(".lines li, .said, .scene", way),
    })),
    string: texts(".string .scene"),
    noticings: all(".noticing").map((one) => texts(".tag, blockquote", one)),
    what_if: texts(".what-if .rows li"),
    touch: texts("#touch"),
  };
  return Object.fromEntries(Object.entries(said).filter(([, value]) => value && value.length));
}
