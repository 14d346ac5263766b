import type { Surface } from '../scene.ts';
import { emptySurface, painted, ramp, within } from './canvas.ts';
import { layCapsule } from './capsule.ts';
import { lit } from './shade.ts';
import { type SceneOptions, subjectFrom } from './subject.ts';
import { grain } from './value-noise.ts';

const depth = 8.2;
/** Of the brass head, mm. */
const radius = 5;
/** Where the spike's point is, mm: it leans, so that it hides part of the head. */
const tip = [2.6, -1.7, 8] as const;

/** The height of the head, which lies on its back like a shallow dish with a rolled rim, at a distance from its middle, mm. */
export function heightOfDish(off: number): number {
  const rim = Math.max(0, 0.35 * 0.35 - (off - radius + 0.35) ** 2);
  return 0.25 + 0.7 * (Math.min(off, radius) / radius) ** 2 + (off > radius - 0.7 ? 0.6 * Math.sqrt(rim) : 0);
}

function dish(options: SceneOptions): Surface {
  const { pitch, seed } = options;
  const rings = grain(0.25, pitch, seed);
  const stain = grain(1.6, pitch, seed + 3);
  const brass = painted(options, (x, y, sample) => {
    const off = Math.hypot(x, y);
    sample.coverage = within(off - radius, pitch);
    sample.height = heightOfDish(off);
    if (sample.coverage === 0) return;
    // Turned on a lathe: fine rings, and a stain or two.
    const turned = 1 + 0.12 * rings(off * 3, 0.02 * Math.atan2(y, x)) + 0.15 * stain(x, y);
    sample.red = 0.62 * turned;
    sample.green = 0.44 * turned;
    sample.blue = 0.14 * turned;
  });
  return lit(brass, options, { ambient: 0.22, gloss: 0.8, roughness: 0.7 });
}

function spike(options: SceneOptions): Surface {
  const surface = emptySurface(options);
  const steel = [0.3, 0.3, 0.32] as const;
  layCapsule(surface, options, {
    from: [0, 0, 0.3],
    to: [0, 0, 0.6],
    radii: [1.15, 0.95],
    colour: [0.5, 0.36, 0.12],
    gloss: 0.6,
  });
  layCapsule(surface, options, { from: [0, 0, 0.6], to: tip, radii: [0.45, 0.02], colour: steel, gloss: 1 });
  return surface;
}

/** Cork, with the shadow of the pin. */
function board(options: SceneOptions): Surface {
  const { pitch, seed } = options;
  const crumbs = grain(1.1, pitch, seed + 11);
  const cork = painted(options, (x, y, sample) => {
    const shadow = 1 - 0.55 * ramp(radius + 1.4, radius - 0.8, Math.hypot(x - 0.9, y - 0.7));
    const crumb = crumbs(x, y);
    const tone = (0.78 + 0.45 * crumb) * shadow;
    sample.red = 0.42 * tone;
    sample.green = 0.25 * tone;
    sample.blue = 0.12 * tone;
    sample.height = 0.05 + 0.05 * crumb;
  });
  return lit(cork, options, { ambient: 0.5 });
}

/** A brass drawing pin on its back on a cork board, the spike leaning towards the camera. */
export const drawingPin = subjectFrom({
  slug: 'drawing-pin',
  name: 'Drawing pin',
  width: 12,
  height: 12,
  depth,
  says: 'A brass drawing pin lies on its back on cork, its spike leaning up towards the camera.',
  surfaces: (options) => [spike(options), dish(options), board(options)],
});
