/** The desk's few dialogs: a problem in the middle, more settings, other screens, keys. */

import { fill, make, put, randomId } from "./dom.js";
import { post } from "./outbox.js";
import { watchFields } from "./understood.js";

/** Open a dialog where the browser has them; its close buttons close it. */
export function dialog(/** @type {string} */ id) {
  const node = /** @type {HTMLDialogElement} */ (document.getElementById(id));
  for (const closer of node.querySelectorAll("[data-close]")) {
    closer.addEventListener("click", () => node.close());
  }
  return node;
}

/** @param {import("./desk.js").Desk} desk @returns {() => void} opens it */
export function addProblemDialog(desk) {
  const node = dialog("add-problem");
  const form = /** @type {HTMLFormElement} */ (node.querySelector("form"));
  const input = /** @type {HTMLInputElement} */ (form.elements.namedItem("text"));
  const says = /** @type {HTMLElement} */ (node.querySelector("[role=alert]"));
  watchFields(form);
  input.addEventListener("input", () => {
    says.textContent = "";
  });
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    const text = input.value.trim();
    if (!text) return input.focus();
    const problem = randomId();
    const now = Boolean(/** @type {HTMLElement | null} */ (event.submitter)?.dataset.show);
    const after = now ? desk.problem : null;
    says.textContent = "";
    try {
      await desk.outbox.add({ kind: "problem-added", problem, text, after }, true);
    } catch (error) {
      says.textContent = error instanceof Error ? error.message : String(error);
      return input.focus();
    }
    if (now) desk.tell("problem-shown", { problem });
    form.reset();
    node.close();
  });
  return () => {
    says.textContent = "";
    node.showModal();
    input.focus();
  };
}

/** @param {import("./desk.js").Desk} desk */
export function moreDialog(desk) {
  const node = dialog("more");
  const named = /** @type {HTMLInputElement} */ (node.querySelector("[name=answers-named]"));
  const hidden = /** @type {HTMLInputElement} */ (node.querySelector("[name=names-hidden]"));
  const end = /** @type {HTMLElement} */ (node.querySelector("[data-do=close-talk]"));
  const again = /** @type {HTMLElement} */ (node.querySelector("[data-do=reopen]"));
  named.addEventListener("change", () => desk.tell("answers-named", { on: named.checked }));
  hidden.addEventListener("change", () => desk.tell("names-hidden", { on: hidden.checked }));
  end.addEventListener("click", () => {
    desk.tell("closed");
    node.close();
  });
  again.addEventListener("click", () => {
    desk.tell("resumed");
    node.close();
  });
  return {
    open: () => node.showModal(),
    update: () => {
      end.hidden = Boolean(desk.state.closed);
      again.hidden = !end.hidden;
      named.checked = Boolean(desk.state.answers_named);
      hidden.checked = Boolean(desk.state.names_hidden);
    },
  };
}

/**
 * Joining other screens over the school's network: on and off, the address, and the code.
 * @param {import("./desk.js").Desk} desk
 * @param {{network: string, pairing: string, csrf: string}} addresses
 */
export function screensDialog(desk, addresses) {
  const node = dialog("screens");
  const part = /** @type {HTMLElement} */ (node.querySelector("[data-part=network]"));
  const { words } = desk;
  let sentence = "";
  let given = /** @type {any} */ (null);
  let last = "";

  const ask = async (/** @type {string} */ address, /** @type {any} */ body) => {
    sentence = "";
    try {
      const answer = await post(address, addresses.csrf, body);
      if (answer.ok) given = { ...given, ...answer.json };
      else sentence = answer.json?.error ?? words.no_touch;
    } catch {
      sentence = words.no_touch;
    }
    show();
  };

  /** @param {string} text @param {() => void} click @param {string} [look] */
  const button = (text, click, look = "") =>
    make(
      "button",
      { type: "button", class: `button small ${look}`, "data-key": text, click },
      text,
    );

  function show() {
    const network = { ...desk.state?.network, ...given };
    const until =
      network.until && new Date(network.until).toLocaleTimeString([], { timeStyle: "short" });
    fill(
      part,
      network.on
        ? [
            make("p", {}, put(words.join_at, { address: network.address ?? "" })),
            network.code &&
              make("p", { class: "code" }, network.code, " ",
                until && make("small", {}, put(words.code_until, { time: until }))),
            make("p", { class: "row" },
              button(words.code_board, () => ask(addresses.pairing, { role: "board" })),
              button(words.code_desk, () => ask(addresses.pairing, { role: "desk" })),
              button(words.network_off, () => ask(addresses.network, { on: false }), "quiet")),
          ]
        : button(words.network_on, () => ask(addresses.network, { on: true })),
      make("p", { role: "status" }, sentence),
    );
  }

  return {
    open: () => {
      show();
      node.showModal();
    },
    update: () => {
      const now = JSON.stringify(desk.state.network ?? null);
      if (now === last) return;
      last = now;
      given = null;
      show();
    },
  };
}
