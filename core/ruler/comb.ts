/**
 * Where evenly spaced marks stand along a line that is seen in perspective: place *s* along it, −½ at its beginning and ½ at its end,
 * is k(s) = κ s/(1 + γ s) marks from its middle.
 */
export interface CombShape {
  /** *κ*, marks along the line as dense as they are in its middle. */
  readonly cycles: number;
  /** *γ*, how the marks' density changes: κ/(1 + γ s)² at *s*; 0 for a line seen square on, below 0 where marks get narrower. */
  readonly drift: number;
}

/** k(s), marks from the middle of the line. */
export const marksAt = ({ cycles, drift }: CombShape, s: number): number => (cycles * s) / (1 + drift * s);

/** dk/ds, marks a line's length at *s*. */
export const densityAt = ({ cycles, drift }: CombShape, s: number): number => cycles / (1 + drift * s) ** 2;

/** The inverse of {@link marksAt}: where the mark *k* from the middle stands. */
export const placeOfMark = ({ cycles, drift }: CombShape, marks: number): number => marks / (cycles - drift * marks);

/** Steeper drifts than that would be a ruler seen almost along itself. */
export const mostDrift = 0.7;

/** The place of a sample of *count* along the line. */
export const sampleAt = (index: number, count: number): number => index / (count - 1) - 0.5;
