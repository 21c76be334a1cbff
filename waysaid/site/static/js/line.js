/**
 * The line: what a child said, typed or dictated, with what was understood below it. The first
 * letters of a name and a comma before it say who is speaking.
 */

import { fill, make, put } from "./dom.js";
import { heard } from "./heard.js";
import { splitLine } from "./names.js";
import { reader } from "./reader.js";

/** Pictures that have a button; the others are in the list beside. */
const BUTTONS = ["number-line", "equations", "words"];

/** Words, not shorthand: more letters in a row than a sign or an abbreviation has. */
const WORDS = /\p{L}{3}/u;

export class Line {
  /**
   * @param {Record<"preview" | "buttons" | "who", HTMLElement> & {form: HTMLFormElement}} nodes
   * @param {import("./desk.js").Desk} desk
   * @param {{address: string, csrf: string}} reading
   */
  constructor(nodes, desk, reading) {
    this.desk = desk;
    this.nodes = nodes;
    this.input = /** @type {HTMLInputElement} */ (nodes.form.querySelector("input"));
    this.reader = reader({ ...reading, onRead: (read) => this.show(read) });
    nodes.form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.put(null);
    });
    this.input.addEventListener("input", () => this.typed());
    this.drawButtons();
    this.last = "";
  }

  /** What is typed, parted into who and what; a child who was tapped needs no name. */
  parted() {
    const { desk, input } = this;
    if (desk.speaker || desk.editing || !desk.state) return { who: [], said: input.value.trim() };
    return splitLine(desk.state.roster, input.value.trim());
  }

  /** The child whose name stands before a comma in the line, if it is one child's. */
  get child() {
    const { who } = this.parted();
    return who.length === 1 ? who[0].id : null;
  }

  typed() {
    const { who, said } = this.parted();
    this.showWho(who);
    if (this.desk.problem) this.reader.soon(this.desk.problem, said);
  }

  /** @param {{id: string, name: string}[]} who */
  showWho(who) {
    const { words } = this.desk;
    const pick = (/** @type {string} */ id) => {
      this.input.value = this.parted().said;
      this.desk.choose(id);
      this.input.focus();
    };
    fill(
      this.nodes.who,
      who.length === 1 && put(words.speaking, { name: who[0].name }),
      who.length > 1 && [
        words.which_child,
        who.map((child) =>
          make(
            "button",
            { type: "button", class: "button small", click: () => pick(child.id) },
            child.name,
          ),
        ),
      ],
    );
  }

  /** @param {any} reading */
  show(reading) {
    const group = (/** @type {any} */ { seen }) => {
      // The reading itself keeps the choice: another line is another reading.
      reading.seen = seen;
      this.show(reading);
    };
    const family = (/** @type {any} */ chosen) => {
      reading.first ??= { family: reading.family };
      reading.family = chosen.family;
      reading.family_name = chosen.name;
      reading.perhaps = false;
      this.show(reading);
      this.input.focus();
    };
    const rival = (/** @type {any} */ chosen) => this.put(null, { reading, chosen });
    const choose = { group, family, rival };
    fill(this.nodes.preview, heard(reading, this.desk.words, this.families, choose));
  }

  /** The families that are likely for the problem of the moment, each once. */
  get families() {
    /** @type {Map<string, any>} */
    const found = new Map();
    for (const { family, name } of this.desk.state?.chips ?? []) {
      if (family && !found.has(family)) found.set(family, { family, name });
    }
    return [...found.values()];
  }

  drawButtons() {
    const { words } = this.desk;
    const others = words.pictures_more;
    const select = make(
      "select",
      { class: "field small", "aria-label": words.another_drawing, title: words.another_drawing },
      make("option", { value: "" }, words.as_another),
      Object.entries(others).map(([value, text]) => make("option", { value }, text)),
    );
    select.addEventListener("change", () => {
      const value = /** @type {HTMLSelectElement} */ (select).value;
      if (value) this.put(value);
      /** @type {HTMLSelectElement} */ (select).value = "";
    });
    fill(
      this.nodes.buttons,
      make("button", { type: "submit", class: "button main" }, words.put_on_board),
      BUTTONS.map((picture) =>
        make(
          "button",
          { type: "button", class: "button", click: () => this.put(picture) },
          words.pictures[picture],
        ),
      ),
      select,
    );
  }

  /**
   * Put the line on the board, drawn as asked, or as the desk would draw it. With an `instead` it
   * is the runner-up that was chosen, unless the line has gone on since it was read.
   * @param {string | null} picture @param {{reading: any, chosen: any} | null} [instead]
   */
  put(picture, instead = null) {
    const { desk } = this;
    const { who, said } = this.parted();
    if (who.length > 1) return this.showWho(who);
    if (who.length === 1 && !said) {
      this.clear();
      desk.choose(who[0].id);
    }
    if (!desk.problem || !said) return this.input.focus();
    const read = this.reader.known(desk.problem, said);
    if (instead && instead.reading !== read) return this.input.focus();
    if (who.length === 1) desk.speaker = who[0].id;
    const { telling } = desk;
    const told = this.told(instead?.chosen ?? read, said, picture);
    const proposed = this.proposed(told.family, read);
    desk.done();
    desk.record(proposed === undefined ? told : { ...told, proposed }, telling);
  }

  /**
   * What goes into the record: what was understood, or the line itself, to be read once it comes
   * through.
   * @param {any} reading null where it was not read yet
   * @param {string} said @param {string | null} picture
   */
  told(reading, said, picture) {
    if (!reading) return { line: said, words: said, steps: [], picture, foreseen: false };
    const { steps, family, answer, seen } = reading;
    const drawn = steps.length ? (picture ?? reading.picture ?? "equations") : "words";
    const words = this.wordsOf(said);
    return { steps, words, family, answer, picture: drawn, seen: seen ?? [], foreseen: false };
  }

  /** The way that is being written anew, if any. */
  get edited() {
    const { editing, state } = this.desk;
    return editing && state?.ways.find((/** @type {any} */ way) => way.id === editing);
  }

  /** What the child said: her words stay where a way is written anew as shorthand. */
  wordsOf(/** @type {string} */ said) {
    const before = this.edited?.words ?? "";
    return WORDS.test(before) && !WORDS.test(said) ? before : said;
  }

  /**
   * What the line was read as first, where that is another family than is put on the board now.
   * @param {string | null | undefined} family @param {any} read
   * @returns {{family: string | null} | undefined}
   */
  proposed(family, read) {
    const { edited } = this;
    const first = edited && !edited.foreseen && edited.family ? edited : (read?.first ?? read);
    if (!first || family === undefined || first.family === family) return undefined;
    return { family: first.family };
  }

  /** Write a way of the board anew. */
  edit(/** @type {any} */ way) {
    this.desk.speaker = null;
    this.desk.editing = way.id;
    this.input.value = way.words || way.lines.join(", ");
    this.desk.update();
    this.typed();
    this.input.focus();
  }

  clear() {
    this.input.value = "";
    this.show(null);
    this.showWho([]);
    this.reader.soon(this.desk.problem ?? "", "");
  }

  /** Keep the hint in step with who was tapped. */
  update() {
    const { desk } = this;
    const key = `${desk.speaker} ${desk.editing} ${desk.problem}`;
    this.input.placeholder = desk.speaker
      ? put(desk.words.line_of, { name: desk.name(desk.speaker) })
      : desk.words.line_hint;
    if (key !== this.last) {
      this.last = key;
      if (this.input.value) this.typed();
    }
  }
}
