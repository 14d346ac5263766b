import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { photonsPerLuxSecond, saturationAtIso1 } from './photons.ts';
import { requireShare } from './share.ts';

type Inputs = 'quantum-efficiency' | 'pixel-pitch' | 'full-well';

/**
 * The lowest ISO that a pixel’s size allows: there the brightest tone that its ISO promises just fills it.
 *
 * S = 4.09 · 10⁹ η p² · 78 / full well
 *
 * @param given.quantumEfficiency *η*, share of photons that become electrons; above 0, at most 1
 * @param given.pixelPitch *p*, mm; above 0. The whole square is taken to gather light
 * @param given.fullWell electrons that one pixel holds; above 0
 * @returns *S*, a pure number. Below it highlights are lost, whatever the dial says.
 * @throws OutOfRange for anything not finite and above zero, and for an efficiency above 1
 *
 * Assumes a saturation exposure of 78/S lx s, by ISO 12232, and light counted as in `electrons`.
 * Source: ISO 12232:2019, saturation-based speed S = 78/H (from memory). Derived in [README](README.md#photons).
 *
 * @example isoAtFullWell({ quantumEfficiency: 0.5, pixelPitch: 0.006, fullWell: 57450 }) // 100.0029...
 */
export function isoAtFullWell({ quantumEfficiency, pixelPitch, fullWell }: Named<Inputs>): number {
  requireShare('quantum-efficiency', quantumEfficiency);
  requirePositive('pixel-pitch', pixelPitch);
  requirePositive('full-well', fullWell);
  return (photonsPerLuxSecond * quantumEfficiency * pixelPitch ** 2 * saturationAtIso1) / fullWell;
}

export const isoAtFullWellFormula = {
  gives: 'iso',
  from: ['quantum-efficiency', 'pixel-pitch', 'full-well'],
  tex: String.raw`\q{iso} = 4.092 \times 10^{9}\,\q{quantum-efficiency}\,\q{pixel-pitch}^2\,\frac{78}{\q{full-well}}`,
  evaluate: isoAtFullWell,
  says: 'The more electrons a pixel holds, the lower the ISO it allows, and the cleaner the picture there.',
  source: 'ISO 12232:2019 (from memory) and the SI definition of the candela',
  checkedBy: ['counting-light'],
} as const satisfies Formula<Inputs>;
