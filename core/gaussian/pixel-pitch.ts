import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';

/**
 * Centre to centre of neighbouring pixels, from what a camera's data sheet prints.
 *
 * p = W_x / number of pixels along W_x
 *
 * @param given.sensorWidth *W_x*, mm, above 0
 * @param given.pixelsAcross pixels along the sensor's width, a whole number from 1
 * @returns *p*, mm
 * @throws OutOfRange for a width not above zero, or pixels that are no whole number of them
 *
 * Assumes square pixels and a count that belongs to the whole width.
 * Source: definition of the pitch.
 *
 * @example pixelPitch({ sensorWidth: 36, pixelsAcross: 6000 }) // 0.006
 */
export function pixelPitch({ sensorWidth, pixelsAcross }: { sensorWidth: number; pixelsAcross: number }): number {
  requirePositive('sensor-width', sensorWidth);
  const pitch = sensorWidth / pixelsAcross;
  if (!(Number.isInteger(pixelsAcross) && pixelsAcross > 0 && pitch > 0)) {
    throw new OutOfRange('pixel-pitch', pitch, 'that of a whole number of pixels, 1 or more');
  }
  return pitch;
}
