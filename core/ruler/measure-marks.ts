import { marksAt, sampleAt } from './comb.ts';
import type { CombFit } from './comb-fit.ts';
import { findComb, type NoComb } from './find-comb.ts';
import { lengthOf, type GreyPhotograph, type RulerLine } from './photograph.ts';
import { profileOf, stripAlong, type Strip } from './strip.ts';

/** The marks that a line crosses. */
export interface MeasuredMarks extends CombFit {
  readonly outcome: 'comb';
  /** Of the line, pixels. */
  readonly length: number;
  /** *ψ*, rad: how much the marks lean from square to the line. Their true spacing is that along the line times cos ψ. */
  readonly lean: { readonly value: number; readonly standardError: number };
  /** Light along the line, leaning as the marks do; samples are spread evenly from end to end. */
  readonly profile: Float64Array;
}

const leans = /* @__PURE__ */ Array.from({ length: 41 }, (_, index) => (index - 20) * 0.01);

/**
 * Finds the marks of a ruler along a line drawn over a photograph.
 *
 * @param photograph and line as `stripAlong` takes them
 * @param reach how far to both sides of the line marks are looked at, pixels; they have to reach so far
 * @returns the marks' comb, how they lean, and the profile that it was found in; or why none was found
 * @throws RangeError for a line outside the photograph
 *
 * Derived in [README](README.md#across-the-line).
 */
export function measureMarks(photograph: GreyPhotograph, line: RulerLine, reach: number): MeasuredMarks | NoComb {
  const strip = stripAlong(photograph, line, reach);
  const start = strip.rows > 1 ? steepest(strip) : 0;
  let lean = { value: start, standardError: 0 };
  let profile = profileOf(strip, start);
  let comb = findComb(profile);
  if (comb.outcome === 'comb' && strip.rows > 2) {
    const better = leanOf(strip, comb, start);
    if (Math.abs(better.value) < 0.3) {
      lean = better;
      profile = profileOf(strip, lean.value);
      comb = findComb(profile, comb);
    }
  }
  if (comb.outcome === 'no comb') return comb;
  return {
    ...comb,
    length: lengthOf(line),
    lean: angleOf(lean, strip.spacing),
    profile,
  };
}

/** The lean, columns a row, at which a strip's rows are most alike: their mean has the steepest edges. */
function steepest(strip: Strip): number {
  let best = { steepness: -1, lean: 0 };
  for (const lean of leans) {
    const profile = profileOf(strip, lean);
    let steepness = 0;
    for (let at = 2; at < profile.length; at++) steepness += (profile[at]! - profile[at - 2]!) ** 2;
    // Rows side by side are alike anyway: of equals the one without a lean.
    if (steepness * (1 - Math.abs(lean) * 1e-6) > best.steepness) best = { steepness, lean };
  }
  return best.lean;
}

/** How far marks move along the line from row to row: a straight line through the phases of the rows' own marks. */
function leanOf(
  { columns, rows, light }: Strip,
  comb: CombFit,
  start: number,
): { value: number; standardError: number } {
  const phases: number[] = [];
  const middle = (rows - 1) / 2;
  const samples = columns / comb.cycles;
  for (let row = 0; row < rows; row++) {
    let [re, im] = [0, 0];
    for (let column = 0; column < columns; column++) {
      // Where this row has the mark that the middle row has at `column`.
      const from = column + start * (row - middle);
      const whole = Math.floor(from);
      if (whole < 0 || whole + 1 >= columns) continue;
      const at = row * columns + whole;
      const value = light[at]! + (from - whole) * (light[at + 1]! - light[at]!);
      const angle = 2 * Math.PI * marksAt(comb, sampleAt(column, columns));
      re += value * Math.cos(angle);
      im += value * Math.sin(angle);
    }
    phases.push(Math.atan2(im, re));
  }
  let before = phases[Math.round(middle)]!;
  const shifts: number[] = new Array<number>(rows).fill(0);
  const unwrap = (row: number) => {
    const turns = Math.round((phases[row]! - before) / (2 * Math.PI));
    before = phases[row]! - 2 * Math.PI * turns;
    shifts[row] = (before / (2 * Math.PI)) * samples;
  };
  for (let row = Math.round(middle); row < rows; row++) unwrap(row);
  before = phases[Math.round(middle)]!;
  for (let row = Math.round(middle); row >= 0; row--) unwrap(row);
  const mean = shifts.reduce((sum, one) => sum + one, 0) / rows;
  const spread = shifts.reduce((sum, _, row) => sum + (row - middle) ** 2, 0);
  const slope = shifts.reduce((sum, one, row) => sum + one * (row - middle), 0) / spread;
  const squares = shifts.reduce((sum, one, row) => sum + (one - mean - slope * (row - middle)) ** 2, 0);
  return { value: start + slope, standardError: Math.sqrt(squares / Math.max(1, rows - 2) / spread) };
}

/** Columns a row as an angle. */
function angleOf(lean: { value: number; standardError: number }, spacing: number): MeasuredMarks['lean'] {
  const tangent = lean.value * spacing;
  return { value: Math.atan(tangent), standardError: (lean.standardError * spacing) / (1 + tangent ** 2) };
}
