import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { firstDarkRing } from './airy-diameter.formula.ts';
import { bestEffectiveFNumber } from './best-effective-f-number.formula.ts';

type Inputs = 'magnification' | 'subject-depth' | 'wavelength' | 'pupil-magnification';

/**
 * The marked f-number at which the ends of a deep subject blur as much by defocus as everything does by diffraction.
 *
 * m √(Z/(4 × 1.21966989… λ)) / (1 + m/P)
 *
 * @param given.magnification *m*, in the middle of the subject; above 0
 * @param given.subjectDepth *Z*, nearest to farthest part that should be sharp, mm; above 0
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.pupilMagnification *P*, of the lens the right way round; above 0
 * @returns *N*, as marked, no nominal value: f/12.5 stands between two marks. Close to, not at, the best contrast: `bestFNumber`
 *   finds that for a given fineness of detail.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a lens alone, focus in the middle of the depth, a depth small beside the subject distance, and no aberration.
 * Source: derived in [README](README.md#best): blur of the ends m² Z/(2 N_w) = Airy diameter, N_w = N (1 + m/P).
 *
 * @example balancedFNumber({ magnification: 1, subjectDepth: 2, wavelength: 0.00055, pupilMagnification: 0.85 }) // 12.54
 */
export function balancedFNumber({ pupilMagnification, ...subject }: Named<Inputs>): number {
  requirePositive('pupil-magnification', pupilMagnification);
  const { magnification } = subject;
  return bestEffectiveFNumber(subject) / effectiveFNumber({ fNumber: 1, magnification, pupilMagnification });
}

export const balancedFNumberFormula = {
  gives: 'balanced-f-number',
  from: ['magnification', 'subject-depth', 'wavelength', 'pupil-magnification'],
  tex: String.raw`\q{balanced-f-number} = \frac{\q{magnification}\sqrt{\dfrac{\q{subject-depth}}{4 \times 1.2196698913\,\q{wavelength}}}}{1 + \dfrac{\q{magnification}}{\q{pupil-magnification}}}`,
  constant: { value: firstDarkRing, power: -1 / 2 },
  evaluate: balancedFNumber,
  says: 'Stop down until, at both ends of the subject, defocus blurs as much as diffraction. Twice the depth, one stop.',
  source: 'derived in core/wave/README.md#best',
  checkedBy: ['best-f-number-table', 'contrast-through-depth'],
} as const satisfies Formula<Inputs>;
