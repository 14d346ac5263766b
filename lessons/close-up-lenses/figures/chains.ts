import { OutOfRange } from '#core/quantity/errors.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import type { Part } from '#core/rig/part.ts';
import { rigPositions, type RigPositions } from '#core/rig/positions.ts';
import { bodies, parts } from '#site/state/crate.ts';

/** What of the bench the chains are put together from. */
export type Given = Readonly<
  Record<
    | 'focal-length'
    | 'focus-magnification'
    | 'f-number'
    | 'pupil-magnification'
    | 'front-principal-depth'
    | 'principal-separation'
    | 'close-up-power'
    | 'close-up-gap'
    | 'sensor-width',
    number
  >
>;

export interface DrawnChain {
  readonly positions: RigPositions;
  /** What the numbers say of the lens and no lens can be, in a few words. */
  readonly notice?: string;
  /** Things stand where the numbers say. */
  readonly isTrue: boolean;
}

const { 'register-distance': registerDistance } = bodies['body-36'];
const { extension: seat } = parts['close-up-seat'];

/** Camera, lens, and the close-up lens g before its H: its frame is drawn as a part of the lens, and what a hand adds as a ring. */
export function closeUpChain(given: Given): DrawnChain & { readonly closeUpAt: number } {
  const { 'front-principal-depth': depth, 'close-up-gap': gap, 'close-up-power': closeUpPower } = given;
  const chain = withRim(Math.min(gap, depth + seat), given, (rim) => [
    camera(given),
    lensOf(given, rim),
    { part: 'ring', extension: Math.max(0, gap - rim) },
    { part: 'close-up lens', closeUpPower },
  ]);
  const isInside = depth > gap && chain.isTrue;
  return { ...chain, closeUpAt: 3, ...(isInside && { notice: 'the rim would be before the close-up lens' }) };
}

/** The same lens on a ring instead. */
export function ringChain(given: Given, extension: number): DrawnChain {
  return withRim(given['front-principal-depth'], given, (rim) => [
    camera(given),
    { part: 'ring', extension },
    lensOf(given, rim),
  ]);
}

const camera = ({ 'sensor-width': sensorWidth }: Given): Part => ({
  part: 'camera',
  registerDistance,
  sensorWidth,
  sensorHeight: (2 / 3) * sensorWidth,
});

function lensOf(given: Given, frontPrincipalDepth: number): Part {
  const { 'focus-magnification': focusMagnification } = given;
  return {
    part: 'lens',
    fNumber: given['f-number'],
    focusMagnification,
    lens: {
      focalLength: given['focal-length'],
      principalSeparation: given['principal-separation'],
      frontPrincipalDepth,
      pupilMagnification: given['pupil-magnification'],
      registerDistance,
      focusing: { by: 'unit', closestMagnification: focusMagnification },
      apertureControl: 'camera',
    },
  };
}

/** A front rim behind the lens's own flange cannot be drawn: the lens then ends at its flange, and the figure says so. */
function withRim(depth: number, given: Given, chain: (rim: number) => readonly Part[]): DrawnChain {
  const at = (rim: number) => rigPositions(assembleRig(chain(rim)));
  try {
    return { positions: at(depth), isTrue: true };
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    const least = registerDistance - given['focal-length'] - given['principal-separation'];
    return { positions: at(least), notice: 'no lens has its rim behind its flange', isTrue: false };
  }
}
