import type { Estimate, UntoldLens, ContradictoryLens } from './lens-fit.ts';
import { leftOut, spoilerOf } from './left-out.ts';
import { parallelLines, type ParallelLines } from './parallel-lines.ts';
import { requirePhotographs, type MeasuredPhotograph } from './photograph.ts';
import { byHand, magnificationErrors, unitError } from './reading-errors.ts';

/** A photograph of a ruler, and how the focus ring stood. */
export interface SetPhotograph extends MeasuredPhotograph {
  /** Any name: the same name is the same setting. */
  readonly setting: string;
}

/** A lens that was photographed with at several settings of its focus ring. */
export interface LensOfSettings {
  readonly outcome: 'fitted';
  /** *f*, mm. */
  readonly focalLength: Estimate;
  /** *m₀* of each setting. */
  readonly settings: readonly { readonly setting: string; readonly focusMagnification: Estimate }[];
  /** *h*, mm; null where no working distance was measured. */
  readonly frontPrincipalDepth: Estimate | null;
  /** In the order of the photographs. */
  readonly photographs: readonly JudgedPhotograph[];
  readonly degreesOfFreedom: number;
  /** √χ² per degree of freedom, 1 for readings as good as they say; errors are wider by what it is above 1. Null where none is left over or nothing was said. */
  readonly misfit: number | null;
  /** Place of the photograph that spoils the fit: chance brings one so far out once in twenty fits or less; null where there is none, or two are out alike. */
  readonly spoiler: number | null;
}

export interface JudgedPhotograph {
  /** *m* measured, and by the fit. */
  readonly magnification: number;
  readonly fitted: number;
  /** Of the measured *m* by itself; null where the photographs do not all say it. */
  readonly standardError: number | null;
  /** *w* measured less fitted, mm; null where it was not measured. */
  readonly workingDistance: number | null;
  /** The residual in standard errors, told by the others and its own error; null where they cannot tell. */
  readonly studentised: number | null;
  /** *f* of the fit without it, mm. */
  readonly focalLengthWithout: number | null;
}

const mostUncertain = 0.5;
const pastInfinity = 0.05;

/**
 * A real lens from photographs of a ruler with different rings and at different settings of its focus ring.
 *
 * m = m₀ of the setting + e/f, parallel straight lines in e; h = f (1 + 1/m) − w on them
 *
 * @param photographs see {@link SetPhotograph}; two at least with one setting and different rings
 * @returns the lens with standard errors, and each photograph judged by the others; or in words of `lensFitWords` why it stays open
 * @throws FaultyPhotograph for a photograph whose numbers cannot be, by its place
 *
 * Assumes that the whole lens moves when it focuses, so that f is one at all settings: a lens that moves glass inside is fitted setting by setting. Where all photographs say how well
 * they were read each counts by its own error, and where they scatter more than that all errors are wider; else the same share of every magnification is taken as its error,
 * and with one setting it is `fitLens`. Source: derived in [README](README.md#several-settings).
 *
 * @example fitSettings([{ fieldWidth: 360, sensorWidth: 36, extension: 0, setting: '' }, { fieldWidth: 60, sensorWidth: 36, extension: 25, setting: '' }]).focalLength.value // 50
 */
export function fitSettings(photographs: readonly SetPhotograph[]): LensOfSettings | UntoldLens | ContradictoryLens {
  requirePhotographs(photographs);
  if (photographs.length === 0) return { outcome: 'cannot tell', because: 'no photograph' };
  if (photographs.length === 1) return { outcome: 'cannot tell', because: 'one photograph' };
  const errors = magnificationErrors(photographs);
  const readings = photographs.map(({ fieldWidth, sensorWidth, extension, setting }, at) => {
    const y = sensorWidth / fieldWidth;
    return { x: extension, y, weight: 1 / (errors?.[at] ?? y) ** 2, group: setting };
  });
  const lines = parallelLines(readings);
  if (!lines) return { outcome: 'cannot tell', because: 'one extension' };
  const fitted = readings.map(({ x, group }) => lines.groups.get(group)!.intercept + lines.slope * x);
  if (!(lines.slope > 0 && fitted.every((m) => m > 0)))
    return { outcome: 'contradictory', because: 'field does not shrink' };
  const { scatter, slope, slopeVariance } = lines;
  const unit = unitError(scatter, errors !== null);
  const estimate = (value: number, variance: number): Estimate => ({
    value,
    standardError: unit === null ? null : unit * Math.sqrt(variance),
  });
  const focalLength = estimate(1 / slope, slopeVariance / slope ** 4);
  if ((focalLength.standardError ?? 0) > mostUncertain * focalLength.value) {
    return { outcome: 'cannot tell', because: 'too uncertain' };
  }
  const settings = [...lines.groups].map(([setting, { intercept, weight, meanX }]) => ({
    setting,
    focusMagnification: estimate(intercept, 1 / weight + meanX ** 2 * slopeVariance),
  }));
  const isPast = ({ value, standardError }: Estimate) => value < -(pastInfinity + 3 * (standardError ?? 0));
  if (settings.some(({ focusMagnification }) => isPast(focusMagnification)))
    return { outcome: 'contradictory', because: 'past infinity' };
  const judged = leftOut(readings, lines, errors !== null);
  const depth = depthOf(photographs, lines, fitted, { unit, leastReading: errors ? byHand : null });
  return {
    outcome: 'fitted',
    focalLength,
    settings,
    frontPrincipalDepth: depth,
    photographs: photographs.map(({ workingDistance }, at) => ({
      magnification: readings[at]!.y,
      fitted: fitted[at]!,
      standardError: errors?.[at] ?? null,
      workingDistance:
        depth === null || workingDistance === undefined
          ? null
          : workingDistance - (1 + 1 / fitted[at]!) / slope + depth.value,
      studentised: judged[at]?.studentised ?? null,
      focalLengthWithout: judged[at] && judged[at].slope > 0 ? 1 / judged[at].slope : null,
    })),
    degreesOfFreedom: lines.degreesOfFreedom,
    misfit: errors && scatter,
    spoiler: spoilerOf(judged),
  };
}

/** The mean of what each working distance says; its error that of the mean, and that of the lines beneath it. */
function depthOf(
  photographs: readonly SetPhotograph[],
  { slope, groups, slopeVariance }: ParallelLines,
  fitted: readonly number[],
  { unit, leastReading }: { readonly unit: number | null; readonly leastReading: number | null },
): Estimate | null {
  const measured = photographs.flatMap(({ workingDistance, extension, setting }, at) => {
    if (workingDistance === undefined) return [];
    const m = fitted[at]!;
    return {
      setting,
      depth: (1 + 1 / m) / slope - workingDistance,
      byIntercept: -1 / (slope * m ** 2),
      bySlope: -(1 + 1 / m) / slope ** 2 - extension / (slope * m ** 2),
    };
  });
  const count = measured.length;
  if (count === 0) return null;
  const value = measured.reduce((sum, { depth }) => sum + depth, 0) / count;
  if (unit === null || (count < 2 && leastReading === null)) return { value, standardError: null };
  let ofIntercepts = 0;
  let bySlope = measured.reduce((sum, one) => sum + one.bySlope, 0) / count;
  for (const [setting, { weight, meanX }] of groups) {
    const by = measured.filter((one) => one.setting === setting).reduce((sum, one) => sum + one.byIntercept, 0) / count;
    ofIntercepts += by ** 2 / weight;
    // Lines turn about the mean of their readings.
    bySlope -= by * meanX;
  }
  const ofLines = unit ** 2 * (ofIntercepts + bySlope ** 2 * slopeVariance);
  const squares = measured.reduce((sum, { depth }) => sum + (depth - value) ** 2, 0);
  const ofReadings = Math.max((leastReading ?? 0) ** 2, count < 2 ? 0 : squares / (count - 1));
  return { value, standardError: Math.sqrt(ofLines + ofReadings / count) };
}
