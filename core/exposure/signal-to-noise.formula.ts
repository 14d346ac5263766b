import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'electrons' | 'read-noise';

/**
 * How far the light of one pixel stands out of its own randomness.
 *
 * signal to noise = electrons / √(electrons + read noise²)
 *
 * @param given.electrons on average, in one pixel; above 0
 * @param given.readNoise standard deviation that counting adds, electrons; 0 or above
 * @returns a pure number, at most √electrons. For one pixel: looked at smaller, pixels average, and four of them double it.
 * @throws OutOfRange for anything not finite, electrons of zero or below, and a noise below zero
 *
 * Assumes photons that arrive independently (Poisson), a read noise independent of them, no dark current and no pattern.
 * Source: the CCD equation without dark current; EMVA Standard 1288 has the same model. Derived in [README](README.md#noise).
 *
 * @example signalToNoise({ electrons: 10000, readNoise: 0 }) // 100
 */
export function signalToNoise({ electrons, readNoise }: Named<Inputs>): number {
  requirePositive('electrons', electrons);
  requireNotNegative('read-noise', readNoise);
  return electrons / Math.sqrt(electrons + readNoise ** 2);
}

export const signalToNoiseFormula = {
  gives: 'signal-to-noise',
  from: ['electrons', 'read-noise'],
  tex: String.raw`\q{signal-to-noise} = \frac{\q{electrons}}{\sqrt{\q{electrons} + \q{read-noise}^2}}`,
  evaluate: signalToNoise,
  says: 'Four times the light is at least twice as clean.',
  source: 'the CCD equation without dark current, as in EMVA Standard 1288',
  checkedBy: ['common-practice-exposure', 'counting-light', 'sensor-speed-and-noise'],
} as const satisfies Formula<Inputs>;
