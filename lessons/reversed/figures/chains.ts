import type { Named } from '#core/quantity/formula.ts';
import { glassPositions, glassRays } from '#core/rig/glass-positions.ts';
import type { Part } from '#core/rig/part.ts';
import type { RigPositions } from '#core/rig/positions.ts';
import {
  cameraPart,
  contradiction,
  drawnWithRim,
  lensPart,
  type DrawnChain,
} from '#site/figures/side-view/lens-on-camera.ts';
import type { SideViewChain } from '#site/figures/side-view/side-view.ts';
import { lenses, type LensSlug } from '#site/state/crate.ts';
import { parts } from '#site/state/crate-parts.ts';
import { glassLenses } from '#site/state/glass.ts';
import { marks } from '#site/state/lens-marks.ts';
import { claws } from '#site/state/stands-out.ts';

/** What of the bench the chains are put together from. */
export const ofChain = [
  'focal-length',
  'f-number',
  'pupil-magnification',
  'front-principal-depth',
  'principal-separation',
  'rear-protrusion',
  'focus-travel',
  'extension',
  'register-distance',
  'reversed-lens.register-distance',
  'sensor-width',
] as const;
type Given = Readonly<Named<(typeof ofChain)[number]>>;

/** A chain of this lesson, and what is drawn of it besides its parts. */
export type Drawn = Pick<SideViewChain, 'positions' | 'ends' | 'glass' | 'glassRays'> & {
  readonly isContradictory: boolean;
  readonly lensAt: number;
  readonly notice?: string;
};

/** Whose iris a camera closes through contacts at the flange: turned round, those face the subject. */
export const closedByCamera = (slug: string | undefined) =>
  slug !== undefined && marks[slug as LensSlug].iris === 'camera';

/** What is at the end of a lens that goes to the camera. */
const flangeOf = (slug: string | undefined) => (closedByCamera(slug) ? 'flange, contacts' : 'flange');

/** From here on the glass of the 28 mm lens bears exact rays: its design was slower than it opens. */
const exactFrom = 5.6;

/** Only of this lens the glass is drawn; its rays are traced at any setting, for it moves as a whole. */
const glassSlug = 'lens-28';

/** The lens as a part, *slug* its name in the crate where it is one of the crate's: whose glass is known has it with it. */
function mounted(given: Given, slug: string | undefined, depth: number, travel: number, reversed: boolean): Part {
  const { focalLength, fNumber, rearProtrusion, reversedLensRegisterDistance: registerDistance } = given;
  const focusMagnification = travel / focalLength;
  const part = lensPart({ ...given, frontPrincipalDepth: depth, focusMagnification, fNumber, registerDistance });
  if (part.part !== 'lens') return part;
  const { prescription } = glassLenses[glassSlug];
  const glass = slug === glassSlug && prescription ? { prescription } : {};
  const rim = slug === undefined ? {} : { rimDiameter: lenses[slug as LensSlug]['rim-diameter'] };
  return { ...part, ...rim, reversed, lens: { ...part.lens, rearProtrusion, fixedProtrusion: claws, ...glass } };
}

/** Turned round: its rim on the reversing ring and whatever rings there are behind that. */
export function turnedChain(given: Given, slug: string | undefined): Drawn {
  const { extension, sensorWidth, registerDistance } = given;
  const { extension: reversingRing } = parts['reversing-ring'];
  const lengths = [Math.min(extension, reversingRing), extension - reversingRing].filter((length) => length > 0);
  const tubes = lengths.reverse().map((length): Part => ({ part: 'ring', extension: length }));
  const lensAt = 1 + tubes.length;
  const focusMagnification = given.focusTravel / given.focalLength;
  const lens = { ...given, focusMagnification, registerDistance: given.reversedLensRegisterDistance };
  const chain = drawnWithRim(lens, (depth) => [
    cameraPart(sensorWidth, registerDistance),
    ...tubes,
    mounted(given, slug, depth, given.focusTravel, true),
  ]);
  return withGlass(chain, lensAt, given, slug, ['rim', flangeOf(slug)]);
}

/** The right way round and set to infinity, on a camera of its own mount and on a ring for the same size. */
export function uprightChain(given: Given, slug: string | undefined, ring: number): Drawn {
  const { sensorWidth, reversedLensRegisterDistance: registerDistance } = given;
  const tubes: Part[] = ring > 0 ? [{ part: 'ring', extension: ring }] : [];
  const chain = drawnWithRim({ ...given, focusMagnification: 0, registerDistance }, (depth) => [
    cameraPart(sensorWidth, registerDistance),
    ...tubes,
    mounted(given, slug, depth, 0, false),
  ]);
  return withGlass(chain, 1 + tubes.length, given, slug, [flangeOf(slug), 'rim']);
}

function withGlass(
  chain: DrawnChain,
  lensAt: number,
  { fNumber }: Given,
  slug: string | undefined,
  [rear, front]: readonly [rear: string, front: string],
): Drawn {
  const { positions, isContradictory } = chain;
  const { from, to } = positions.parts[lensAt]!;
  const ends = [
    { at: from, name: rear, part: lensAt },
    { at: to, name: front, part: lensAt },
  ];
  // Wider than it opens its glass would be wider than it can be.
  const hasGlass = slug === glassSlug && !isContradictory && fNumber >= marks[glassSlug]['max-aperture'];
  return {
    positions,
    isContradictory,
    lensAt,
    ends,
    ...(isContradictory && { notice: contradiction }),
    ...(hasGlass && { glass: [glassPositions(positions, lensAt)] }),
    ...(hasGlass && fNumber >= exactFrom && exactRays(positions, lensAt)),
  };
}

/** Rays from the middle of the field through the glass, where a subject can be there. */
function exactRays(positions: RigPositions, lensAt: number) {
  const { sharpPlane } = positions.solved;
  if (sharpPlane !== 'in front' && sharpPlane !== 'at infinity') return {};
  return { glassRays: glassRays(positions, lensAt, { field: 0, count: 5 }) };
}
