import { circleOfConfusionByWidth } from '#core/depth/circle-of-confusion-by-width.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { marksAt } from '#core/ruler/comb.ts';
import { depthByContrast, type DepthByContrast, type NoDepth } from '#core/ruler/depth-by-contrast.ts';
import type { KeptPhotograph } from './photograph.ts';
import type { Result } from './results.ts';

/** The depth of field along a slanted ruler; the name of what has still to be typed; or undefined for numbers that are no lens's. */
export function depthOf(
  { marks, sensorWidth, spacing, focalLength, pupilMagnification, fNumber, columns, rows }: KeptPhotograph,
  { magnification, tilt }: Result,
): DepthByContrast | NoDepth | { readonly outcome: 'missing' } | undefined {
  if (!marks || sensorWidth === undefined || spacing === undefined) return undefined;
  if (focalLength === undefined || fNumber === undefined || !tilt) return { outcome: 'missing' };
  try {
    return depthByContrast({
      contrasts: marks.contrasts,
      axisMark: marksAt(marks, -marks.offAxis / marks.length),
      spacing,
      tilt: tilt.value,
      magnification: magnification.value,
      pitch: sensorWidth / Math.max(columns, rows),
      focalLength,
      ...(pupilMagnification !== undefined && { pupilMagnification }),
      fNumber,
      circleOfConfusion: circleOfConfusionByWidth({ sensorWidth }),
    });
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}
