import type { Lens } from '../lens.ts';
import { usualRearProtrusion } from './usual-rear-protrusion.ts';

/** A lens as it is taken to be once it is turned round: with the usual part behind its mount, where nobody has measured that. */
export function turnedLens(lens: Lens, rearProtrusion: number = usualRearProtrusion.usual): Lens {
  return lens.rearProtrusion === undefined ? { ...lens, rearProtrusion } : lens;
}
