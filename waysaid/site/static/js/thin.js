/** Fewer points for the same line: those that lie within a hair of the straight way are left out. */

/**
 * @param {number[]} points x, y, x, y ... @param {number} hair in the points' own units
 * @returns {number[]}
 */
export function thinned(points, hair) {
  const kept = new Set([0, points.length - 2]);
  const parts = [[0, points.length - 2]];
  for (let part = parts.pop(); part; part = parts.pop()) {
    const [from, to] = part;
    let far = 0;
    let where = -1;
    for (let index = from + 2; index < to; index += 2) {
      const away = distance(points, index, from, to);
      if (away > far) [far, where] = [away, index];
    }
    if (far <= hair) continue;
    kept.add(where);
    parts.push([from, where], [where, to]);
  }
  return [...kept].sort((a, b) => a - b).flatMap((index) => points.slice(index, index + 2));
}

/** @param {number[]} points @param {number} index @param {number} from @param {number} to */
function distance(points, index, from, to) {
  const [x, y] = [points[to] - points[from], points[to + 1] - points[from + 1]];
  const [dx, dy] = [points[index] - points[from], points[index + 1] - points[from + 1]];
  const long = Math.hypot(x, y);
  return long ? Math.abs(x * dy - y * dx) / long : Math.hypot(dx, dy);
}
