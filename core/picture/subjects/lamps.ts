import { byAngle } from '#core/light/by-angle.ts';
import { discIlluminance } from '#core/light/disc-illuminance.ts';
import type { DiscSource } from '#core/light/flat-source.ts';
import type { Direction, Lamp } from './lamp.ts';
import { mirrored } from './shade.ts';

/** What comes from nowhere in particular, so that no place is a hole in the picture: a share of the brightest. */
const everywhere = 0.02;

/**
 * How brightly round lights light a surface by where it is turned, 0 to 1; 1 where those that face the camera are lit most.
 *
 * Each light counts by the cosine over all of it that stands above the surface's horizon, in steps of a degree, straight between.
 */
export function shadeBy(lamps: readonly Lamp[]): (normal: Direction) => number {
  const known = shades.get(lamps);
  if (known) return known;
  const all = lamps.map(({ direction, angularSize, hole = 0 }) => ({ direction, at: shadeOf(angularSize, hole) }));
  const light = ([x, y, z]: Direction) => {
    let total = 0;
    for (const { direction, at } of all) total += at(x * direction[0] + y * direction[1] + z * direction[2]);
    return total;
  };
  let most = 0;
  for (let across = -90; across <= 90; across += 2) {
    const angle = (Math.PI / 180) * across;
    most = Math.max(most, light([Math.sin(angle), 0, Math.cos(angle)]));
  }
  const shade = (normal: Direction) => Math.min(1, everywhere + ((1 - everywhere) * light(normal)) / most);
  shades.set(lamps, shade);
  return shade;
}
const shades = new WeakMap<readonly Lamp[], (normal: Direction) => number>();

/** What a light gives a surface by the angle between the two, for luminance 1. */
function shadeOf(angularSize: number, hole: number): (cosine: number) => number {
  const disc = (size: number): DiscSource => ({
    shape: 'disc',
    sourceSize: 2 * Math.tan(size / 2),
    luminance: 1,
    centre: [0, 0, 1],
    facing: [0, 0, -1],
  });
  return byAngle((angle) => {
    const element = { point: [0, 0, 0], normal: [Math.sin(angle), 0, Math.cos(angle)] } as const;
    return discIlluminance(disc(angularSize), element) - (hole > 0 ? discIlluminance(disc(hole), element) : 0);
  });
}

/** How much a mirror turned like this shows of all lights, as {@link mirrored} has it of one. */
export function mirroredLamps(normal: Direction, lamps: readonly Lamp[], roughness: number): number {
  return lamps.reduce((total, { direction, angularSize, hole = 0 }) => {
    const inHole = hole > 0 ? mirrored(normal, direction, hole, roughness) : 0;
    return Math.max(total, mirrored(normal, direction, angularSize, roughness) - inHole);
  }, 0);
}
