/** The quick image for the teacher: always there in small, and what the class sees of it. */

import { make, panel } from "./dom.js";
import { paint } from "./scene.js";

/** @param {HTMLElement} node @param {any} words */
export function imagePanel(node, words) {
  /** @type {import("./desk.js").Desk} */
  let desk;
  let timer = 0;
  let over = "";

  const button = (/** @type {string} */ text, /** @type {string} */ key, /** @type {() => void} */ click) =>
    make("button", { type: "button", class: "button small", "data-key": key, click }, text);

  const show = panel(node, ({ image, looking }) => {
    if (!image) return [];
    const { problem, kept, once_more: more } = image;
    const picture = paint(image.scene);
    picture.classList.add("thumb");
    const keep = (/** @type {boolean} */ on) => desk.tell("image-kept", { problem, on });
    return [
      picture,
      make(
        "div",
        { class: "image-buttons" },
        make(
          "p",
          {},
          kept ? words.image_stays : looking ? words.image_in_sight : words.image_hidden,
        ),
        more && !kept && !looking &&
          button(words.once_more, "once-more", () => desk.tell("looked-again", { problem })),
        !kept && !looking && button(words.image_keep, "image-keep", () => keep(true)),
        kept && button(words.image_hide, "image-keep", () => keep(false)),
      ),
    ];
  });

  const update = (/** @type {import("./desk.js").Desk} */ given) => {
    desk = given;
    const { image, now, order } = desk.state;
    node.hidden = !image;
    const look = `${order} ${now}`;
    const looking = Boolean(image?.left) && over !== look;
    clearTimeout(timer);
    if (looking) {
      timer = setTimeout(() => {
        over = look;
        update(desk);
      }, image.left);
    }
    show({ image: image && { ...image, left: 0 }, looking });
  };
  return update;
}
