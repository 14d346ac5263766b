import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'source-size' | 'source-angle';

/**
 * From how near a light or diffuser must stand to look as wide as wanted.
 *
 * d = S_w/(2 tan(α/2))
 *
 * @param given.sourceSize *S_w*, width of the lit surface, mm, above 0
 * @param given.sourceAngle *α*, as the subject sees it, rad, above 0 and below π
 * @returns *d*, mm from the lit surface to the subject: the diffuser, not the flash behind it
 * @throws OutOfRange for anything not finite and above zero, and for half a turn or more, which no flat light fills
 *
 * Assumes a flat source that faces the subject, evenly lit over its width.
 * Source: derived in [README](README.md#apparent-size).
 *
 * @example diffuserDistance({ sourceSize: 200, sourceAngle: Math.PI / 2 }) // 100.000
 */
export function diffuserDistance({ sourceSize, sourceAngle }: Named<Inputs>): number {
  requirePositive('source-size', sourceSize);
  requirePositive('source-angle', sourceAngle);
  if (sourceAngle >= Math.PI) throw new OutOfRange('source-angle', sourceAngle, 'less than half a turn');
  return sourceSize / (2 * Math.tan(sourceAngle / 2));
}

export const diffuserDistanceFormula = {
  gives: 'flash-distance',
  from: ['source-size', 'source-angle'],
  tex: String.raw`\q{flash-distance} = \frac{\q{source-size}}{2\tan\left(\frac{\q{source-angle}}{2}\right)}`,
  evaluate: diffuserDistance,
  says: 'A small diffuser does as well as a large one, if only it stands near enough.',
  source: 'derived in core/light/README.md#apparent-size',
  checkedBy: ['shadows-and-views', 'shadows-in-eclipses'],
} as const satisfies Formula<Inputs>;
