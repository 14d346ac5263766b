import type { Surface } from '../scene.ts';
import { bandLimit, painted, stroke } from './canvas.ts';
import { distanceToText } from './digits.ts';
import { lit } from './shade.ts';
import { type SceneOptions, subjectFrom } from './subject.ts';
import { grain } from './value-noise.ts';

/** Size in the picture, mm; at 45° it is as deep as it is high in the picture. */
const [width, depth] = [24, 16];

/** Half the thickness of an engraved line, mm. */
const line = 0.045;

/** The height of the plate above its deepest edge at a place below (above zero) or above its middle, mm. */
export function heightOfScale(y: number): number {
  return Math.min(depth, Math.max(0, depth / 2 + y));
}

/** How far a place is from the nearest engraved line, mm. The marks stand at whole millimetres of depth. */
function distanceToMarks(x: number, y: number): number {
  const nearest = Math.round(y);
  const isLong = nearest % 5 === 0;
  const off = Math.max(0, Math.abs(x + 3.5) - (isLong ? 2.6 : 1.5));
  const toLine = Math.abs(nearest) <= depth / 2 ? Math.hypot(off, y - nearest) : Infinity;
  const labelled = 5 * Math.round(y / 5);
  const text = String(Math.abs(labelled));
  const size = 0.24;
  const toText = size * distanceToText(text, (x - 0.2) / size, (y - labelled) / size + 3);
  return Math.min(toLine, Math.abs(labelled) < depth / 2 ? toText : Infinity);
}

/** Ruled lines a fifth of a millimetre apart on the right, and dots on the left, so that there is something fine at every depth. */
function fineness(x: number, y: number, pitch: number): number {
  const period = 0.2;
  if (x > 5 && x < 10) {
    const beat = 0.5 + 0.5 * Math.cos((2 * Math.PI * x) / period);
    return 0.8 * bandLimit(period, pitch) * beat + 0.4 * (1 - bandLimit(period, pitch));
  }
  if (x > -10.5 && x < -7.5) {
    const dots = Math.cos((2 * Math.PI * x) / 0.5) * Math.cos((2 * Math.PI * y) / 0.5);
    // On a grid too coarse for dots their mean is left, half of (2/π)².
    const left = bandLimit(0.5, pitch);
    return left * Math.max(0, dots) + (1 - left) * (2 / Math.PI ** 2);
  }
  return 0;
}

function plate(options: SceneOptions): Surface {
  const { pitch, seed } = options;
  const brushed = grain(0.5, pitch, seed);
  const metal = painted(options, (x, y, sample) => {
    const ink = Math.max(stroke(distanceToMarks(x, y), line, Math.max(pitch, 0.01)), fineness(x, y, pitch));
    const bare = 0.74 + 0.06 * brushed(x / 6, y);
    const left = 1 - 0.93 * ink;
    sample.red = bare * left;
    sample.green = bare * 0.97 * left;
    sample.blue = bare * 0.9 * left;
    sample.height = heightOfScale(y);
  });
  return lit(metal, options, { ambient: 0.55 });
}

/** An engraved scale that leans back by 45°: its middle mark is 0, and every millimetre up or down the picture is one of depth. */
export const slantedScale = subjectFrom({
  slug: 'slanted-scale',
  name: 'Slanted scale',
  width,
  height: depth,
  depth,
  says: 'An engraved scale that leans back at 45 degrees, a mark for every millimetre of depth.',
  surfaces: (options) => [plate(options)],
});
