import { requirePhotographs, type MeasuredPhotograph } from './photograph.ts';

/**
 * Share of a magnification that reading and rounding leave open however well the marks agree: rings are as long as somebody says, a focus ring creeps, a ruler is laid by hand.
 *
 * An assumption of this course, not of a standard.
 */
export const leastShare = 2e-4;

/** Standard error of a distance read by hand to the nearest millimetre: even over 1 mm, so 1 mm/√12. */
export const byHand = 1 / Math.sqrt(12);

/**
 * The standard error of each magnification, that of its own reading and {@link leastShare} put together as squares.
 *
 * σ = m √((δW/W)² + 0.0002²)
 *
 * @returns in the order of the photographs, above 0; null where it is not said of every one how well its field was read
 *
 * @throws FaultyPhotograph for numbers that no photograph has
 *
 * Assumes a sensor whose width is exact. Source: derived in [README](README.md#photographs-that-know-their-own-errors).
 *
 * @example magnificationErrors([{ fieldWidth: 72, fieldWidthError: 0, sensorWidth: 36, extension: 0 }]) // [0.0001]
 */
export function magnificationErrors(photographs: readonly MeasuredPhotograph[]): readonly number[] | null {
  requirePhotographs(photographs);
  const errors = photographs.flatMap(({ fieldWidth, fieldWidthError, sensorWidth }) =>
    fieldWidthError === undefined
      ? []
      : (sensorWidth / fieldWidth) * Math.hypot(fieldWidthError / fieldWidth, leastShare),
  );
  return errors.length === photographs.length ? errors : null;
}

/**
 * σ of a reading of weight 1: by the scatter alone, or, where weights are 1/σ² as said beforehand, 1 and more only where readings scatter more than that (Birge's ratio).
 *
 * @param scatter √(χ²/ν), null where nothing is left over
 * @returns null where nothing tells it
 * @throws RangeError for a scatter that is no number
 *
 * Source: Birge, Physical Review 40 (1932) 207 (from memory).
 *
 * @example unitError(0.3, true) // 1
 */
export function unitError(scatter: number | null, areTold: boolean): number | null {
  if (Number.isNaN(scatter)) throw new RangeError('the scatter is NaN; accepted: a number');
  return areTold ? Math.max(1, scatter ?? 1) : scatter;
}
