import { marksAt, sampleAt, type CombShape } from './comb.ts';

/**
 * How strong a harmonic of a comb is from place to place: its amplitude over about four marks.
 *
 * @param level the profile without its slow part
 * @param harmonic 1 for the fundamental
 * @returns one number a sample, 0 or above
 */
export function envelope(level: Float64Array, shape: CombShape, harmonic: number): Float64Array {
  const count = level.length;
  const [re, im] = [new Float64Array(count), new Float64Array(count)];
  for (let at = 0; at < count; at++) {
    const angle = 2 * Math.PI * harmonic * marksAt(shape, sampleAt(at, count));
    re[at] = level[at]! * Math.cos(angle);
    im[at] = -level[at]! * Math.sin(angle);
  }
  const width = Math.max(3, Math.round((2 * count) / shape.cycles));
  const [smoothRe, smoothIm] = [smoothed(re, width), smoothed(im, width)];
  return smoothRe.map((value, at) => 2 * Math.hypot(value, smoothIm[at]!));
}

/** Marks shown with less than that share of the best contrast may have changed light and dark: a wide blur's do, with up to 0.13 of it. */
const softest = 0.3;

/**
 * How far each sample is to be trusted: 1 where marks are sharpest, 0 where they are so soft that light and dark may have changed places.
 *
 * @param fundamental their {@link envelope}
 */
export function trustAt(fundamental: Float64Array): Float64Array {
  const most = fundamental.reduce((before, value) => Math.max(before, value), 0);
  return fundamental.map((value) => Math.min(1, Math.max(0, (value / most - softest) / (1 - 2 * softest))));
}

/** The mean over *width* samples, taken twice: a triangle's weight. */
function smoothed(values: Float64Array, width: number): Float64Array {
  return averaged(averaged(values, width), width);
}

function averaged(values: Float64Array, width: number): Float64Array {
  const sums = new Float64Array(values.length + 1);
  for (let at = 0; at < values.length; at++) sums[at + 1] = sums[at]! + values[at]!;
  const half = width >> 1;
  return values.map((_, at) => {
    const [from, to] = [Math.max(0, at - half), Math.min(values.length, at + half + 1)];
    return (sums[to]! - sums[from]!) / (to - from);
  });
}
