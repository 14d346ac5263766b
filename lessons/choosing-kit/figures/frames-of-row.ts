import { limitsOfCone } from '#core/depth/limits-of-cone.ts';
import { printQuantity } from '#core/quantity/print.ts';
import type { SolvedRig } from '#core/rig/solved-rig.ts';
import { frameCount } from '#core/stack/frame-count.formula.ts';
import type { Asked } from './searches.ts';

/** Of neighbouring frames of a stack in common, as a plan begins. */
const overlap = 0.3;

/** More are not counted. */
const most = 10_000;

/** How many frames a stack of the whole subject takes through a chain, set as it is; undefined where nothing before it is sharp. */
export function framesOf(
  solved: SolvedRig,
  { subjectDepth, circleOfConfusion }: Pick<Asked, 'subjectDepth' | 'circleOfConfusion'>,
): number | undefined {
  if (solved.sharpPlane !== 'in front') return undefined;
  const { nearLimit, farLimit } = limitsOfCone(solved, circleOfConfusion);
  const depthOfField = nearLimit + farLimit;
  return depthOfField >= subjectDepth ? 1 : frameCount({ subjectDepth, depthOfField, overlap });
}

/** The same in words: `356 frames`. */
export function framesInWords(count: number): string {
  if (count > most) return `over ${printQuantity('frame-count', most)} frames`;
  return count === 1 ? '1 frame' : `${printQuantity('frame-count', count)} frames`;
}
