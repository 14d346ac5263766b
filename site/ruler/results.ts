import { OutOfRange } from '#core/quantity/errors.ts';
import { rulerScale, type RulerScale } from '#core/ruler/ruler-scale.ts';
import { twoPlacesScale } from '#core/ruler/two-places.ts';
import { lengthOf } from '#core/ruler/photograph.ts';
import type { KeptPhotograph } from './photograph.ts';

/** What a photograph says, as far as it has been measured and its numbers are known. */
export type Result = Omit<RulerScale, 'change'> & Partial<Pick<RulerScale, 'change'>>;

/** By hand a place is set to about one pixel of the photograph. */
const setTo = 1;

/** Undefined where something is still missing, or the numbers together are no photograph's. */
export function resultOf(photograph: KeptPhotograph): Result | undefined {
  const { columns, rows, by, marks, line, sensorWidth, spacing, distance, focalLength } = photograph;
  if (sensorWidth === undefined) return undefined;
  const camera = { sensorWidth, pixelsAcross: Math.max(columns, rows) };
  try {
    if (by === 'places') {
      return distance === undefined ? undefined : twoPlacesScale({ ...camera, length: lengthOf(line), distance, setTo });
    }
    if (marks === undefined || spacing === undefined) return undefined;
    return rulerScale({ ...marks, ...camera, spacing, ...(focalLength !== undefined && { focalLength }) });
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}
