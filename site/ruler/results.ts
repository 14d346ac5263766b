import { OutOfRange } from '#core/quantity/errors.ts';
import { usualPupilMagnification } from '#core/rig/assumed/usual-lenses.ts';
import { rulerScale, type RulerScale } from '#core/ruler/ruler-scale.ts';
import { twoPlacesScale } from '#core/ruler/two-places.ts';
import { lengthOf } from '#core/ruler/photograph.ts';
import type { KeptPhotograph } from './photograph.ts';

/** What a photograph says, as far as it has been measured and its numbers are known. */
export type Result = Omit<RulerScale, 'change'> &
  Partial<Pick<RulerScale, 'change'>> & {
    /** *m* over all that P may be, where that is assumed and the ruler leans so much that it counts. */
    readonly overAssumed?: { readonly least: number; readonly most: number };
  };

/** By hand a place is set to about one pixel of the photograph. */
const setTo = 1;

/** Undefined where something is still missing, or the numbers together are no photograph's. */
export function resultOf(photograph: KeptPhotograph): Result | undefined {
  const { columns, rows, by, marks, line, sensorWidth, spacing, distance, focalLength, pupilMagnification } =
    photograph;
  if (sensorWidth === undefined) return undefined;
  const camera = { sensorWidth, pixelsAcross: Math.max(columns, rows) };
  try {
    if (by === 'places') {
      return distance === undefined
        ? undefined
        : twoPlacesScale({ ...camera, length: lengthOf(line), distance, setTo });
    }
    if (marks === undefined || spacing === undefined) return undefined;
    const scaleFor = (pupil: number | undefined) =>
      rulerScale({
        ...marks,
        ...camera,
        spacing,
        ...(focalLength !== undefined && { focalLength }),
        ...(pupil !== undefined && { pupilMagnification: pupil }),
      });
    const scale = scaleFor(pupilMagnification);
    if (focalLength === undefined || pupilMagnification !== undefined) return scale;
    const { least, most } = usualPupilMagnification(focalLength);
    const ends = [least, most].map((pupil) => scaleFor(pupil).magnification.value);
    const overAssumed = { least: Math.min(...ends), most: Math.max(...ends) };
    const counts =
      overAssumed.most - overAssumed.least >
      Math.max(2 * scale.magnification.standardError!, 2e-4 * scale.magnification.value);
    return counts ? { ...scale, overAssumed } : scale;
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}
