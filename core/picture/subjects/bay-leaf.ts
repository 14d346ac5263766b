import { chanceFrom } from '#core/chance/chance-from.ts';
import type { Surface } from '../scene.ts';
import { bandLimit, emptySurface, painted, ramp, within } from './canvas.ts';
import { layCapsule } from './capsule.ts';
import { lit } from './shade.ts';
import { type SceneOptions, subjectFrom } from './subject.ts';
import { grain } from './value-noise.ts';

const depth = 7;
/** Half its length and half its greatest width, mm. */
const [half, wide] = [17, 7.5];

/** Half the width of the leaf at a place along it, mm; pointed at both ends. */
function halfWidth(x: number): number {
  const share = Math.min(1, Math.abs(x) / half);
  return wide * (1 - share ** 2) ** 0.85 * (1 - 0.12 * Math.sign(x) * share);
}

/** The height of the blade, mm: mirrored along its midrib like an open book, and arched from end to end. */
export function heightOfLeaf(x: number, y: number): number {
  const arch = 2.4 * (1 - Math.min(1, Math.abs(x) / half) ** 2);
  const fold = 0.32 * Math.sqrt(y * y + 0.25);
  return 0.6 + arch + fold + 0.12 * Math.sin(1.1 * x + 0.6 * Math.abs(y));
}

/** Distance to the nearest vein, mm, and how broad that vein is. */
function veins(x: number, y: number): { readonly off: number; readonly broad: number } {
  const midrib = Math.abs(y);
  const spacing = 3.2;
  const aside = x + 0.75 * Math.abs(y) + 0.04 * y * y + (y > 0 ? 0.9 : 0);
  const side = 0.72 * Math.abs(aside - spacing * Math.round(aside / spacing));
  return midrib < side
    ? { off: midrib, broad: 0.3 }
    : { off: side, broad: 0.11 * ramp(0, 1, 1.15 - Math.abs(y) / wide) };
}

function blade(options: SceneOptions): Surface {
  const { pitch, seed } = options;
  const cell = grain(0.45, pitch, seed);
  const patch = grain(3, pitch, seed + 7);
  const leaf = painted(options, (x, y, sample) => {
    const off = Math.abs(y) - halfWidth(x) + 0.12 * bandLimit(1, pitch) * Math.sin(6.5 * x);
    sample.coverage = Math.abs(x) > half ? 0 : within(off, pitch);
    sample.height = heightOfLeaf(x, y);
    if (sample.coverage === 0) return;
    const { off: toVein, broad } = veins(x, y);
    const vein = within(toVein - broad, Math.max(pitch, 0.08));
    sample.height += 0.1 * ramp(2.4 * broad, 0, toVein);
    const cells = 1 + 0.35 * cell(x, y) + 0.25 * patch(x, y);
    const pale = ramp(-0.5, 0, off);
    sample.red = (0.085 * cells * (1 - vein) + 0.34 * vein) * (1 + pale);
    sample.green = (0.2 * cells * (1 - vein) + 0.42 * vein) * (1 + 0.5 * pale);
    sample.blue = 0.05 * cells * (1 - vein) + 0.14 * vein;
  });
  return lit(leaf, options, { ambient: 0.35, gloss: 0.12, roughness: 0.8 });
}

/** Fine hairs, standing up from the blade and out over its rim. */
function hairs(options: SceneOptions): Surface {
  const surface = emptySurface(options);
  const next = chanceFrom(options.seed + 41);
  for (let index = 0; index < 240; index++) {
    const x = (2 * next() - 1) * half * 0.97;
    const side = next() < 0.5 ? -1 : 1;
    const isRim = index % 2 === 0;
    const y = side * halfWidth(x) * (isRim ? 1 : next());
    const length = 0.7 + 0.9 * next();
    const foot = heightOfLeaf(x, y);
    const lean = isRim ? side * (0.5 + 0.4 * next()) : (next() - 0.5) * 0.8;
    layCapsule(surface, options, {
      from: [x, y, foot],
      to: [x + (next() - 0.5) * 0.6, y + lean * length, Math.min(depth, foot + length * 0.9)],
      radii: [0.03, 0.008],
      colour: [0.7, 0.72, 0.6],
      gloss: 0.2,
    });
  }
  return surface;
}

function soil(options: SceneOptions): Surface {
  const { pitch, seed } = options;
  const crumbs = grain(2.2, pitch, seed + 13);
  const ground = painted(options, (x, y, sample) => {
    const crumb = crumbs(x, y);
    const shadow = 1 - 0.5 * ramp(1.5, -1.5, Math.abs(y - 1.2) - halfWidth(x - 1));
    const tone = (0.7 + 0.6 * crumb) * shadow;
    sample.red = 0.13 * tone;
    sample.green = 0.085 * tone;
    sample.blue = 0.055 * tone;
    sample.height = 0.15 * (1 + crumb);
  });
  return lit(ground, options, { ambient: 0.5 });
}

/** A bay leaf on dark soil, mirrored along its midrib, veins standing out, fine hairs along the rim. */
export const bayLeaf = subjectFrom({
  slug: 'bay-leaf',
  name: 'Bay leaf',
  width: 36,
  height: 20,
  depth,
  says: 'A green bay leaf with pale veins lies arched on dark soil, fine hairs standing out from it.',
  surfaces: (options) => [hairs(options), blade(options), soil(options)],
});
