import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { effectiveFNumberForDepth } from '#core/depth/effective-f-number-for-depth.formula.ts';
import { subjectDepthInOneFrame } from '#core/depth/subject-depth-in-one-frame.formula.ts';
import { stopsInHand } from '#core/exposure/stops-in-hand.formula.ts';
import { frameFill } from '#core/gaussian/frame-fill.formula.ts';

interface Spread {
  readonly spreads: readonly number[];
  readonly wavelength: number;
}
type Depth = Parameters<typeof effectiveFNumberForDepth>[0];
type Deepest = Parameters<typeof subjectDepthInOneFrame>[0];
type Fill = Parameters<typeof frameFill>[0];
type Times = Parameters<typeof stopsInHand>[0];

export function ours(given: Spread | Depth | (Deepest & { readonly ofGeometry: true }) | Deepest | Fill | Times) {
  if ('spreads' in given)
    return { effectiveFNumbers: given.spreads.map((depth) => atLeastBlur(depth, given.wavelength)) };
  if ('subjectDepth' in given) return { effectiveFNumber: effectiveFNumberForDepth(given) };
  if ('subjectWidth' in given) return { frameFill: frameFill(given) };
  if ('longestExposureTime' in given) return { merit: stopsInHand(given) };
  const subjectDepth = subjectDepthInOneFrame(given);
  if (!('ofGeometry' in given)) return { subjectDepth };
  const effectiveFNumber = effectiveFNumberForDepth({ ...given, subjectDepth });
  return {
    share: subjectDepth / depthOfFieldCloseUp({ ...given, effectiveFNumber }),
    stopsWider: 2 * Math.log2(given.circleOfConfusion / given.wavelength / effectiveFNumber),
  };
}

/** At the circle of confusion that is just possible, where the two roots meet. */
function atLeastBlur(subjectDepth: number, wavelength: number): number {
  const circleOfConfusion = Math.sqrt(wavelength * subjectDepth);
  return effectiveFNumberForDepth({ magnification: 1, subjectDepth, circleOfConfusion, wavelength });
}
