type Point = readonly [x: number, y: number];

/** How far a line may pass by a point that it leaves out, pixels: less than is seen. */
const unseen = 0.1;

/** SVG path of a line through *points*, pixels, without those that it passes anyway. */
export function linePath(points: readonly Point[]): string {
  return bends(points)
    .map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`)
    .join('');
}

/**
 * Of *points* the ends, and those between which no other lies farther from the straight line than *within*: the Ramer-Douglas-Peucker
 * rule (Computer Graphics and Image Processing 1 (1972) 244; cited from memory).
 */
export function bends(points: readonly Point[], within = unseen): readonly Point[] {
  if (points.length < 3) return points;
  const [first, last] = [points[0]!, points.at(-1)!];
  const away = points.map((point) => offLine(point, first, last));
  const farthest = Math.max(...away);
  if (farthest <= within) return [first, last];
  const at = away.indexOf(farthest);
  return [...bends(points.slice(0, at + 1), within).slice(0, -1), ...bends(points.slice(at), within)];
}

/** Distance of a point from the stretch between two others. */
function offLine([x, y]: Point, [x1, y1]: Point, [x2, y2]: Point): number {
  const [along, down] = [x2 - x1, y2 - y1];
  const share = ((x - x1) * along + (y - y1) * down) / (along ** 2 + down ** 2 || 1);
  const clamped = Math.min(1, Math.max(0, share));
  return Math.hypot(x - x1 - clamped * along, y - y1 - clamped * down);
}
