/** *count* values from *least* to *most*, evenly spaced by ratio: where to sample a curve over a logarithmic axis. */
export function logSamples(least: number, most: number, count: number): number[] {
  return sampled(most, count, (share) => least * (most / least) ** share);
}

/** *count* values from *least* to *most*, evenly spaced. */
export function evenSamples(least: number, most: number, count: number): number[] {
  return sampled(most, count, (share) => least + (most - least) * share);
}

/** The last is *last* itself: rounded past it, it would be out of the range of what is sampled. */
const sampled = (last: number, count: number, at: (share: number) => number) =>
  Array.from({ length: count }, (_, index) => (index < count - 1 ? at(index / (count - 1)) : last));

/** SVG path through *points*, broken where one has no place on the axes. Written out: a shape library weighs 3 KB more. */
export function curvePath(
  points: readonly (readonly [number, number])[],
  atX: (value: number) => number,
  atY: (value: number) => number,
): string {
  let pen = 'M';
  let path = '';
  for (const [a, b] of points) {
    const [x, y] = [atX(a), atY(b)];
    if (Number.isFinite(x) && Number.isFinite(y)) {
      path += `${pen}${x.toFixed(1)} ${y.toFixed(1)}`;
      pen = 'L';
    } else pen = 'M';
  }
  return path;
}
