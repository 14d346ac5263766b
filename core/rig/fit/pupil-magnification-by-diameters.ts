import { OutOfRange } from '#core/quantity/errors.ts';
import type { Estimate } from './lens-fit.ts';

/** What a ruler held to a lens shows, mm. */
export interface PupilDiameters {
  /** Of the bright disc seen through the front: the entrance pupil. */
  readonly fromFront: number;
  /** Of the bright disc seen through the back, at the same setting of the iris: the exit pupil. */
  readonly fromBack: number;
  /** Standard error of one reading; left out, nothing is said about that of the ratio. */
  readonly readTo?: number;
}

/**
 * The pupil magnification of a real lens, from the two discs that one sees when looking through it from either end.
 *
 * P = D′/D; δP = P δ √(1/D² + 1/D′²)
 *
 * @param given.fromFront *D*, mm; above 0
 * @param given.fromBack *D′*, mm; above 0
 * @param given.readTo *δ*, mm; above 0
 * @returns *P* and its standard error. Not the ratio of two diameters read at different settings of the iris.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a lens focused to infinity, seen from so far away that the ruler beside the pupil is as far as the pupil: from near by the
 * nearer of the two looks too large.
 * Source: definition of the pupils; derived in [README](README.md#two-pupils).
 *
 * @example pupilMagnificationByDiameters({ fromFront: 10, fromBack: 12 }).value // 1.2
 */
export function pupilMagnificationByDiameters({ fromFront, fromBack, readTo }: PupilDiameters): Estimate {
  for (const [place, diameter] of [
    ['from-front', fromFront],
    ['from-back', fromBack],
    ['read-to', readTo ?? 1],
  ] as const) {
    if (!(diameter > 0 && diameter < Infinity)) {
      throw new OutOfRange(`${place}.entrance-pupil`, diameter, 'a finite number above 0');
    }
  }
  const value = fromBack / fromFront;
  const standardError = readTo === undefined ? null : value * readTo * Math.hypot(1 / fromFront, 1 / fromBack);
  return { value, standardError };
}
