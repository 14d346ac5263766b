import { chanceFrom } from '#core/chance/chance-from.ts';
import type { Surface } from '../scene.ts';
import { emptySurface, painted, ramp, within } from './canvas.ts';
import { type Capsule, layCapsule } from './capsule.ts';
import { type Ellipsoid, heightOfEllipsoid, inside, normalOf, outlineOf } from './ellipsoid.ts';
import { paintEye } from './hoverfly-eye.ts';
import { mirroredLamps, shadeBy } from './lamps.ts';
import type { Direction } from './lamp.ts';
import { lightFrom, lit, mirrored, roundShade } from './shade.ts';
import { type SceneOptions, subjectFrom, usualLighting } from './subject.ts';
import { grain } from './value-noise.ts';

const depth = 2.6;

const eyes: readonly Ellipsoid[] = [-1, 1].map((side) => ({
  middle: [0.74 * side, -0.12, 0.9],
  axes: [0.72, 0.98, 0.85],
}));
const face: Ellipsoid = { middle: [0, 0.28, 0.95], axes: [0.5, 0.95, 0.78] };
const brow: Ellipsoid = { middle: [0, -0.72, 0.85], axes: [0.42, 0.5, 0.62] };
const shoulders: Ellipsoid = { middle: [0, -0.75, -0.35], axes: [1.75, 1.35, 0.95] };

const parts: readonly Ellipsoid[] = [...eyes, face, brow];

/** The height of whatever of the head is nearest to the camera, mm; where there is none of it, that of the brow's outline. */
export function heightOfHead(x: number, y: number): number {
  const here = parts.filter((part) => inside(part, x, y) > 0);
  return Math.max(brow.middle[2], ...here.map((part) => heightOfEllipsoid(part, x, y)));
}

/** The head with its eyes, one surface: whatever is nearest to the camera, down to the shoulders behind. */
function head(options: SceneOptions): Surface {
  const { pitch, seed, lamps, lighting = usualLighting } = options;
  const light = lightFrom(lighting);
  const shadeOf = lamps ? shadeBy(lamps) : (normal: Direction) => roundShade(normal, light);
  const glintOf = lamps
    ? (normal: Direction) => 1.5 * mirroredLamps(normal, lamps, 0.05)
    : (normal: Direction) =>
        1.5 * mirrored(normal, light, lighting.angularSize, 0.05) + 0.08 * mirrored(normal, light, 1.6, 0.8);
  const down = grain(0.12, pitch, seed);
  return painted(options, (x, y, sample) => {
    sample.coverage = 0;
    let nearest = -Infinity;
    for (const part of parts) {
      const share = inside(part, x, y);
      const coverage = within(outlineOf(part, share), pitch);
      if (coverage === 0) continue;
      const height = heightOfEllipsoid(part, x, y);
      sample.coverage = Math.max(sample.coverage, coverage);
      if (height <= nearest) continue;
      nearest = height;
      sample.height = height;
      if (part === face || part === brow) {
        const stripe = ramp(0.16, 0.1, Math.abs(x)) * ramp(-0.2, 0.1, y);
        const fuzz = 1 + 0.35 * down(2 * x, y);
        const yellow = part === face ? 1 : 0.55;
        const shade = shadeOf(normalOf(part, x, y)) * fuzz;
        sample.red = (0.62 * yellow * (1 - stripe) + 0.03 * stripe) * shade;
        sample.green = (0.44 * yellow * (1 - stripe) + 0.025 * stripe) * shade;
        sample.blue = (0.1 * yellow * (1 - stripe) + 0.02 * stripe) * shade;
      } else paintEye(part, x, y, { pitch, shade: shadeOf, glint: glintOf }, sample);
    }
  });
}

/** The shoulders and, far behind, a leaf out of reach. */
function behind(options: SceneOptions): Surface {
  const { pitch, seed } = options;
  const [fur, leaves] = [grain(0.2, pitch, seed + 5), grain(2.2, pitch, seed + 9)];
  const painting = painted(options, (x, y, sample) => {
    const share = inside(shoulders, x, y);
    const isBody = share > 0;
    sample.height = isBody ? Math.max(0, heightOfEllipsoid(shoulders, x, y)) : 0;
    if (isBody && sample.height > 0) {
      const hair = 0.7 + 0.5 * fur(x, 3 * y);
      sample.red = 0.16 * hair;
      sample.green = 0.12 * hair;
      sample.blue = 0.05 * hair;
    } else {
      const leaf = 0.8 + 0.5 * leaves(x, y);
      sample.red = 0.1 * leaf;
      sample.green = 0.24 * leaf;
      sample.blue = 0.07 * leaf;
    }
  });
  return lit(painting, options, { ambient: 0.45 });
}

/** Antennae, mouth and bristles: they stand before what they hide. */
function overhanging(options: SceneOptions): Surface {
  const surface = emptySurface(options);
  const next = chanceFrom(options.seed + 31);
  const lay = (rod: Capsule) => layCapsule(surface, options, rod);
  const dark = [0.05, 0.035, 0.02] as const;
  for (let index = 0; index < 120; index++) {
    const around = (next() - 0.5) * 5.4;
    const off = 0.75 + 0.35 * next();
    const [x, y] = [0.5 * Math.sin(around) * off, -0.55 - 0.55 * Math.cos(around) * off];
    const length = 0.16 + 0.2 * next();
    const [up, out] = [0.25 + 0.4 * next(), 0.6 + 0.5 * next()];
    if (eyes.some((eye) => inside(eye, x, y) > 0.1)) continue;
    const root = heightOfHead(x, y);
    lay({
      from: [x, y, root],
      to: [x * (1 + length), y - length * out, root + up],
      radii: [0.008, 0.002],
      colour: [0.4, 0.3, 0.1],
      gloss: 0.2,
    });
  }
  for (let index = 0; index < 40; index++) {
    const [x, y] = [(next() - 0.5) * 0.8, 0.5 + 0.6 * next()];
    const root = heightOfHead(x, y);
    lay({
      from: [x, y, root],
      to: [x * 1.25, y + 0.12 + 0.1 * next(), root + 0.15 + 0.1 * next()],
      radii: [0.006, 0.002],
      colour: [0.55, 0.45, 0.25],
    });
  }
  for (const side of [-1, 1]) {
    lay({
      from: [0.13 * side, -0.22, 1.55],
      to: [0.2 * side, -0.1, 1.9],
      radii: [0.07, 0.08],
      colour: dark,
      gloss: 0.4,
    });
    lay({
      from: [0.2 * side, -0.1, 1.9],
      to: [0.34 * side, 0.12, 2.2],
      radii: [0.11, 0.15],
      colour: [0.09, 0.05, 0.02],
      gloss: 0.5,
    });
    lay({
      from: [0.3 * side, 0.02, 2.15],
      to: [0.72 * side, -0.28, 2.5],
      radii: [0.016, 0.008],
      colour: dark,
      gloss: 0.5,
    });
  }
  return surface;
}

/** The head of a hoverfly, looking at the camera: two round eyes of many facets that mirror the light, antennae held out before the face. */
export const hoverflyHead = subjectFrom({
  slug: 'hoverfly-head',
  name: 'Hoverfly’s head',
  width: 3.2,
  height: 2.4,
  depth,
  says: 'The head of a hoverfly from the front: two large brown eyes that mirror the light, a yellow face, antennae held out towards the camera.',
  surfaces: (options) => [overhanging(options), head(options), behind(options)],
});
