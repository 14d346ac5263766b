import { blurAt, type View } from './view.ts';

/** Depths at which a scene is blurred; what lies between two of them shares itself out between the two. */
export interface Slices {
  /** *b* with a sign, mm on the sensor: ascending, so from the nearest to the deepest */
  readonly blurs: readonly number[];
  /** Where a height lies among the slices: 2.25 is a quarter of the way, by its share, from number 2 to number 3. */
  readonly places: Float32Array;
  readonly low: number;
  readonly high: number;
}

const heights = 4096;

/**
 * Slices between the lowest and the highest place of a scene, the ends among them, and the sharp plane where it lies between.
 *
 * Their blurs b follow b₀ sinh(k step): evenly spaced where a pixel and diffraction hide the steps, at constant ratio where
 * they do not. Whoever lies between two slices is shared out so that the mean of b², which decides the contrast of coarse patterns,
 * is that of its own blur.
 *
 * @param count how many at most; fewer where the blurs differ too little to need them
 * @param sharpAt heights of several sharp planes: each place then has the blur of the one nearest to it; the view's own alone if absent
 */
export function slicesOf(
  view: View,
  low: number,
  high: number,
  count: number,
  sharpAt: readonly number[] = [view.focusHeight],
): Slices {
  const unit = blurHidden(view);
  const blurOf = blurToNearest(view, sharpAt);
  const own = Float64Array.from({ length: heights + 1 }, (_, k) => blurOf(low + ((high - low) * k) / heights));
  const [nearest, deepest] = [own.reduce((a, b) => Math.min(a, b)), own.reduce((a, b) => Math.max(a, b))];
  const [start, end] = [Math.asinh(nearest / unit), Math.asinh(deepest / unit)];
  const needed = Math.min(count, 1 + Math.ceil((end - start) / 0.05));
  const blurs = spread(start, end, needed).map((place) => unit * Math.sinh(place));
  if (blurs.length > 1) [blurs[0], blurs[blurs.length - 1]] = [nearest, deepest];
  const places = Float32Array.from({ length: heights + 2 }, (_, k) => placeAmong(blurs, own[Math.min(k, heights)]!));
  return { blurs, places, low, high };
}

/** The blur of a height, mm, by the sharp plane nearest to it; heights are to be asked from the lowest up. */
function blurToNearest(view: View, sharpAt: readonly number[]): (height: number) => number {
  const planes = [...sharpAt].sort((one, other) => one - other);
  let at = 0;
  return (height) => {
    while (at < planes.length - 1 && planes[at + 1]! - height < height - planes[at]!) at++;
    return blurAt({ ...view, focusHeight: planes[at]! }, height);
  };
}

/** The blur that a pixel and diffraction hide, mm. */
function blurHidden({ pitch, effectiveFNumber, wavelength = 0.000555 }: View): number {
  return Math.hypot(pitch, 2 * wavelength * effectiveFNumber);
}

function spread(start: number, end: number, count: number): number[] {
  if (count === 1) return [(start + end) / 2];
  const evenly = (from: number, to: number, steps: number) =>
    Array.from({ length: steps }, (_, k) => from + (k * (to - from)) / steps);
  if (count < 3 || start >= 0 || end <= 0) return [...evenly(start, end, count - 1), end];
  const before = Math.min(count - 2, Math.max(1, Math.round(((count - 1) * start) / (start - end))));
  return [...evenly(start, 0, before), ...evenly(0, end, count - 1 - before), end];
}

function placeAmong(blurs: readonly number[], blur: number): number {
  const last = blurs.length - 1;
  let k = 0;
  while (k < last - 1 && blur >= blurs[k + 1]!) k++;
  if (last === 0) return 0;
  const [from, to] = [blurs[k]!, blurs[k + 1]!];
  const share = from * to < 0 ? (blur - from) / (to - from) : (blur ** 2 - from ** 2) / (to ** 2 - from ** 2);
  return k + Math.min(1, Math.max(0, share));
}

/** Where heights lie among the slices, from the table. */
export function placesOf({ places, low, high }: Slices, height: Float32Array): Float32Array {
  const found = new Float32Array(height.length);
  if (!(high > low)) return found.fill(places[0]!);
  const scale = heights / (high - low);
  for (let at = 0; at < height.length; at++) {
    const place = (height[at]! - low) * scale;
    const inside = place > 0 ? (place < heights ? place : heights) : 0;
    const below = inside | 0;
    const start = places[below]!;
    found[at] = start + (inside - below) * (places[below + 1]! - start);
  }
  return found;
}
