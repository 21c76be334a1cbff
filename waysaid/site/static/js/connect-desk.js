/** Connecting, on the desk: what children notice, links to draw, what-if strings. */

import { make, panel, put, randomId } from "./dom.js";
import { Marks } from "./marks.js";
import { COMMON } from "./what-if.js";

/** Links shown at a time, beside a string of so many problems, so that nothing has to scroll. */
const atOnce = (/** @type {number} */ problems) => (problems > 5 ? 2 : 3);

/** @param {string} key @param {string} text @param {() => void} click @param {string} [look] */
function button(key, text, click, look = "quiet") {
  const name = `button small ${look}`;
  return make("button", { type: "button", class: name, "data-key": key, click }, text);
}

export class ConnectDesk {
  /**
   * @param {HTMLElement} root with parts by data-part @param {import("./desk.js").Desk} desk
   * @param {string} linksAddress
   */
  constructor(root, desk, linksAddress) {
    this.root = root;
    this.desk = desk;
    this.linksAddress = linksAddress;
    this.marks = new Marks(() => this.update());
    this.links = /** @type {any[] | null} */ (null);
    this.sentence = "";
    this.first = 0;
    const part = (/** @type {string} */ name) =>
      /** @type {HTMLElement} */ (root.querySelector(`[data-part="${name}"]`));
    this.showString = panel(part("string"), ({ rows }) =>
      rows.map((/** @type {any} */ row) => this.stringRow(row)),
    );
    this.showTold = panel(part("told"), (given) => this.told(given));
    this.showLinks = panel(part("links"), (given) => this.linkList(given));
    this.showWhatIf = panel(part("what-if"), (given) => this.whatIf(given));
    this.form = /** @type {HTMLFormElement} */ (part("notice"));
    this.form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.notice();
    });
    const supposing = /** @type {HTMLFormElement} */ (part("supposing"));
    const amount = /** @type {HTMLInputElement} */ (supposing.elements.namedItem("amount"));
    this.hint = part("hint");
    supposing.addEventListener("submit", (event) => {
      event.preventDefault();
      this.suppose({ does: "add", amount: Number(amount.value) });
    });
    part("suppose-move").addEventListener("click", () =>
      this.suppose({ does: "move", amount: Number(amount.value) }),
    );
    for (const [name, change] of Object.entries(COMMON)) {
      part(`suppose-${name}`).addEventListener("click", () => this.suppose(change));
    }
    this.tab = "notice";
    this.showTabs = panel(part("tabs"), ({ tab }) => this.tabs(tab));
  }

  /** Noticing, links and what-if, one at a time, so that nothing has to scroll. */
  tabs(/** @type {string} */ tab) {
    for (const node of this.root.querySelectorAll("[data-for]")) {
      const shown = (node.getAttribute("data-for") ?? "").split(" ").includes(tab);
      node.toggleAttribute("hidden", !shown);
    }
    const turn = (/** @type {string} */ to) => {
      this.tab = to;
      this.update();
    };
    return ["notice", "link", "what-if"].map((each) =>
      make(
        "button",
        {
          type: "button",
          class: "phase",
          "data-key": `tab-${each}`,
          "aria-pressed": String(each === tab),
          click: () => turn(each),
        },
        this.desk.words.connect_tabs[each],
      ),
    );
  }

  /** @param {any} row */
  stringRow(row) {
    const { words } = this.desk;
    const settle = (/** @type {string | null} */ text) =>
      this.desk.tell("answer-settled", { problem: row.id, text });
    const node = this.marks.row(row, words);
    const choices = row.answers.map((/** @type {string} */ text) =>
      button(`settle-${row.id}-${text}`, text, () => settle(text)),
    );
    if (row.settled !== null) {
      node.append(button(`open-${row.id}`, words.leave_open, () => settle(null)));
    } else if (row.answers.length > 1) {
      node.append(make("span", { class: "settle" }, words.settled_on, choices));
    }
    return node;
  }

  /** @param {any} given */
  told({ noticings }) {
    const { words } = this.desk;
    const erase = (/** @type {string} */ id) => this.desk.tell("erased", { id });
    return noticings.map((/** @type {any} */ each) =>
      make(
        "li",
        {},
        make(
          "span",
          {},
          make("strong", {}, `${each.name || words.no_name}: `),
          each.words || words.marked,
          each.states && make("small", { class: "stated" }, each.states),
        ),
        button(`erase-${each.id}`, words.erase, () => erase(each.id)),
      ),
    );
  }

  notice() {
    const words = /** @type {HTMLInputElement} */ (this.form.elements.namedItem("words"));
    const join = /** @type {HTMLInputElement} */ (this.form.elements.namedItem("join"));
    if (!words.value.trim() && !this.marks.chosen.length) return words.focus();
    this.desk.tell("noticed", {
      id: randomId(),
      child: this.desk.speaker,
      words: words.value.trim(),
      marks: this.marks.chosen,
      join: join.checked && this.marks.chosen.length > 1,
    });
    words.value = "";
    this.marks.clear();
    this.desk.done();
  }

  async ask() {
    const { words } = this.desk;
    this.sentence = words.looking;
    this.update();
    try {
      const response = await fetch(this.linksAddress, { credentials: "same-origin" });
      this.links = response.ok ? (await response.json()).links : null;
      this.first = 0;
      this.sentence = this.links ? (this.links.length ? "" : words.no_links) : words.no_touch;
    } catch {
      this.sentence = words.no_touch;
    }
    this.update();
  }

  /** @param {any} given */
  linkList({ links, first, some, sentence, speaker }) {
    const { words } = this.desk;
    return [
      make(
        "p",
        { class: "ask" },
        button("ask-links", words.ask_links, () => this.ask(), ""),
        (links?.length ?? 0) > some &&
          button("more-links", words.more_links, () => this.turnLinks()),
        sentence,
      ),
      links &&
        make(
          "ul",
          {},
          links.slice(first, first + some).map((/** @type {any} */ link, /** @type {number} */ index) =>
            make(
              "li",
              {},
              make(
                "p",
                { class: "question" },
                `${words.open_quote}${link.question}${words.close_quote}`,
              ),
              make("p", {}, link.says),
              button(
                `link-${index}`,
                speaker ? put(words.draw_link_of, { name: speaker }) : words.draw_link,
                () => this.drawLink(link),
              ),
            ),
          ),
        ),
    ];
  }

  /** Show the links after those that are shown, and after the last the first again. */
  turnLinks() {
    this.first += atOnce(this.desk.state.board.connect.rows.length);
    if (this.first >= (this.links?.length ?? 0)) this.first = 0;
    this.update();
  }

  /** @param {any} link */
  drawLink(link) {
    const rows = this.desk.state.board.connect?.rows ?? [];
    const shown = new Set(rows.map((/** @type {any} */ row) => row.id));
    const marks = link.marks.filter((/** @type {any} */ mark) => shown.has(mark.problem));
    const words = /** @type {HTMLInputElement} */ (this.form.elements.namedItem("words"));
    this.desk.tell("link-drawn", {
      id: randomId(),
      link: link.kind,
      marks,
      child: this.desk.speaker,
      words: words.value.trim(),
    });
    words.value = "";
    this.desk.done();
  }

  /** Change the chosen numbers: more or less, so many times as large or small, or two of a row. */
  suppose(/** @type {{does: string, amount: number}} */ { does, amount }) {
    const places = this.marks.chosen.filter((mark) => typeof mark.place === "number");
    const fine = Number.isInteger(amount) && amount !== 0 && places.length > 0;
    this.hint.textContent = fine ? "" : this.desk.words.what_if_needs;
    if (!fine) return;
    this.desk.tell("what-if", { id: randomId(), amount, does, places, child: this.desk.speaker });
    this.marks.clear();
    this.desk.done();
  }

  /** @param {any} given */
  whatIf({ what_if: whatIf, refused, outcome }) {
    const { words } = this.desk;
    const erase = (/** @type {string} */ id) =>
      button("erase-what-if", words.erase, () => this.desk.tell("erased", { id }));
    if (refused) return [make("p", { role: "status" }, refused.says), erase(refused.id)];
    if (!whatIf) return null;
    const answer = (/** @type {any} */ event, /** @type {string} */ problem) => {
      event.preventDefault();
      const input = event.target.elements.namedItem("answer");
      if (!input.value.trim()) return;
      const said = { problem, text: input.value.trim(), child: this.desk.speaker };
      this.desk.tell("what-if-answer", { what_if: whatIf.id, ...said });
      input.value = "";
    };
    return [
      make(
        "ol",
        { class: "supposed" },
        whatIf.rows.map((/** @type {any} */ row) =>
          make(
            "li",
            {},
            make(
              "span",
              { class: "sum" },
              row.text,
              row.answers.length > 0 && ` = ${row.answers.join(", ")}`,
            ),
            make(
              "form",
              { submit: (/** @type {any} */ event) => answer(event, row.id) },
              make("input", {
                class: "field tiny",
                name: "answer",
                "data-key": `what-if-${row.id}`,
                autocomplete: "off",
                inputmode: "numeric",
                "aria-label": `${words.answer_of} ${row.text}`,
              }),
              make("button", { class: "button small quiet" }, words.add),
            ),
          ),
        ),
      ),
      outcome?.id === whatIf.id && make("p", { class: "outcome" }, outcome.says),
      erase(whatIf.id),
    ];
  }

  update() {
    const { state } = this.desk;
    const connect = state?.board.connect;
    if (!connect) return;
    const chosen = this.marks.chosen;
    this.showTabs({ tab: this.tab });
    const planned = new Map(state.problems.map((/** @type {any} */ each) => [each.id, each]));
    const rows = connect.rows.map((/** @type {any} */ row) => ({
      ...row,
      settled: planned.get(row.id)?.settled ?? null,
    }));
    this.showString({ rows, chosen });
    this.showTold({ noticings: state.noticings });
    const speaker = this.desk.speaker && this.desk.name(this.desk.speaker);
    const some = atOnce(rows.length);
    this.showLinks({
      links: this.links,
      first: this.first,
      some,
      sentence: this.sentence,
      speaker,
    });
    this.showWhatIf({
      what_if: connect.what_if,
      refused: state.what_if_refused,
      outcome: state.what_if_outcome,
    });
  }
}

/** Show the middle that belongs to the phase: ways, or connecting. */
export function middlePanel(/** @type {HTMLElement} */ ways, /** @type {HTMLElement} */ connect) {
  return (/** @type {import("./desk.js").Desk} */ desk) => {
    const connecting = desk.state.phase === "connect";
    ways.hidden = connecting;
    connect.hidden = !connecting;
  };
}
