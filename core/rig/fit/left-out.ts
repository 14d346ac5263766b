import { erf } from '#core/exposure/erf.ts';
import type { GroupedPoint, ParallelLines } from './parallel-lines.ts';
import { unitError } from './reading-errors.ts';
import { studentTails } from './student-tails.ts';

/** What the fit of all others says of one reading. */
export interface LeftOut {
  /** The residual over its standard error, told by the others and by what was said of the readings: Student's *t* of one degree of freedom less than the fit has, or normal. */
  readonly studentised: number;
  /** How likely the farthest of so many readings is as far out as that by chance: 0 to 1. */
  readonly chance: number;
  /** *b* of the fit without it. */
  readonly slope: number;
}

/** A reading with a larger leverage decides its own fitted value: nobody can say whether it fits. */
const decides = 1 - 1e-9;

/**
 * Each reading judged by the fit without it, and what that fit's slope is.
 *
 * t = r √w/(s₋ √(1 − h)), s₋² = (ν s² − w r²/(1 − h))/(ν − 1); b₋ = b − w (x − x̄_g) r/((1 − h) S_xx)
 *
 * @param areTold weights are 1/σ² as said beforehand: then s₋ is 1 at least, and t is normal where it is 1
 * @returns null for a reading that nothing else can judge: its leverage is 1, or too few degrees of freedom are left, two of them, or one where errors are told.
 *
 * Chances are Bonferroni's, times the number of readings. Source: Belsley, Kuh and Welsch, Regression Diagnostics (Wiley 1980), ch. 2 (from memory).
 */
export function leftOut(
  readings: readonly GroupedPoint[],
  lines: ParallelLines,
  areTold = false,
): readonly (LeftOut | null)[] {
  const { scatter, degreesOfFreedom: freedom } = lines;
  return readings.map(({ x, weight, group }, at) => {
    const [residual, leverage] = [lines.residuals[at]!, lines.leverages[at]!];
    if (scatter === null || freedom < (areTold ? 1 : 2) || leverage > decides) return null;
    const own = (weight * residual ** 2) / (1 - leverage);
    const others = freedom === 1 ? 0 : Math.max(0, freedom * scatter ** 2 - own) / (freedom - 1);
    // Readings that agree to rounding leave nothing to judge by.
    if (!areTold && !(others > 1e-24 * weight * (lines.slope * x + lines.groups.get(group)!.intercept) ** 2))
      return null;
    const unit = unitError(Math.sqrt(others), areTold)!;
    const studentised = (residual * Math.sqrt(weight)) / (unit * Math.sqrt(1 - leverage));
    // Where the others scatter no more than was said the error is known, not estimated.
    const tails =
      areTold && unit === 1 ? 1 - erf(Math.abs(studentised) / Math.SQRT2) : studentTails(studentised, freedom - 1);
    return {
      studentised,
      chance: Math.min(1, readings.length * tails),
      slope:
        lines.slope - (weight * (x - lines.groups.get(group)!.meanX) * residual * lines.slopeVariance) / (1 - leverage),
    };
  });
}

/** Below that chance a reading is not left to chance. */
const spoils = 0.05;

/** Nearer than that to one another two readings are out alike. */
const alike = 1e-6;

/** The place of the reading that spoils a fit, the farthest out of them; null where chance may have brought it there, or two are out alike and nobody can say which: so it is in threes, and in pairs at one setting. */
export function spoilerOf(judged: readonly (LeftOut | null)[]): number | null {
  const out = judged.flatMap((one, place) =>
    one && one.chance < spoils ? { place, chance: one.chance, far: Math.abs(one.studentised) } : [],
  );
  // Far out chances are too small to differ.
  const [first, second] = out.sort((a, b) => a.chance - b.chance || b.far - a.far);
  return first === undefined || (second && first.far - second.far < alike * first.far) ? null : first.place;
}
