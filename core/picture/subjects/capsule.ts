import type { Surface } from '../scene.ts';
import { type Colour, within } from './canvas.ts';
import { mirroredLamps, shadeBy } from './lamps.ts';
import type { Direction } from './lamp.ts';
import { lightFrom, mirrored, roundShade } from './shade.ts';
import { type SceneOptions, usualLighting } from './subject.ts';

/** A place in space: mm to the right, downwards, and towards the camera. */
export type Place = readonly [number, number, number];

/** A round rod between two places, each end with its own radius, mm: hairs, wires, legs, arms of crystals. */
export interface Capsule {
  readonly from: Place;
  readonly to: Place;
  readonly radii: readonly [number, number];
  readonly colour: Colour;
  /** Light mirrored along its shining line. */
  readonly gloss?: number;
}

/**
 * Lays a rod over a surface in place. Rods thinner than a sample cover part of it, and what is behind shows beside them; the height is that of
 * the one which shows most.
 *
 * Height along the axis plus what the roundness adds; exact where the rod is not steep.
 */
export function layCapsule(
  surface: Surface,
  options: SceneOptions,
  { from, to, radii, colour, gloss = 0 }: Capsule,
): void {
  const { columns, rows, pitch, centre, lamps, lighting = usualLighting } = options;
  const light = lightFrom(lighting);
  const [firstX, firstY] = [0.5 - columns / 2, 0.5 - rows / 2];
  const [middleX, middleY] = [centre?.x ?? 0, centre?.y ?? 0];
  const reach = Math.max(...radii) + pitch;
  const [left, right] = span(
    columns,
    pitch,
    Math.min(from[0], to[0]) - reach - middleX,
    Math.max(from[0], to[0]) + reach - middleX,
  );
  const [top, bottom] = span(
    rows,
    pitch,
    Math.min(from[1], to[1]) - reach - middleY,
    Math.max(from[1], to[1]) + reach - middleY,
  );
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const squared = dx * dx + dy * dy;
  const size = columns * rows;
  for (let row = top; row < bottom; row++) {
    for (let column = left; column < right; column++) {
      const x = (firstX + column) * pitch + middleX - from[0];
      const y = (firstY + row) * pitch + middleY - from[1];
      const along = squared === 0 ? 0 : Math.min(1, Math.max(0, (x * dx + y * dy) / squared));
      const [offX, offY] = [x - along * dx, y - along * dy];
      const off = Math.sqrt(offX * offX + offY * offY);
      const radius = radii[0] + along * (radii[1] - radii[0]);
      // A rod thinner than a sample fills as much of it as it is wide.
      const drawn = Math.max(radius, pitch / 2);
      const coverage = within(off - drawn, pitch) * Math.min(1, radius / drawn);
      const at = row * columns + column;
      if (coverage === 0) continue;
      const bulge = Math.sqrt(Math.max(0, radius * radius - off * off));
      const height = from[2] + along * (to[2] - from[2]) + bulge;
      const before = surface.coverage[at]!;
      const isBehind = before > 0 && height < surface.height[at]!;
      const shown = isBehind ? coverage * (1 - before) : coverage;
      if (shown === 0) continue;
      const total = before + coverage - before * coverage;
      const share = shown / total;
      const normal: Direction =
        off > radius ? [offX / off, offY / off, 0] : [offX / radius, offY / radius, bulge / radius];
      const shade = lamps ? shadeBy(lamps)(normal) : roundShade(normal, light);
      const glint =
        gloss === 0
          ? 0
          : gloss * (lamps ? mirroredLamps(normal, lamps, 0.6) : mirrored(normal, light, lighting.angularSize, 0.6));
      for (let plane = 0; plane < 3; plane++) {
        const there = plane * size + at;
        surface.albedo[there] = share * (colour[plane]! * shade + glint) + (1 - share) * surface.albedo[there]!;
      }
      if (share >= 0.5) surface.height[at] = height;
      surface.coverage[at] = total;
    }
  }
}

/** The indices from *least* to *most*, mm from the middle of *count* samples. */
function span(count: number, pitch: number, least: number, most: number): readonly [number, number] {
  const first = Math.ceil(least / pitch + count / 2 - 0.5);
  const last = Math.floor(most / pitch + count / 2 - 0.5) + 1;
  return [Math.min(count, Math.max(0, first)), Math.min(count, Math.max(0, last))];
}
