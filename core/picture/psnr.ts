import type { Picture } from './picture.ts';
import { requireShape } from './same-shape.ts';

/**
 * How near two pictures are to each other, in one number: the peak signal-to-noise ratio, dB.
 *
 * −10 log₁₀ of the mean squared difference of light, white being 1
 *
 * @returns Infinity for equal pictures; 20 where the difference is a tenth of white throughout, 40 for a hundredth. It weighs all places alike:
 *   a band out of focus in a tenth of the picture costs as much as a little everywhere.
 * @throws RangeError for pictures of different shapes
 *
 * @example psnr(merged, sharpPicture(scene, view))
 */
export function psnr(a: Picture, b: Picture): number {
  requireShape(b, a);
  let sum = 0;
  for (let at = 0; at < a.light.length; at++) sum += (a.light[at]! - b.light[at]!) ** 2;
  return -10 * Math.log10(sum / a.light.length);
}
