import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'luminance' | 'source-size' | 'flash-distance';

/**
 * The light that an evenly bright disc throws on what faces it on its axis. Exact at any distance.
 *
 * E = π L_v S_w² / (S_w² + 4 d²)
 *
 * @param given.luminance *L_v*, of the disc, the same all over and in all directions, cd/m²; above 0
 * @param given.sourceSize *S_w*, diameter of the disc, mm; above 0
 * @param given.flashDistance *d*, disc to subject, mm; above 0
 * @returns *E*, lx; never more than π L_v however near.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a Lambertian disc, the subject on its axis and facing it, and nothing between.
 * Source: Freeman and Hull, Optics, 11th ed. (2003), p. 354, as quoted by Jonasz, Topics in Particle and Dispersion Science (2009). Derived in [README](README.md#disc).
 *
 * @example illuminanceFromDisc({ luminance: 1000, sourceSize: 100, flashDistance: 50 }) // 1570.796...
 */
export function illuminanceFromDisc({ luminance, sourceSize, flashDistance }: Named<Inputs>): number {
  requirePositive('luminance', luminance);
  requirePositive('source-size', sourceSize);
  requirePositive('flash-distance', flashDistance);
  return (Math.PI * luminance * sourceSize ** 2) / (sourceSize ** 2 + 4 * flashDistance ** 2);
}

export const illuminanceFromDiscFormula = {
  gives: 'illuminance',
  from: ['luminance', 'source-size', 'flash-distance'],
  tex: String.raw`\q{illuminance} = \frac{\pi\,\q{luminance}\,\q{source-size}^2}{\q{source-size}^2 + 4\,\q{flash-distance}^2}`,
  evaluate: illuminanceFromDisc,
  says: 'Near a broad light, going nearer brings little: it already surrounds the subject.',
  source: 'Freeman and Hull, Optics, 11th ed. (2003), p. 354, as quoted by Jonasz (2009)',
  checkedBy: ['inverse-square', 'shadows-in-eclipses'],
} as const satisfies Formula<Inputs>;
