import { OutOfRange } from '#core/quantity/errors.ts';
import type { Picture } from './picture.ts';
import type { Scene } from './scene.ts';

/**
 * Two pictures of one view, one on the other: light adds up.
 *
 * @param one what the rest of the light draws, the flash's part of it
 * @param other what *share* of it draws, the light already there
 * @param share of all light, from 0 to 1
 * @returns their mean, weighted so: as light as either alone, which keeps a full exposure full
 * @throws OutOfRange for a share outside 0 to 1; RangeError for pictures of unlike shape
 */
export function twoExposures(one: Picture, other: Picture, share: number): Picture {
  requireShareOf('ambient-share', share);
  if (one.light.length !== other.light.length || one.columns !== other.columns)
    throw new RangeError('two pictures of unlike shape cannot lie one on the other');
  return { ...one, light: one.light.map((light, at) => (1 - share) * light + share * other.light[at]!) };
}

/**
 * A scene under a light that reaches its deepest places with no more than *left* of what the rest gets: a background behind a flash.
 *
 * @throws OutOfRange for a share outside 0 to 1
 */
export function darkenedBehind(scene: Scene, left: number): Scene {
  requireShareOf('contrast', left);
  const surfaces = scene.surfaces.map((surface) => {
    const size = surface.height.length;
    return {
      ...surface,
      albedo: surface.albedo.map((light, at) => (surface.height[at % size]! > 0 ? light : left * light)),
    };
  });
  return { ...scene, surfaces };
}

function requireShareOf(quantity: 'ambient-share' | 'contrast', share: number): void {
  if (!(share >= 0 && share <= 1)) throw new OutOfRange(quantity, share, 'a share from 0 to 1');
}
