import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focus-magnification' | 'extension' | 'focal-length';

/**
 * What a lens gives when it is moved away from the sensor by rings or bellows.
 *
 * m = m_0 + e/f
 *
 * @param given.focusMagnification *m_0*, by the lens's own focusing, 0 or above
 * @param given.extension *e*, added between lens and camera, mm, 0 or above
 * @param given.focalLength *f*, at that focus setting, mm, above 0
 * @returns *m*, 0 where nothing is added to a lens at infinity. With a converter in the chain see `rig`.
 * @throws OutOfRange for a negative extension or focus magnification, or a focal length not above zero
 *
 * Assumes *f at that focus setting*: a lens that focuses internally is shorter close up than engraved, and a ring gives it more.
 * Source: difference of two image distances f (1 + m), derived in [README](README.md#extension).
 *
 * @example magnificationFromExtension({ focusMagnification: 0.15, extension: 36, focalLength: 50 }) // 0.87
 */
export function magnificationFromExtension({ focusMagnification, extension, focalLength }: Named<Inputs>): number {
  requireNotNegative('focus-magnification', focusMagnification);
  requireNotNegative('extension', extension);
  requirePositive('focal-length', focalLength);
  return focusMagnification + extension / focalLength;
}

export const magnificationFromExtensionFormula = {
  gives: 'magnification',
  from: ['focus-magnification', 'extension', 'focal-length'],
  tex: String.raw`\q{magnification} = \q{focus-magnification} + \frac{\q{extension}}{\q{focal-length}}`,
  evaluate: magnificationFromExtension,
  says: 'A ring adds its length, counted in focal lengths, to what the lens reaches by itself.',
  source: 'difference of two image distances, derived in core/gaussian/README.md#extension',
  checkedBy: ['common-practice', 'exposure-increase', 'thin-lens-openstax'],
} as const satisfies Formula<Inputs>;
