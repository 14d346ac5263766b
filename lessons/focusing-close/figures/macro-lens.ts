import { assembleRig } from '#core/rig/assemble.ts';
import { glassPositions, glassRays } from '#core/rig/glass-positions.ts';
import { lensOfPrescription } from '#core/rig/lens-of-prescription.ts';
import type { Lens } from '#core/rig/lens.ts';
import { rigPositions } from '#core/rig/positions.ts';
import type { SideViewChain } from '#site/figures/side-view/side-view.ts';
import { glassLenses } from '#site/state/glass.ts';
import { marks } from '#site/state/lens-marks.ts';
import { camera, lensAt } from './whole-lens.ts';

const inside = glassLenses['lens-60'];
const { surfaces, stop } = inside.prescription!;

/** The same glass with its groups fixed to each other as they stand at infinity: it could only be moved as a whole. */
const asWhole: Lens = lensOfPrescription({ surfaces, stop }, { ...inside, closestMagnification: 1 });

/** Wide open, where the cones fill the glass. */
const fNumber = marks['lens-60']['max-aperture'];

/** One glass, two ways to focus it. */
export const ways = { 'as a whole': asWhole, inside } as const;

/** The crate's 60 mm macro lens on the camera, its glass where it stands at this magnification, and rays from the middle of the field. */
export function macroLensChain(lens: Lens, focusMagnification: number): SideViewChain {
  const positions = rigPositions(assembleRig([camera, { part: 'lens', fNumber, focusMagnification, lens }]));
  return {
    positions,
    glass: [glassPositions(positions, lensAt)],
    glassRays: glassRays(positions, lensAt, { field: 0, count: 5 }),
  };
}
