/** What stands on a screen, and how: for tests, evaluated in the page. Returns plain values. */
() => {
  const shown = (node) =>
    node.checkVisibility({ visibilityProperty: true, opacityProperty: true }) &&
    !node.closest(".unseen, title, desc, noscript, .skip:not(:focus)");

  /** The part of the screen that the node's ancestors leave of it. */
  const room = (node) => {
    const box = { left: 0, top: 0, right: innerWidth, bottom: innerHeight, by: "the screen" };
    for (let up = node.parentElement; up && up !== document.body; up = up.parentElement) {
      if (up instanceof SVGElement || getComputedStyle(up).overflow === "visible") continue;
      const edge = up.getBoundingClientRect();
      const of = up.className || up.tagName;
      if (edge.left > box.left) Object.assign(box, { left: edge.left, by: of });
      if (edge.top > box.top) Object.assign(box, { top: edge.top, by: of });
      if (edge.right < box.right) Object.assign(box, { right: edge.right, by: of });
      if (edge.bottom < box.bottom) Object.assign(box, { bottom: edge.bottom, by: of });
    }
    return box;
  };

  const numbers = (color) => {
    const [red, green, blue, alpha = 1] = color.match(/[\d.]+/g).map(Number);
    return { red, green, blue, alpha };
  };
  const over = (top, under) => ({
    red: top.red * top.alpha + under.red * (1 - top.alpha),
    green: top.green * top.alpha + under.green * (1 - top.alpha),
    blue: top.blue * top.alpha + under.blue * (1 - top.alpha),
    alpha: 1,
  });
  const light = ({ red, green, blue }) => {
    const part = (value) => {
      const share = value / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    };
    return 0.2126 * part(red) + 0.7152 * part(green) + 0.0722 * part(blue);
  };
  const ratio = (one, other) => {
    const [dark, bright] = [light(one), light(other)].sort((a, b) => a - b);
    return (bright + 0.05) / (dark + 0.05);
  };
  /** The least contrast of an ink on what is behind it; behind a picture may be black or white. */
  const contrast = (node, ink) => {
    const veils = [];
    let picture = false;
    for (let up = node; up; up = up.parentElement) {
      const style = getComputedStyle(up);
      const ground = numbers(style.backgroundColor);
      if (style.backgroundImage !== "none") {
        picture = true;
        break;
      }
      if (ground.alpha > 0) veils.push(ground);
      if (ground.alpha === 1) break;
    }
    const white = { red: 255, green: 255, blue: 255, alpha: 1 };
    const black = { red: 0, green: 0, blue: 0, alpha: 1 };
    return Math.min(
      ...(picture ? [white, black] : [white]).map((far) => {
        const ground = veils.reverse().reduce((under, veil) => over(veil, under), far);
        veils.reverse();
        return ratio(over(ink, ground), ground);
      }),
    );
  };

  const pen = document.createElement("canvas").getContext("2d");
  /** The boxes of the ink of a text: its lines, without the room above and below the letters. */
  const inked = (rects, text, style, size) => {
    pen.font = `${style.fontWeight} ${size}px ${style.fontFamily}`;
    const letters = pen.measureText(text);
    return rects
      .filter((rect) => rect.width > 0)
      .map((rect) => {
        const tall = letters.fontBoundingBoxAscent + letters.fontBoundingBoxDescent;
        const base = rect.top + (rect.height - tall) / 2 + letters.fontBoundingBoxAscent;
        return {
          left: rect.left,
          right: rect.right,
          top: base - letters.actualBoundingBoxAscent,
          bottom: base + letters.actualBoundingBoxDescent,
        };
      });
  };

  const texts = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    if (!node.data.trim() || parent.closest("script, style, option") || !shown(parent)) continue;
    const style = getComputedStyle(parent);
    const range = document.createRange();
    range.selectNodeContents(node);
    const svg = parent instanceof SVGElement;
    const matrix = svg ? parent.getScreenCTM() : null;
    const scale = matrix ? Math.hypot(matrix.b, matrix.d) : 1;
    const size = parseFloat(style.fontSize) * scale;
    const rects = svg ? [parent.getBoundingClientRect()] : [...range.getClientRects()];
    const edge = room(parent);
    texts.push({
      text: node.data.trim(),
      part: parent.closest("[class]")?.getAttribute("class") ?? parent.tagName,
      hand: Boolean(parent.closest(".hand, .drawer")),
      size: (100 * size) / innerHeight,
      contrast: contrast(svg ? parent.ownerSVGElement : parent, numbers(svg ? style.fill : style.color)),
      boxes: inked(rects, node.data.trim(), style, size),
      room: edge,
    });
  }
  for (const field of document.querySelectorAll("input, select, textarea")) {
    if (!shown(field)) continue;
    const style = getComputedStyle(field);
    texts.push({
      text: field.value || field.placeholder,
      part: field.name || field.tagName,
      hand: Boolean(field.closest(".hand, .drawer")),
      size: (100 * parseFloat(style.fontSize)) / innerHeight,
      contrast: contrast(field, numbers(style.color)),
      boxes: [],
      room: room(field),
    });
  }
  return texts;
}
