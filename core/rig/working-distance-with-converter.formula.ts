import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'converter-factor' | 'magnification' | 'front-principal-depth';

/**
 * The free space in front of a lens with a converter behind it.
 *
 * w = f (1 + k/m) − h
 *
 * @param given.focalLength *f*, of the lens at its setting, without the converter, mm, above 0
 * @param given.converterFactor *k*, above 1; with a ring behind the converter the factor at which it works there
 * @param given.magnification *m*, of the whole chain, above 0
 * @param given.frontPrincipalDepth *h*, from the front rim back to H, mm, of either sign
 * @returns *w*, mm: that of the lens alone at m/k, for a converter is behind it. Negative where the sharp plane is inside the lens.
 * @throws OutOfRange for values out of range, and a factor not above 1
 *
 * Assumes Gaussian optics in air. Source: derived in [README](README.md#converters).
 *
 * @example workingDistanceWithConverter({ focalLength: 72.5, converterFactor: 2, magnification: 2, frontPrincipalDepth: 24 }) // 121
 */
export function workingDistanceWithConverter({
  focalLength,
  converterFactor,
  magnification,
  frontPrincipalDepth,
}: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  if (!(converterFactor > 1 && converterFactor < Infinity)) {
    throw new OutOfRange('converter-factor', converterFactor, 'a finite number above 1');
  }
  requirePositive('magnification', magnification);
  requireFinite('front-principal-depth', frontPrincipalDepth);
  return focalLength * (1 + converterFactor / magnification) - frontPrincipalDepth;
}

export const workingDistanceWithConverterFormula = {
  gives: 'working-distance',
  from: ['focal-length', 'converter-factor', 'magnification', 'front-principal-depth'],
  tex: String.raw`\q{working-distance} = \q{focal-length}\left(1 + \frac{\q{converter-factor}}{\q{magnification}}\right) - \q{front-principal-depth}`,
  evaluate: workingDistanceWithConverter,
  says: 'A converter stands behind the lens: the subject stays where the lens alone had it.',
  source: 'derived in core/rig/README.md#converters',
  checkedBy: ['converter-matrices'],
  // A factor of 1 converts nothing.
  sample: { 'converter-factor': [1.1, 4] },
} as const satisfies Formula<Inputs>;
