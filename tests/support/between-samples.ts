/** A curve known at 0, 1, 2 ... read at any place between, by the cubic through the four nearest samples. For tests. */
export function betweenSamples(samples: readonly number[], place: number): number {
  const from = Math.min(Math.max(Math.floor(place) - 1, 0), samples.length - 4);
  const [a, b, c, d] = samples.slice(from, from + 4) as [number, number, number, number];
  const u = place - from;
  const outer = (d * u * (u - 1) * (u - 2) - a * (u - 1) * (u - 2) * (u - 3)) / 6;
  return outer + (b * u * (u - 2) * (u - 3) - c * u * (u - 1) * (u - 3)) / 2;
}
