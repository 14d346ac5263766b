import type { Estimate, UntoldLens, ContradictoryLens } from './lens-fit.ts';
import { leftOut, spoilerOf } from './left-out.ts';
import { parallelLines, type ParallelLines } from './parallel-lines.ts';
import { requirePhotographs, type RulerPhotograph } from './photograph.ts';

/** A photograph of a ruler, and how the focus ring stood. */
export interface SetPhotograph extends RulerPhotograph {
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
  /** Place of the photograph that spoils the fit: chance brings one so far out once in twenty fits or less. */
  readonly spoiler: number | null;
}

export interface JudgedPhotograph {
  /** *m* measured, and by the fit. */
  readonly magnification: number;
  readonly fitted: number;
  /** *w* measured less fitted, mm; null where it was not measured. */
  readonly workingDistance: number | null;
  /** The residual in standard errors, told by the others; null where they cannot tell. */
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
 * Assumes that the whole lens moves when it focuses, so that f is one at all settings: a lens that moves glass inside is fitted setting by setting. The same share
 * of every magnification is taken as its error. With one setting it is `fitLens`. Source: derived in [README](README.md#several-settings).
 *
 * @example fitSettings([{ fieldWidth: 360, sensorWidth: 36, extension: 0, setting: '' }, { fieldWidth: 60, sensorWidth: 36, extension: 25, setting: '' }]).focalLength.value // 50
 */
export function fitSettings(photographs: readonly SetPhotograph[]): LensOfSettings | UntoldLens | ContradictoryLens {
  requirePhotographs(photographs);
  if (photographs.length === 0) return { outcome: 'cannot tell', because: 'no photograph' };
  if (photographs.length === 1) return { outcome: 'cannot tell', because: 'one photograph' };
  const readings = photographs.map(({ fieldWidth, sensorWidth, extension, setting }) => {
    const y = sensorWidth / fieldWidth;
    return { x: extension, y, weight: 1 / y ** 2, group: setting };
  });
  const lines = parallelLines(readings);
  if (!lines) return { outcome: 'cannot tell', because: 'one extension' };
  const fitted = readings.map(({ x, group }) => lines.groups.get(group)!.intercept + lines.slope * x);
  if (!(lines.slope > 0 && fitted.every((m) => m > 0)))
    return { outcome: 'contradictory', because: 'field does not shrink' };
  const { scatter, slope, slopeVariance } = lines;
  const estimate = (value: number, variance: number): Estimate => ({
    value,
    standardError: scatter === null ? null : scatter * Math.sqrt(variance),
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
  const judged = leftOut(readings, lines);
  const depth = depthOf(photographs, lines, fitted);
  return {
    outcome: 'fitted',
    focalLength,
    settings,
    frontPrincipalDepth: depth,
    photographs: photographs.map(({ workingDistance }, at) => ({
      magnification: readings[at]!.y,
      fitted: fitted[at]!,
      workingDistance:
        depth === null || workingDistance === undefined
          ? null
          : workingDistance - (1 + 1 / fitted[at]!) / slope + depth.value,
      studentised: judged[at]?.studentised ?? null,
      focalLengthWithout: judged[at] && judged[at].slope > 0 ? 1 / judged[at].slope : null,
    })),
    degreesOfFreedom: lines.degreesOfFreedom,
    spoiler: spoilerOf(judged),
  };
}

/** The mean of what each working distance says; its error that of the mean, and that of the lines beneath it. */
function depthOf(
  photographs: readonly SetPhotograph[],
  { slope, groups, slopeVariance, scatter }: ParallelLines,
  fitted: readonly number[],
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
  if (scatter === null || count < 2) return { value, standardError: null };
  let ofIntercepts = 0;
  let bySlope = measured.reduce((sum, one) => sum + one.bySlope, 0) / count;
  for (const [setting, { weight, meanX }] of groups) {
    const by = measured.filter((one) => one.setting === setting).reduce((sum, one) => sum + one.byIntercept, 0) / count;
    ofIntercepts += by ** 2 / weight;
    // Lines turn about the mean of their readings.
    bySlope -= by * meanX;
  }
  const ofLines = scatter ** 2 * (ofIntercepts + bySlope ** 2 * slopeVariance);
  const ofReadings = measured.reduce((sum, { depth }) => sum + (depth - value) ** 2, 0) / (count - 1);
  return { value, standardError: Math.sqrt(ofLines + ofReadings / count) };
}
