/** The board: turns one state into one screen, and keeps it when the next has not come. */

import { connectView } from "./connect-view.js";
import { fill, keep, make } from "./dom.js";
import { fitRow, fitText, loosen, stacked, unit } from "./fit.js";
import { groundOf } from "./ground.js";
import { Look } from "./image-view.js";
import { PLAIN_VIEWS, viewOf } from "./phases.js";
import { showNewest, sideColumn } from "./side.js";
import { strokeGroups, strokeLayer } from "./strokes.js";
import { Standing, waysView } from "./ways-view.js";

const WITH_SIDE = new Set(["think", "answers", "ways"]);

/**
 * Return what the sheet holds, what stands beside it, and what to do once it is in its place.
 * @param {string} view @param {any} state @param {any} words @param {Standing} standing
 * @param {() => void} again called when ways were folded or unfolded
 */
function build(view, state, words, standing, again) {
  if (view === "ways") return waysView(state, words, standing, stacked(), again);
  if (view === "connect" && state.connect) return connectView(state, words);
  const plain = PLAIN_VIEWS[view] ?? PLAIN_VIEWS.think;
  return { nodes: plain(state, words), beside: null, settle: () => {} };
}

/** The board as a whole. `sheet` is the paper, `layer` what is drawn over it by hand. */
export class Board {
  /** @param {HTMLElement} root @param {any} words */
  constructor(root, words) {
    this.root = root;
    this.words = words;
    this.side = make("nav", { class: "side", "aria-label": words.problems_so_far });
    this.sheet = make("section", { class: "sheet" });
    this.layer = strokeLayer();
    /** What this window has drawn and the state does not hold yet. */
    this.fresh = /** @type {import("./strokes.js").Drawn[]} */ ([]);
    this.state = /** @type {any} */ (null);
    this.shown = "";
    /** What stays from one state to the next, and on what screen it was measured. */
    this.standing = new Standing();
    this.measured = "";
    /** The problems so far, what they say, and beside what the newest of them were left to stand. */
    this.earlier = /** @type {HTMLElement | null} */ (null);
    this.told = "";
    this.fits = "";
    /** @type {WeakSet<Element>} */
    this.fitted = new WeakSet();
    this.onShown = () => {};
    this.look = new Look();
    fill(root, this.side, this.sheet);
    addEventListener("resize", () => this.again());
    document.fonts?.addEventListener("loadingdone", () => this.again());
  }

  /** Show a state; nothing moves where it says what is shown already. */
  show(/** @type {any} */ state) {
    this.look.take(state, (after) => this.show(after));
    const said = JSON.stringify({ ...state, order: 0 });
    if (said === this.shown) return;
    this.shown = said;
    this.state = state;
    this.paint();
  }

  /** Show the same state for a screen that changed. */
  again() {
    this.measured = "";
    if (this.state) this.paint();
  }

  paint() {
    const { state, words } = this;
    const view = viewOf(state);
    if (this.root.lang !== state.language) this.root.lang = state.language;
    this.root.dataset.view = view;
    this.root.classList.toggle("no-side", !WITH_SIDE.has(view) || !state.earlier.length);
    this.root.classList.toggle("has-picture", Boolean(state.background));
    this.root.style.setProperty(
      "background-image",
      state.background ? `url(${JSON.stringify(state.background)})` : "none",
    );
    this.measureAnew();
    this.paintSheet(view);
    this.onShown();
  }

  /** Let nothing stay that was measured on another screen or beside something else. */
  measureAnew() {
    const { className, lang, dataset } = this.root;
    const screen = [innerWidth, innerHeight, stacked(), className, lang, dataset.view].join(" ");
    if (screen === this.measured) return;
    this.measured = screen;
    this.standing = new Standing();
    this.fitted = new WeakSet();
    this.told = this.fits = "";
  }

  /** @param {string} view @param {HTMLElement | null} beside */
  paintSide(view, beside) {
    const { state, words } = this;
    const told = JSON.stringify(WITH_SIDE.has(view) && state.earlier);
    if (told !== this.told) {
      this.told = told;
      this.earlier = WITH_SIDE.has(view) ? sideColumn(state.earlier, words) : null;
    }
    keep(this.side, [...(this.earlier ? [this.earlier] : []), ...(beside ? [beside] : [])]);
  }

  /** @param {string} view */
  paintSheet(view) {
    const { state, words, sheet } = this;
    const built = build(view, state, words, this.standing, () => this.settled());
    this.paintSide(view, built.beside);
    if (view === "ways") keep(sheet, [...built.nodes, this.layer]);
    else fill(sheet, built.nodes, this.layer);
    this.fitLines();
    built.settle();
    this.settled();
  }

  /** See to what depends on which ways are open: the list beside them, and what was drawn. */
  settled() {
    const fits = this.told + this.standing.shut;
    if (fits !== this.fits) {
      this.fits = fits;
      showNewest(this.earlier);
    }
    this.drawStrokes();
  }

  /** Lay what was drawn by hand where its ground lies now. */
  drawStrokes() {
    const on = groundOf(viewOf(this.state));
    const drawn = on ? this.state.strokes.map((/** @type {any} */ one) => ({ ...one, on })) : [];
    this.layer.replaceChildren(...strokeGroups(this.sheet, [...drawn, ...this.fresh]));
  }

  /** Make the problem and titles as large as their place allows. */
  fitLines() {
    const all = [...this.sheet.querySelectorAll(".problem:not(.rows *), [data-fit]")];
    const fresh = all.filter((node) => !this.fitted.has(node));
    if (!fresh.length) return;
    // All are written before the first is read: what is read after writing is laid out anew.
    for (const node of fresh) if (node instanceof HTMLElement) loosen(node);
    const inner = this.sheet.clientWidth - 2 * 2.4 * unit();
    for (const node of fresh) {
      this.fitted.add(node);
      if (!(node instanceof HTMLElement)) continue;
      const stage = node.closest(".stage");
      if (stage) {
        // A stacked fraction's numbers are smaller than the letters beside it.
        const least = node.querySelector(".fraction") ? 17.5 : 12.5;
        fitText(node, { width: inner, height: stage.clientHeight, least, most: 44 });
      } else if (node.dataset.fit) {
        fitText(node, { width: inner, height: unit() * 24, least: 8, most: 15 });
      } else {
        fitRow(node, { width: inner, height: unit() * 20, least: 12.2, most: 13 });
      }
    }
  }
}
