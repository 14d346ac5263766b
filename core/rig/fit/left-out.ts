import type { GroupedPoint, ParallelLines } from './parallel-lines.ts';
import { studentTails } from './student-tails.ts';

/** What the fit of all others says of one reading. */
export interface LeftOut {
  /** The residual over its standard error, told by the others alone: Student's *t* of one degree of freedom less than the fit has. */
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
 * @returns null for a reading that nothing else can judge: its leverage is 1, or fewer than two degrees of freedom are left
 *
 * Chances are Bonferroni's, times the number of readings. Source: Belsley, Kuh and Welsch, Regression Diagnostics (Wiley 1980), ch. 2 (from memory).
 */
export function leftOut(readings: readonly GroupedPoint[], lines: ParallelLines): readonly (LeftOut | null)[] {
  const { scatter, degreesOfFreedom: freedom } = lines;
  return readings.map(({ x, weight, group }, at) => {
    const [residual, leverage] = [lines.residuals[at]!, lines.leverages[at]!];
    if (scatter === null || freedom < 2 || leverage > decides) return null;
    const own = (weight * residual ** 2) / (1 - leverage);
    const others = Math.max(0, freedom * scatter ** 2 - own) / (freedom - 1);
    // Readings that agree to rounding leave nothing to judge by.
    if (!(others > 1e-24 * weight * (lines.slope * x + lines.groups.get(group)!.intercept) ** 2)) return null;
    const studentised = (residual * Math.sqrt(weight)) / Math.sqrt(others * (1 - leverage));
    return {
      studentised,
      chance: Math.min(1, readings.length * studentTails(studentised, freedom - 1)),
      slope:
        lines.slope - (weight * (x - lines.groups.get(group)!.meanX) * residual * lines.slopeVariance) / (1 - leverage),
    };
  });
}

/** Below that chance a reading is not left to chance. */
const spoils = 0.05;

/** The place of the reading that spoils a fit, the farthest out of them; null where chance may have brought it there. */
export function spoilerOf(judged: readonly (LeftOut | null)[]): number | null {
  let [place, least] = [-1, spoils];
  judged.forEach((one, at) => {
    if (one && one.chance < least) [place, least] = [at, one.chance];
  });
  return place < 0 ? null : place;
}
