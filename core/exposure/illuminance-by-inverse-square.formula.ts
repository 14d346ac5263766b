import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'luminance' | 'source-size' | 'flash-distance';

/**
 * What the inverse square law promises of the same disc: right far away, too much near by.
 *
 * E = π L_v S_w² / (4 d²)
 *
 * @param given.luminance *L_v*, of the disc, the same all over and in all directions, cd/m²; above 0
 * @param given.sourceSize *S_w*, diameter of the disc, mm; above 0
 * @param given.flashDistance *d*, disc to subject, mm; above 0
 * @returns *E*, lx; too large by the factor 1 + S_w²/(4 d²), 1 % at five diameters, twice the truth at half of one.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a source that is small against its distance, which close up few are.
 * Source: the law as any textbook has it, a disc of intensity L_v π S_w²/4. Derived in [README](README.md#disc).
 *
 * @example illuminanceByInverseSquare({ luminance: 1000, sourceSize: 100, flashDistance: 50 }) // 3141.592...
 */
export function illuminanceByInverseSquare({ luminance, sourceSize, flashDistance }: Named<Inputs>): number {
  requirePositive('luminance', luminance);
  requirePositive('source-size', sourceSize);
  requirePositive('flash-distance', flashDistance);
  return (Math.PI * luminance * sourceSize ** 2) / (4 * flashDistance ** 2);
}

export const illuminanceByInverseSquareFormula = {
  gives: 'illuminance',
  from: ['luminance', 'source-size', 'flash-distance'],
  tex: String.raw`\q{illuminance} = \frac{\pi\,\q{luminance}\,\q{source-size}^2}{4\,\q{flash-distance}^2}`,
  evaluate: illuminanceByInverseSquare,
  says: 'Half the distance, four times the light, as long as the light is small compared with its distance.',
  source: 'Freeman and Hull, Optics, 11th ed. (2003), p. 347, as quoted by Jonasz (2009)',
  checkedBy: ['inverse-square', 'shadows-in-eclipses'],
} as const satisfies Formula<Inputs>;
