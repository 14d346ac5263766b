import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'magnification';

/**
 * How far a lens that moves as a whole stands out from its infinity setting.
 *
 * q = f m
 *
 * @param given.focalLength *f*, mm, above 0
 * @param given.magnification *m*, that its focus gives, 0 or above: 0 far away
 * @returns *q*, mm; one focal length at life size
 * @throws OutOfRange for anything not finite, a focal length not above zero, a magnification below it
 *
 * Holds for a lens that keeps *f* while focusing; glass that moves inside moves otherwise.
 * Source: Newton's equation, x' = f m. See [README](README.md#newton).
 *
 * @example focusTravel({ focalLength: 50, magnification: 0.15 }) // 7.5
 */
export function focusTravel({ focalLength, magnification }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requireNotNegative('magnification', magnification);
  return focalLength * magnification;
}

export const focusTravelFormula = {
  gives: 'focus-travel',
  from: ['focal-length', 'magnification'],
  tex: String.raw`\q{focus-travel} = \q{focal-length}\,\q{magnification}`,
  evaluate: focusTravel,
  says: 'A lens moves out by as much of its focal length as it magnifies: all of it at life size.',
  source: 'Newton’s equation',
  checkedBy: ['marks-in-matrices'],
} as const satisfies Formula<Inputs>;
