import { densityAt, marksAt, placeOfMark, sampleAt } from './comb.ts';
import type { CombFit } from './comb-fit.ts';
import { withoutSlowPart } from './slow-part.ts';

/** How sharply a mark is shown. */
export interface LocalContrast {
  /** *k*, marks from the middle of the line. */
  readonly mark: number;
  /** Amplitude of the marks' fundamental over the mean light there: 0 where nothing of them is left. */
  readonly contrast: number;
  /** Marks a pixel there. */
  readonly density: number;
}

/**
 * The contrast of a ruler's marks from place to place along a line.
 *
 * @param profile and comb as `measureMarks` gives them, with the line's length in pixels
 * @returns one value a mark, in order along the line; none where marks are less than four samples apart
 */
export function contrastAlong(
  profile: Float64Array,
  comb: Pick<CombFit, 'cycles' | 'drift'>,
  length: number,
): readonly LocalContrast[] {
  const level = withoutSlowPart(profile, comb);
  const count = profile.length;
  const values: LocalContrast[] = [];
  const [first, last] = [marksAt(comb, -0.5), marksAt(comb, 0.5)];
  for (let from = Math.ceil(first) + 1; from + 1 <= last - 1; from++) {
    const start = Math.ceil((placeOfMark(comb, from) + 0.5) * (count - 1));
    const end = Math.floor((placeOfMark(comb, from + 1) + 0.5) * (count - 1));
    let [re, im, light, samples] = [0, 0, 0, 0];
    for (let at = start; at <= end; at++) {
      const angle = 2 * Math.PI * marksAt(comb, sampleAt(at, count));
      re += level[at]! * Math.cos(angle);
      im += level[at]! * Math.sin(angle);
      light += profile[at]!;
      samples++;
    }
    if (samples < 4 || !(light > 0)) continue;
    const mark = from + 0.5;
    values.push({
      mark,
      contrast: (2 * Math.hypot(re, im)) / light,
      density: densityAt(comb, placeOfMark(comb, mark)) / length,
    });
  }
  return values;
}
