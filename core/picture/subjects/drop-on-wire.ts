import type { Surface } from '../scene.ts';
import { type Colour, emptySurface, painted, ramp, within } from './canvas.ts';
import { layCapsule } from './capsule.ts';
import type { Direction } from './lamp.ts';
import { lightFrom, mirrored } from './shade.ts';
import { type SceneOptions, subjectFrom, usualLighting } from './subject.ts';
import { grain } from './value-noise.ts';

const depth = 12;
/** The drop: a sphere of this radius and middle, mm. */
const radius = 1.25;
const middle = [0, 0.95, 10.7] as const;
/** Refractive index of water. */
const water = 1.333;

/** Writes the colour of a place, mm. */
type Flower = (x: number, y: number, out: [number, number, number]) => void;

/** A flower far behind: petals around a yellow middle, longest above, and a stem below, on green. Seen straight, and once more in the drop. */
function flower(pitch: number, seed: number): Flower {
  const [crease, blades] = [grain(0.8, pitch, seed), grain(3, pitch, seed + 2)];
  return (x, y, out) => {
    const off = Math.hypot(x, y);
    const turn = Math.atan2(y, x);
    const reach =
      (5.2 + 1.5 * Math.cos(7 * turn) * Math.sign(Math.cos(3.5 * turn)) ** 2) * (1 - (0.3 * y) / (off || 1));
    const petal = ramp(reach + 0.15, reach - 0.15, off);
    const heart = ramp(1.9, 1.7, off);
    const fold = 0.8 + 0.2 * Math.cos(14 * turn) + 0.1 * crease(x, y);
    const stem = y > 0 ? ramp(0.75, 0.55, Math.abs(x - 0.04 * y * y)) : 0;
    const grass = 0.7 + 0.6 * blades(0.4 * x, y) + 1.6 * stem;
    const mix = (back: number, leaf: number, core: number) =>
      (back * (1 - petal) + leaf * petal) * (1 - heart) + core * heart;
    out[0] = mix(0.07 * grass, 0.75 * fold, 0.7);
    out[1] = mix(0.2 * grass, 0.22 * fold, 0.45);
    out[2] = mix(0.06 * grass, 0.45 * fold, 0.06);
  };
}

/**
 * Where the line of sight through a place of the drop meets the far background, mm from the drop's middle in the picture: refracted by
 * Snell's law when it enters the sphere and when it leaves.
 *
 * Undefined where it runs so flat after the second surface that it never gets there.
 */
export function seenThroughDrop(x: number, y: number): { readonly x: number; readonly y: number } | undefined {
  const off = Math.hypot(x, y);
  if (off === 0) return { x: 0, y: 0 };
  const into = Math.asin(off / radius);
  const inside = Math.asin(off / (radius * water));
  // Bent by the same angle at both surfaces, towards the axis each time.
  const bend = 2 * (into - inside);
  if (bend >= 1.3) return undefined;
  const leaves = Math.PI - 2 * inside;
  // In the plane of the ray: from the front point at the angle `into` from the axis, the exit lies `leaves` further round the middle.
  const exit = into + leaves;
  const [across, along] = [radius * Math.sin(exit), radius * Math.cos(exit)];
  const landed = across - Math.tan(bend) * (middle[2] + along);
  return { x: (landed * x) / off, y: (landed * y) / off };
}

function drop(options: SceneOptions): Surface {
  const { pitch, seed, lighting = usualLighting } = options;
  const light = lightFrom(lighting);
  const colour: [number, number, number] = [0, 0, 0];
  const refracted = flower(pitch * 4, seed);
  return painted(options, (px, py, sample) => {
    const [x, y] = [px - middle[0], py - middle[1]];
    const off = Math.hypot(x, y);
    sample.coverage = within(off - radius, pitch);
    const inside = Math.min(off, 0.9999 * radius);
    const bulge = Math.sqrt(radius * radius - inside * inside);
    sample.height = middle[2] + bulge;
    if (sample.coverage === 0) return;
    const seen = seenThroughDrop((x * inside) / (off || 1), (y * inside) / (off || 1));
    if (seen) refracted(seen.x + middle[0], seen.y + middle[1], colour);
    else colour.fill(0.03);
    // Towards the rim a drop mirrors more and lets less through.
    const rim = ramp(0.75, 1, inside / radius);
    const normal: Direction = [x / radius, y / radius, bulge / radius];
    const glint = 1.3 * mirrored(normal, light, lighting.angularSize, 0.06);
    const sky = 0.18 * rim * Math.max(0, -normal[1]);
    sample.red = colour[0] * (1 - 0.7 * rim) + sky + glint;
    sample.green = colour[1] * (1 - 0.7 * rim) + sky + glint;
    sample.blue = colour[2] * (1 - 0.7 * rim) + 1.3 * sky + glint;
  });
}

function wire(options: SceneOptions): Surface {
  const surface = emptySurface(options);
  const steel: Colour = [0.22, 0.22, 0.24];
  layCapsule(surface, options, {
    from: [-20, -0.55, 9.6],
    to: [20, -0.15, 11.4],
    radii: [0.2, 0.2],
    colour: steel,
    gloss: 0.9,
  });
  for (let turn = -14; turn <= 14; turn++) {
    const x = turn * 0.55;
    const along = (x + 20) / 40;
    layCapsule(surface, options, {
      from: [x - 0.12, -0.75 + 0.4 * along, 9.75 + 1.8 * along],
      to: [x + 0.12, -0.35 + 0.4 * along, 9.75 + 1.8 * along],
      radii: [0.07, 0.07],
      colour: [0.3, 0.28, 0.26],
      gloss: 0.8,
    });
  }
  return surface;
}

function background(options: SceneOptions): Surface {
  const colour: [number, number, number] = [0, 0, 0];
  const straight = flower(options.pitch, options.seed);
  return painted(options, (x, y, sample) => {
    straight(x, y, colour);
    sample.red = colour[0];
    sample.green = colour[1];
    sample.blue = colour[2];
    sample.height = 0;
  });
}

/** A drop hanging on a twisted wire, a flower far behind: it shows the flower upside down, small and sharp. */
export const dropOnWire = subjectFrom({
  slug: 'drop-on-wire',
  name: 'Drop on a wire',
  width: 7,
  height: 5,
  depth,
  says: 'A drop of water hangs on a twisted wire; in it stands the flower from far behind, upside down.',
  surfaces: (options) => [wire(options), drop(options), background(options)],
});
