import { densityAt, sampleAt, type CombShape } from './comb.ts';

/** What is left when the mean over one mark's width is taken away from place to place: a comb has none of its own in that. */
export function withoutSlowPart(profile: Float64Array, shape: CombShape): Float64Array {
  const count = profile.length;
  const sums = new Float64Array(count + 1);
  for (let at = 0; at < count; at++) sums[at + 1] = sums[at]! + profile[at]!;
  const upTo = (place: number) => {
    const held = Math.min(count, Math.max(0, place));
    const whole = Math.min(count - 1, Math.floor(held));
    return sums[whole]! + (held - whole) * profile[whole]!;
  };
  return profile.map((value, at) => {
    const width = Math.min(count / 2, (count - 1) / densityAt(shape, sampleAt(at, count)));
    // At the ends the nearest whole width stands for the one that would reach beyond.
    const middle = Math.min(count - width / 2, Math.max(width / 2, at + 0.5));
    return value - (upTo(middle + width / 2) - upTo(middle - width / 2)) / width;
  });
}
