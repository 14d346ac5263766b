import { chanceFrom } from '#core/chance/chance-from.ts';
import type { Surface } from '../scene.ts';
import { type Colour, emptySurface, painted } from './canvas.ts';
import { layCapsule, type Place } from './capsule.ts';
import { type SceneOptions, subjectFrom } from './subject.ts';
import { grain } from './value-noise.ts';

const depth = 2.4;
/** Length of an arm, mm. */
const arm = 2;
/** How much higher its right and lower parts lie, mm of height to the mm. */
const tilt = [0.42, 0.24] as const;
/** Height of its middle, mm. */
const centre = 1.25;

/** The height of the plane in which the crystal grew, mm. */
export function heightOfPlane(x: number, y: number): number {
  return centre + tilt[0] * x + tilt[1] * y;
}

const place = (x: number, y: number): Place => [x, y, heightOfPlane(x, y)];

function crystal(options: SceneOptions): Surface {
  const surface = emptySurface(options);
  const next = chanceFrom(options.seed + 17);
  const ice: Colour = [0.72, 0.82, 0.95];
  /** One arm's branches; all six are alike, as they grew in the same air. */
  const branches = Array.from({ length: 7 }, (_, index) => ({
    at: 0.22 + 0.105 * index + 0.03 * next(),
    length: (0.42 - 0.045 * index) * (0.75 + 0.4 * next()) * (index === 0 ? 0.6 : 1),
  }));
  for (let turn = 0; turn < 6; turn++) {
    const angle = (turn * Math.PI) / 3 + 0.21;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const on = (along: number, aside: number): Place => place(along * cos - aside * sin, along * sin + aside * cos);
    const lay = (from: Place, to: Place, radii: readonly [number, number]) =>
      layCapsule(surface, options, { from, to, radii, colour: ice, gloss: 0.9 });
    for (const side of [-1, 1]) {
      for (const { at, length } of branches) {
        const [foot, reach] = [at * arm, length * arm];
        const end = { along: foot + 0.5 * reach, aside: side * 0.866 * reach };
        lay(on(foot, 0), on(end.along, end.aside), [0.045, 0.018]);
        for (const part of [0.45, 0.72]) {
          const [along, aside] = [foot + 0.5 * reach * part, side * 0.866 * reach * part];
          lay(on(along, aside), on(along + 0.22 * reach, aside), [0.026, 0.01]);
        }
      }
    }
    lay(on(0.1, 0), on(arm, 0), [0.075, 0.022]);
    lay(on(0.32, 0), on(0.32 * Math.cos(Math.PI / 3), 0.32 * Math.sin(Math.PI / 3)), [0.05, 0.05]);
    lay(on(0.52, 0), on(0.52 * Math.cos(Math.PI / 3), 0.52 * Math.sin(Math.PI / 3)), [0.035, 0.035]);
  }
  layCapsule(surface, options, {
    from: place(0, 0),
    to: place(0.001, 0),
    radii: [0.12, 0.12],
    colour: ice,
    gloss: 0.9,
  });
  return surface;
}

/** Dark wool far behind, with a few fibres. */
function wool(options: SceneOptions): Surface {
  const { pitch, seed } = options;
  const [fluff, fibres] = [grain(1.4, pitch, seed + 1), grain(0.4, pitch, seed + 4)];
  const cloth = painted(options, (x, y, sample) => {
    const tone = 0.8 + 0.7 * fluff(x, y) + 0.3 * fibres(x + y, 4 * (x - y));
    sample.red = 0.025 * tone;
    sample.green = 0.035 * tone;
    sample.blue = 0.075 * tone;
  });
  const next = chanceFrom(seed + 23);
  for (let index = 0; index < 24; index++) {
    const [x, y, turn] = [6 * (next() - 0.5), 5 * (next() - 0.5), Math.PI * next()];
    layCapsule(cloth, options, {
      from: [x, y, 0.02],
      to: [x + 1.6 * Math.cos(turn), y + 1.6 * Math.sin(turn), 0.1 * next()],
      radii: [0.018, 0.018],
      colour: [0.09, 0.1, 0.2],
    });
  }
  return cloth;
}

/** A six-armed frost crystal on dark wool, tilted towards the camera at its lower right. */
export const frostCrystal = subjectFrom({
  slug: 'frost-crystal',
  name: 'Frost crystal',
  width: 4.6,
  height: 4.2,
  depth,
  says: 'A six-armed frost crystal lies tilted on dark blue wool, branches along every arm.',
  surfaces: (options) => [crystal(options), wool(options)],
});
