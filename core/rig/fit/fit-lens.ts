import { requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Estimate, FittedLens, LensFit } from './lens-fit.ts';
import { requirePhotographs, type RulerPhotograph } from './photograph.ts';
import { straightLine, type StraightLine } from './straight-line.ts';

/** What is known beside the photographs. */
export interface FitOptions {
  /** *m₀*, where it is known: 0 for a lens set to infinity. Then one photograph with a ring tells *f*. */
  readonly focusMagnification?: number;
  /** Standard errors of one reading, mm. Left out, every field is taken as read to the same share of itself, and scatter tells how large that is. */
  readonly readTo?: { readonly fieldWidth: number; readonly workingDistance: number };
}

/**
 * A real lens from photographs of a ruler with different rings: focal length, focus magnification, and how deep H lies behind the rim.
 *
 * m = m₀ + e/f, a straight line in e; h = f (1 + 1/m) − w on the line
 *
 * @param photographs one or more, the lens left at one focus setting; see {@link RulerPhotograph}
 * @param options see {@link FitOptions}
 * @returns the lens with standard errors and residuals, or which of the photographs' shortcomings leaves it open; words for it from `lensFitWords`.
 *   *h* is not a fit of its own: working distances do not steer *f*, so that a badly measured rim spoils nothing else.
 * @throws FaultyPhotograph for a photograph whose numbers cannot be, by its place; OutOfRange for options that cannot be
 *
 * Assumes Gaussian optics, rings whose lengths are known well, and readings independent of one another. Standard errors of f and h
 * are carried over to first order.
 * Source: least squares; derived in [README](README.md#a-lens-from-a-ruler).
 *
 * @example fitLens([{ fieldWidth: 360, sensorWidth: 36, extension: 0 }, { fieldWidth: 60, sensorWidth: 36, extension: 25 }]).focalLength.value // 50
 */
export function fitLens(photographs: readonly RulerPhotograph[], options: FitOptions = {}): LensFit {
  requirePhotographs(photographs);
  const { focusMagnification, readTo } = options;
  if (focusMagnification !== undefined) requireFinite('focus-magnification', focusMagnification);
  if (readTo) {
    requirePositive('field-width', readTo.fieldWidth);
    requirePositive('working-distance', readTo.workingDistance);
  }
  const unknowns = focusMagnification === undefined ? 2 : 1;
  if (photographs.length === 0) return { outcome: 'cannot tell', because: 'no photograph' };
  if (photographs.length < unknowns) return { outcome: 'cannot tell', because: 'one photograph' };

  const line = straightLine(
    photographs.map(({ fieldWidth, sensorWidth, extension }) => {
      const magnification = sensorWidth / fieldWidth;
      // The same share of every field is the same share of every magnification.
      const error = magnification * (readTo ? readTo.fieldWidth / fieldWidth : 1);
      return { x: extension, y: magnification, weight: 1 / error ** 2 };
    }),
    focusMagnification === undefined ? {} : { intercept: focusMagnification },
  );
  if (!line) return { outcome: 'cannot tell', because: unknowns === 2 ? 'one extension' : 'no ring' };
  const onLine = photographs.map(({ extension }) => line.intercept + line.slope * extension);
  if (!(line.slope > 0 && onLine.every((magnification) => magnification > 0))) {
    return { outcome: 'contradictory', because: 'field does not shrink' };
  }
  const fit = fittedLens(photographs, line, onLine, readTo);
  const { focalLength, focusMagnification: atZero } = fit;
  if ((focalLength.standardError ?? 0) > mostUncertain * focalLength.value) {
    return { outcome: 'cannot tell', because: 'too uncertain' };
  }
  if (atZero.value < -(atZero.standardError === null ? pastInfinity : pastInfinity + 3 * atZero.standardError)) {
    return { outcome: 'contradictory', because: 'past infinity' };
  }
  return fit;
}

/** A focal length with a larger share of itself as its standard error could be twice as long or half. */
const mostUncertain = 0.5;

/** Lenses focus a little past infinity, for warm days; none by as much as this *m₀* below 0. */
const pastInfinity = 0.05;

function fittedLens(
  photographs: readonly RulerPhotograph[],
  line: StraightLine,
  onLine: readonly number[],
  readTo: FitOptions['readTo'],
): FittedLens {
  // σ of a reading of weight 1: known, told by the scatter, or not told.
  const unit = readTo ? 1 : line.scatter;
  const depth = frontPrincipalDepth(photographs, line, onLine, unit, readTo?.workingDistance);
  return {
    outcome: 'fitted',
    focalLength: estimate(1 / line.slope, unit, line.variances.slope / line.slope ** 4),
    focusMagnification: estimate(line.intercept, unit, line.variances.intercept),
    frontPrincipalDepth: depth,
    residuals: photographs.map(({ fieldWidth, sensorWidth, workingDistance }, index) => {
      const magnification = onLine[index] as number;
      return {
        magnification: line.residuals[index] as number,
        fieldWidth: fieldWidth - sensorWidth / magnification,
        workingDistance:
          depth === null || workingDistance === undefined
            ? null
            : workingDistance - (1 + 1 / magnification) / line.slope + depth.value,
      };
    }),
    degreesOfFreedom: line.degreesOfFreedom,
    misfit: readTo ? line.scatter : null,
  };
}

/** The mean of what each working distance says; its error that of the mean, and that of the line beneath it. */
function frontPrincipalDepth(
  photographs: readonly RulerPhotograph[],
  { slope, variances }: StraightLine,
  onLine: readonly number[],
  unit: number | null,
  readTo: number | undefined,
): Estimate | null {
  const measured = photographs.flatMap(({ extension, workingDistance }, index) => {
    const m = onLine[index] as number;
    if (workingDistance === undefined) return [];
    return {
      depth: (1 + 1 / m) / slope - workingDistance,
      // How s = (1 + 1/m)/b changes with a and b, m being a + b e.
      byIntercept: -1 / (slope * m ** 2),
      bySlope: -(1 + 1 / m) / slope ** 2 - extension / (slope * m ** 2),
    };
  });
  if (measured.length === 0) return null;
  const mean = (of: (one: (typeof measured)[number]) => number) =>
    measured.reduce((before, one) => before + of(one), 0) / measured.length;
  const value = mean(({ depth }) => depth);
  const [a, b] = [mean(({ byIntercept }) => byIntercept), mean(({ bySlope }) => bySlope)];
  const ofLine = a * a * variances.intercept + 2 * a * b * variances.both + b * b * variances.slope;
  const squares = measured.length * mean(({ depth }) => (depth - value) ** 2);
  const ofReading = readTo !== undefined ? readTo ** 2 : measured.length > 1 ? squares / (measured.length - 1) : null;
  if (unit === null || ofReading === null) return { value, standardError: null };
  return { value, standardError: Math.sqrt(unit ** 2 * ofLine + ofReading / measured.length) };
}

function estimate(value: number, unit: number | null, variance: number): Estimate {
  return { value, standardError: unit === null ? null : unit * Math.sqrt(variance) };
}
