import { bandLimit, type Sample } from './canvas.ts';
import { type Ellipsoid, normalOf } from './ellipsoid.ts';
import { type Direction, mirrored, roundShade } from './shade.ts';
import type { Lighting } from './subject.ts';

/** Six-sided facets over a round eye: dark seams between them, as far as the grid can show them. */
function facet(u: number, v: number, period: number): number {
  const turns = (2 * Math.PI) / period;
  const [along, aside] = [0.5 * u, (Math.sqrt(3) / 2) * v];
  return (Math.cos(turns * u) + Math.cos(turns * (along + aside)) + Math.cos(turns * (aside - along))) / 3;
}

/** What an eye is painted for: how fine the grid is, and where the light stands. */
export interface Sight {
  readonly pitch: number;
  readonly lighting: Lighting;
  readonly light: Direction;
}

/** Paints a place of a round eye: brown bands, facets as fine as the grid shows, and the mirrored light. */
export function paintEye(
  eye: Ellipsoid,
  x: number,
  y: number,
  { pitch, lighting, light }: Sight,
  sample: Sample,
): void {
  const normal = normalOf(eye, x, y);
  const seams = bandLimit(0.045, pitch);
  const pattern = seams === 0 ? 0 : seams * facet(normal[0] * eye.axes[0], normal[1] * eye.axes[1], 0.045);
  const band = 0.5 + 0.5 * Math.cos(9 * normal[1] + 1.5 * normal[0]);
  const shade = roundShade(normal, light) * (0.75 + 0.3 * pattern);
  const glint = 1.5 * mirrored(normal, light, lighting.angularSize, 0.05) + 0.08 * mirrored(normal, light, 1.6, 0.8);
  sample.red = (0.3 + 0.12 * band) * shade + glint;
  sample.green = (0.085 + 0.03 * band) * shade + glint;
  sample.blue = 0.05 * shade + glint;
}
