import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { midToneExposure, photonsPerLuxSecond } from './photons.ts';
import { requireShare } from './share.ts';

type Inputs = 'quantum-efficiency' | 'pixel-pitch' | 'iso';

/**
 * The electrons that a mid-tone sets free in one pixel, at the exposure that its ISO stands for.
 *
 * electrons = 4.09 · 10⁹ η p² · 10/S
 *
 * @param given.quantumEfficiency *η*, share of photons that become electrons; above 0, at most 1
 * @param given.pixelPitch *p*, mm; above 0. The whole square is taken to gather light
 * @param given.iso *S*, exposure index; above 0
 * @returns a count, on average. A white surface gives about six times as many.
 * @throws OutOfRange for anything not finite and above zero, and for an efficiency above 1
 *
 * Assumes an exposure of 10/S lx s, which ISO 12232 has for its mid-tone, and light counted as if all of it were at 540 THz, near 555 nm:
 * a pixel under a green filter sees little else. `photons.ts` holds the constants.
 * Source: ISO 12232:2019, standard output sensitivity (from memory); SI definitions of the candela and of the Planck constant. Derived in [README](README.md#photons).
 *
 * @example electrons({ quantumEfficiency: 0.5, pixelPitch: 0.006, iso: 100 }) // 7365.6
 */
export function electrons({ quantumEfficiency, pixelPitch, iso }: Named<Inputs>): number {
  requireShare('quantum-efficiency', quantumEfficiency);
  requirePositive('pixel-pitch', pixelPitch);
  return photonsPerLuxSecond * quantumEfficiency * pixelPitch ** 2 * midToneExposure(iso);
}

export const electronsFormula = {
  gives: 'electrons',
  from: ['quantum-efficiency', 'pixel-pitch', 'iso'],
  tex: String.raw`\q{electrons} = 4.092 \times 10^{9}\,\q{quantum-efficiency}\,\q{pixel-pitch}^2\,\frac{10}{\q{iso}}`,
  evaluate: electrons,
  says: 'Twice the ISO means half the light, and most of the noise comes from that, not from the amplifier.',
  source: 'ISO 12232:2019 (from memory) and the SI definition of the candela',
  checkedBy: ['common-practice-exposure', 'counting-light'],
} as const satisfies Formula<Inputs>;
