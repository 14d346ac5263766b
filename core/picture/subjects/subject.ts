import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Scene, Surface } from '../scene.ts';
import type { Lamp } from './lamp.ts';

/** Where the light stands, seen from the subject, and how large it looks from there, radians. */
export interface Lighting {
  /** From the right-hand direction of the rows, turning towards the top */
  readonly azimuth: number;
  /** Above the plane of the picture, towards the camera */
  readonly elevation: number;
  /** The angle that its width takes up */
  readonly angularSize: number;
}

/** From the upper left, halfway up, as large as a small window across a room. */
export const usualLighting: Lighting = { azimuth: 2.2, elevation: 0.8, angularSize: 0.6 };

export interface SceneOptions {
  readonly columns: number;
  readonly rows: number;
  /** mm on the subject */
  readonly pitch: number;
  /** Which of all such subjects: the same seed, the same subject */
  readonly seed: number;
  readonly lighting?: Lighting;
  /** Round lights instead, and next to no light from elsewhere: for subjects that take them, the hoverfly’s head. */
  readonly lamps?: readonly Lamp[];
  /** Which place of the subject is in the middle, mm from its own middle to the right and downwards */
  readonly centre?: { readonly x: number; readonly y: number };
}

/** Something to photograph, of a real thing's size, mm. */
export interface Subject {
  readonly slug: string;
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  /** One sentence for those who hear the picture */
  readonly says: string;
  readonly scene: (options: SceneOptions) => Scene;
}

/** A subject made of these surfaces, front ones first, each hidden where it dips behind a later one; its scene is refused on a grid that is none. */
export function subjectFrom({
  surfaces,
  ...subject
}: Omit<Subject, 'scene'> & { readonly surfaces: (options: SceneOptions) => readonly Surface[] }): Subject {
  return {
    ...subject,
    scene(options) {
      requireSceneOptions(options);
      const { columns, rows, pitch } = options;
      return { columns, rows, pitch, depth: subject.depth, surfaces: surfaced(surfaces(options)) };
    },
  };
}

/** Takes away, in place, what of the front surfaces lies below a later one: a bristle's root within the head it grows from. */
function surfaced(surfaces: readonly Surface[]): readonly Surface[] {
  for (const [index, { height, coverage }] of surfaces.entries()) {
    for (const later of surfaces.slice(index + 1)) {
      for (let at = 0; at < coverage.length; at++) {
        if (coverage[at]! > 0 && later.coverage[at]! > 0 && height[at]! < later.height[at]!)
          coverage[at] = coverage[at]! * (1 - later.coverage[at]!);
      }
    }
  }
  return surfaces;
}

/** More samples than that in a row or column would take a browser's memory. */
const mostSamples = 8192;

/**
 * Throws unless a scene can be drawn on such a grid.
 *
 * @throws OutOfRange for a pitch that is not above 0; RangeError in words for a number of samples, a seed or a light that is none
 */
export function requireSceneOptions({ columns, rows, pitch, seed, lighting, lamps = [], centre }: SceneOptions): void {
  requirePositive('pixel-pitch', pitch);
  for (const [what, count] of [
    ['columns', columns],
    ['rows', rows],
  ] as const) {
    if (!(Number.isInteger(count) && count >= 1 && count <= mostSamples))
      throw new RangeError(`the scene has ${count} ${what}; accepted: a whole number from 1 to ${mostSamples}`);
  }
  const numbers = { seed, ...lighting, ...centre };
  for (const [what, value] of Object.entries(numbers)) {
    if (!Number.isFinite(value)) throw new RangeError(`${what} of the scene is ${value}; accepted: a finite number`);
  }
  for (const { angularSize, hole = 0 } of lamps) {
    if (!(angularSize > 0 && angularSize < Math.PI && hole >= 0 && hole < angularSize))
      throw new OutOfRange('source-angle', angularSize, 'above 0 and below π, and wider than its hole');
  }
  if (lighting && !(lighting.angularSize > 0 && lighting.angularSize < Math.PI))
    throw new OutOfRange('source-angle', lighting.angularSize, 'above 0 and below π');
}
