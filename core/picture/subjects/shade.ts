import type { Surface } from '../scene.ts';
import type { Direction } from './lamp.ts';
import { type Lighting, type SceneOptions, usualLighting } from './subject.ts';

/** Where the light comes from. */
export function lightFrom({ azimuth, elevation }: Lighting): Direction {
  return [Math.cos(elevation) * Math.cos(azimuth), -Math.cos(elevation) * Math.sin(azimuth), Math.sin(elevation)];
}

/** How much of its own colour a small round thing shows where it is turned like this: Lambert's cosine, and a share from everywhere. */
export function roundShade(normal: Direction, light: Direction): number {
  return 0.35 + 0.65 * Math.max(0, normal[0] * light[0] + normal[1] * light[1] + normal[2] * light[2]);
}

/** How a surface takes light. */
export interface Finish {
  /** Light from everywhere else, as a share of what a surface facing the light gets. */
  readonly ambient?: number;
  /** Light mirrored, for a light that fills the whole mirrored direction; 0 is matt. */
  readonly gloss?: number;
  /** The angle over which a rough mirror spreads what it mirrors, radians. */
  readonly roughness?: number;
}

/**
 * How much light a mirror turned like this shows of a light of some size at infinity, 0 to 1: all where the mirrored line of sight meets
 * it. That is what a convex eye shows as its catchlight, and it moves and grows with the light.
 */
export function mirrored(normal: Direction, light: Direction, angularSize: number, roughness: number): number {
  const [x, y, z] = normal;
  const along = 2 * z * x * light[0] + 2 * z * y * light[1] + (2 * z * z - 1) * light[2];
  const off = Math.acos(Math.min(1, Math.max(-1, along)));
  const share = (off - angularSize / 2 + roughness / 2) / roughness;
  return share <= 0 ? 1 : share >= 1 ? 0 : 1 - share * share * (3 - 2 * share);
}

/**
 * Lights a surface that was painted in its own colours, in place: Lambert's cosine, a share of light from everywhere, and a mirrored part.
 * Slopes come from its heights.
 */
export function lit(surface: Surface, options: SceneOptions, finish: Finish = {}): Surface {
  const { columns, rows, pitch, lighting = usualLighting } = options;
  const { ambient = 0.3, gloss = 0, roughness = 0.5 } = finish;
  const light = lightFrom(lighting);
  const { albedo, height, coverage } = surface;
  const size = columns * rows;
  for (let row = 0, at = 0; row < rows; row++) {
    const [up, down] = [row > 0 ? columns : 0, row < rows - 1 ? columns : 0];
    for (let column = 0; column < columns; column++, at++) {
      if (coverage[at] === 0) continue;
      const [left, right] = [column > 0 ? 1 : 0, column < columns - 1 ? 1 : 0];
      const across = (height[at + right]! - height[at - left]!) / (pitch * Math.max(1, left + right));
      const along = (height[at + down]! - height[at - up]!) / (pitch * Math.max(1, (up + down) / columns));
      const scale = 1 / Math.sqrt(1 + across * across + along * along);
      const facing = scale * (light[2] - across * light[0] - along * light[1]);
      const lambert = ambient + (1 - ambient) * (facing > 0 ? facing : 0);
      const glint =
        gloss === 0
          ? 0
          : gloss * mirrored([-across * scale, -along * scale, scale], light, lighting.angularSize, roughness);
      albedo[at] = albedo[at]! * lambert + glint;
      albedo[size + at] = albedo[size + at]! * lambert + glint;
      albedo[2 * size + at] = albedo[2 * size + at]! * lambert + glint;
    }
  }
  return surface;
}
