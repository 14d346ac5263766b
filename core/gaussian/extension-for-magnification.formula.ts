import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'focus-magnification' | 'focal-length';

/**
 * The extension to add for a wanted magnification.
 *
 * e = f (m − m_0)
 *
 * @param given.magnification *m*, wanted, above 0 and no less than *m_0*
 * @param given.focusMagnification *m_0*, by the lens's own focusing, 0 or above
 * @param given.focalLength *f*, at that focus setting, mm, above 0
 * @returns *e*, mm, 0 or above. Rings come in lengths of their own: it is for you to find a set that makes it.
 * @throws OutOfRange for a magnification the lens exceeds by itself, and for values out of range
 *
 * Assumes *f at that focus setting*, as for the magnification from an extension.
 * Source: difference of two image distances f (1 + m), derived in [README](README.md#extension).
 *
 * @example extensionForMagnification({ magnification: 1, focusMagnification: 0.1, focalLength: 50 }) // 45
 */
export function extensionForMagnification({ magnification, focusMagnification, focalLength }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requireNotNegative('focus-magnification', focusMagnification);
  requirePositive('focal-length', focalLength);
  if (magnification < focusMagnification) {
    throw new OutOfRange(
      'magnification',
      magnification,
      `at least ${focusMagnification}, which the lens gives by itself`,
    );
  }
  return focalLength * (magnification - focusMagnification);
}

export const extensionForMagnificationFormula = {
  gives: 'extension',
  from: ['magnification', 'focus-magnification', 'focal-length'],
  tex: String.raw`\q{extension} = \q{focal-length}\left(\q{magnification} - \q{focus-magnification}\right)`,
  evaluate: extensionForMagnification,
  says: 'The magnification still missing, times the focal length, is the length of ring you need.',
  source: 'difference of two image distances, derived in core/gaussian/README.md#extension',
  checkedBy: ['line-scan-camera-notes'],
  // Extension only adds: what is asked for must exceed what the lens gives by itself.
  sample: { magnification: [1, 20], 'focus-magnification': [0, 0.9] },
} as const satisfies Formula<Inputs>;
