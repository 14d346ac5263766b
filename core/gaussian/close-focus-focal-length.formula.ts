import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focus-distance' | 'magnification' | 'principal-separation';

/**
 * The focal length that a lens really has close up, from two numbers its maker prints.
 *
 * f = (L − HH') / (2 + m + 1/m)
 *
 * @param given.focusDistance *L*, sensor to subject, mm, above 0 and above *HH'*
 * @param given.magnification *m*, at that distance, above 0
 * @param given.principalSeparation *HH'*, mm; hardly ever printed, so an assumption: 10 mm of it is 2.5 mm of *f* at life size
 * @returns *f*, mm, at that setting. For a lens that focuses internally it is less than what is engraved.
 * @throws OutOfRange for a distance or magnification not above zero, and for a separation that leaves nothing of *L*
 *
 * Assumes Gaussian optics in air.
 * Source: the focus distance solved for *f*, derived in [README](README.md#internal-focusing).
 *
 * @example closeFocusFocalLength({ focusDistance: 290, magnification: 1, principalSeparation: 0 }) // 72.5
 */
export function closeFocusFocalLength({ focusDistance, magnification, principalSeparation }: Named<Inputs>): number {
  requirePositive('focus-distance', focusDistance);
  requirePositive('magnification', magnification);
  requireFinite('principal-separation', principalSeparation);
  if (principalSeparation >= focusDistance) {
    throw new OutOfRange('principal-separation', principalSeparation, `less than the focus distance, ${focusDistance}`);
  }
  return (focusDistance - principalSeparation) / (2 + magnification + 1 / magnification);
}

export const closeFocusFocalLengthFormula = {
  gives: 'focal-length',
  from: ['focus-distance', 'magnification', 'principal-separation'],
  tex: String.raw`\q{focal-length} = \frac{\q{focus-distance} - \q{principal-separation}}{2 + \q{magnification} + \frac{1}{\q{magnification}}}`,
  evaluate: closeFocusFocalLength,
  says: 'The closest focus distance and the magnification there tell you the focal length the lens has close up.',
  source: 'the focus distance solved for f, derived in core/gaussian/README.md#internal-focusing',
  checkedBy: ['focusing-in-textbooks', 'line-scan-camera-notes'],
  // The distance must exceed what lies between the principal planes.
  sample: { 'focus-distance': [210, 50000] },
} as const satisfies Formula<Inputs>;
