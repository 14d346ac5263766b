import { bandLimit, type Sample } from './canvas.ts';
import { type Ellipsoid, normalOf } from './ellipsoid.ts';
import type { Direction } from './lamp.ts';

/** Six-sided facets over a round eye: dark seams between them, as far as the grid can show them. */
function facet(u: number, v: number, period: number): number {
  const turns = (2 * Math.PI) / period;
  const [along, aside] = [0.5 * u, (Math.sqrt(3) / 2) * v];
  return (Math.cos(turns * u) + Math.cos(turns * (along + aside)) + Math.cos(turns * (aside - along))) / 3;
}

/** What an eye is painted for: how fine the grid is, how light falls on it by where it is turned, and how much of the lights it mirrors. */
export interface Sight {
  readonly pitch: number;
  readonly shade: (normal: Direction) => number;
  readonly glint: (normal: Direction) => number;
}

/** Paints a place of a round eye: brown bands, facets as fine as the grid shows, and the mirrored light. */
export function paintEye(
  eye: Ellipsoid,
  x: number,
  y: number,
  { pitch, shade: shadeOf, glint: glintOf }: Sight,
  sample: Sample,
): void {
  const normal = normalOf(eye, x, y);
  const seams = bandLimit(0.045, pitch);
  const pattern = seams === 0 ? 0 : seams * facet(normal[0] * eye.axes[0], normal[1] * eye.axes[1], 0.045);
  const band = 0.5 + 0.5 * Math.cos(9 * normal[1] + 1.5 * normal[0]);
  const shade = shadeOf(normal) * (0.75 + 0.3 * pattern);
  const glint = glintOf(normal);
  sample.red = (0.3 + 0.12 * band) * shade + glint;
  sample.green = (0.085 + 0.03 * band) * shade + glint;
  sample.blue = 0.05 * shade + glint;
}
