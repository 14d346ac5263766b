import { leftOut, spoilerOf } from './left-out.ts';
import type { Estimate } from './lens-fit.ts';
import { parallelLines, type ParallelLines } from './parallel-lines.ts';
import { requirePhotographs, type MeasuredPhotograph } from './photograph.ts';
import { byHand, magnificationErrors, unitError } from './reading-errors.ts';

/** A lens by how far its rim was from the ruler. */
export interface LensByDistances {
  readonly focalLength: Estimate;
  readonly frontPrincipalDepth: Estimate;
  /** Those with a working distance, in their order. */
  readonly photographs: readonly JudgedDistance[];
  /** √χ² per degree of freedom, 1 for readings as good as they say; null where none is left over or nothing was said. */
  readonly misfit: number | null;
  /** Place among these of the one that spoils the fit: chance brings one so far out once in twenty fits or less. */
  readonly spoiler: number | null;
}

export interface JudgedDistance {
  /** Its place among all photographs. */
  readonly place: number;
  /** *w*, measured and by the fit, mm. */
  readonly workingDistance: number;
  readonly fitted: number;
  /** Of the measured *w*, and of the *w* that its magnification leads to, together; null where the photographs do not all say how well they were read. */
  readonly standardError: number | null;
  /** The residual in standard errors, told by the others; null where they cannot tell. */
  readonly studentised: number | null;
  /** *f* of the fit without it, mm. */
  readonly focalLengthWithout: number | null;
}

const rounds = 4;

/**
 * A lens from working distances alone: it needs no rings, only magnifications that differ, by its focus ring or by them.
 *
 * w = f/m + (f − h), a straight line in 1/m
 *
 * @param photographs those with a working distance count; at least two magnifications
 * @returns null where they leave the line open, or it falls: no lens does that
 * @throws FaultyPhotograph for a photograph whose numbers cannot be, by its place
 *
 * Assumes that the whole lens moves when it focuses, its rim with it, and that every distance was measured equally well. Where all photographs say how well their fields were read,
 * σ² = (1/12 mm²) + (f σ_m/m²)², never less than a distance read to the nearest millimetre. Source: s = f (1 + 1/m) = w + h; derived in [README](README.md#by-distances).
 *
 * @example fitDistances([{ fieldWidth: 36, sensorWidth: 36, extension: 0, workingDistance: 80 }, { fieldWidth: 72, sensorWidth: 36, extension: 0, workingDistance: 130 }]).focalLength.value // 50
 */
export function fitDistances(photographs: readonly MeasuredPhotograph[]): LensByDistances | null {
  requirePhotographs(photographs);
  const readings = photographs.flatMap(({ fieldWidth, sensorWidth, workingDistance }, place) =>
    workingDistance === undefined
      ? []
      : [{ x: fieldWidth / sensorWidth, y: workingDistance, weight: 1, group: '', place }],
  );
  const shares = magnificationErrors(readings.map(({ place }) => photographs[place]!))?.map(
    (error, at) => error * readings[at]!.x,
  );
  let lines: ParallelLines | null = parallelLines(readings);
  let errors: readonly number[] | undefined;
  // What a magnification's error does to w grows with f, which counts little in its own weights.
  for (let round = 0; shares && lines && round < rounds; round++) {
    const { slope } = lines;
    errors = shares.map((share, at) => Math.hypot(byHand, slope * readings[at]!.x * share));
    readings.forEach((reading, at) => (reading.weight = 1 / errors![at]! ** 2));
    lines = parallelLines(readings);
  }
  if (!lines || !(lines.slope > 0)) return null;
  const { slope, slopeVariance, scatter, residuals } = lines;
  const { intercept, weight, meanX } = lines.groups.get('')!;
  const unit = unitError(scatter, errors !== undefined);
  const error = (variance: number) => (unit === null ? null : unit * Math.sqrt(variance));
  const judged = leftOut(readings, lines, errors !== undefined);
  return {
    focalLength: { value: slope, standardError: error(slopeVariance) },
    // f − a varies as f and the line's height at 1/m = 0 do, which turn against each other about the mean of 1/m.
    frontPrincipalDepth: {
      value: slope - intercept,
      standardError: error(1 / weight + (1 + meanX) ** 2 * slopeVariance),
    },
    photographs: readings.map(({ place, y }, at) => ({
      place,
      workingDistance: y,
      fitted: y - residuals[at]!,
      standardError: errors?.[at] ?? null,
      studentised: judged[at]?.studentised ?? null,
      focalLengthWithout: judged[at] && judged[at].slope > 0 ? judged[at].slope : null,
    })),
    misfit: errors ? scatter : null,
    spoiler: spoilerOf(judged),
  };
}
