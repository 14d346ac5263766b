import type { Estimate } from './lens-fit.ts';
import { requirePhotographs, type RulerPhotograph } from './photograph.ts';
import { straightLine } from './straight-line.ts';

/** A lens by how far its rim was from the ruler. */
export interface LensByDistances {
  readonly focalLength: Estimate;
  readonly frontPrincipalDepth: Estimate;
  /** How many photographs say it. */
  readonly count: number;
}

/**
 * A lens from working distances alone: it needs no rings, only magnifications that differ, by its focus ring or by them.
 *
 * w = f/m + (f − h), a straight line in 1/m
 *
 * @param photographs those with a working distance count; at least two magnifications
 * @returns null where they leave the line open, or it falls: no lens does that
 * @throws FaultyPhotograph for a photograph whose numbers cannot be, by its place
 *
 * Assumes that the whole lens moves when it focuses, its rim with it, and that every distance was measured equally well. Source: s = f (1 + 1/m) = w + h; derived in [README](README.md#by-distances).
 *
 * @example fitDistances([{ fieldWidth: 36, sensorWidth: 36, extension: 0, workingDistance: 80 }, { fieldWidth: 72, sensorWidth: 36, extension: 0, workingDistance: 130 }]).focalLength.value // 50
 */
export function fitDistances(photographs: readonly RulerPhotograph[]): LensByDistances | null {
  requirePhotographs(photographs);
  const readings = photographs.flatMap(({ fieldWidth, sensorWidth, workingDistance }) =>
    workingDistance === undefined ? [] : [{ x: fieldWidth / sensorWidth, y: workingDistance, weight: 1 }],
  );
  const line = straightLine(readings);
  if (!line || !(line.slope > 0)) return null;
  const { slope, intercept, variances, scatter } = line;
  const error = (variance: number) => (scatter === null ? null : scatter * Math.sqrt(variance));
  return {
    focalLength: { value: slope, standardError: error(variances.slope) },
    frontPrincipalDepth: {
      value: slope - intercept,
      standardError: error(variances.slope - 2 * variances.both + variances.intercept),
    },
    count: readings.length,
  };
}
