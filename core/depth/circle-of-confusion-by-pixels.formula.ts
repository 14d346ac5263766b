import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'pixel-pitch';

/** Width of the circle of confusion in pixels: a colour filter mosaic measures each colour at every second one. */
export const pixelsPerCircle = 2;

/**
 * The circle of confusion for a picture looked at pixel by pixel.
 *
 * c = 2 p
 *
 * @param given.pixelPitch *p*, centre to centre, mm, above 0
 * @returns *c*, mm on the sensor, two pixels wide. A finer sensor makes it stricter though the picture got no worse.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a sensor with a colour filter mosaic, which resolves about two pixels.
 * Source: common practice of the trade. See [README](README.md#circle-of-confusion).
 *
 * @example circleOfConfusionByPixels({ pixelPitch: 0.006 }) // 0.012
 */
export function circleOfConfusionByPixels({ pixelPitch }: Named<Inputs>): number {
  return pixelsPerCircle * requirePositive('pixel-pitch', pixelPitch);
}

export const circleOfConfusionByPixelsFormula = {
  gives: 'circle-of-confusion',
  from: ['pixel-pitch'],
  tex: String.raw`\q{circle-of-confusion} = 2\,\q{pixel-pitch}`,
  evaluate: circleOfConfusionByPixels,
  says: 'Two pixels: the strictest choice, for a picture seen at one screen pixel to each of the sensor’s.',
  source: 'common practice',
  checkedBy: ['resolution-of-pixels'],
} as const satisfies Formula<Inputs>;
