import type { Named } from '#core/quantity/formula.ts';
import { kitReach, type ChainReach } from '#core/rig/kit/reach.ts';
import { searchSoundKit, type KitSearch } from '#core/rig/kit/search-sound-kit.ts';
import { cameraRow, kits, wish, type KitSlug, type WishSlug } from '#site/state/kits.ts';

/** What is asked of a chain, as the bench has it. */
export type Asked = Readonly<
  Named<
    | 'subject-width'
    | 'subject-depth'
    | 'subject-speed'
    | 'least.frame-fill'
    | 'nearest.working-distance'
    | 'longest.exposure-time'
    | 'luminance'
    | 'iso'
    | 'wavelength'
    | 'sensor-width'
    | 'circle-of-confusion'
  >
>;

/** Names of the inputs that {@link Asked} holds. */
export const ofAsked = [
  'subject-width',
  'subject-depth',
  'subject-speed',
  'least.frame-fill',
  'nearest.working-distance',
  'longest.exposure-time',
  'luminance',
  'iso',
  'wavelength',
  'sensor-width',
  'circle-of-confusion',
] as const;

/** The thinnest thing there is: each frame of a stack has to hold no more. mm */
const frameOfStack = 0.001;

/** What one frame has to hold: all of the depth, or next to nothing of it where frames are stacked. */
export const depthOfFrame = (subjectDepth: number, as: string | undefined) =>
  as === 'stack' ? Math.min(subjectDepth, frameOfStack) : subjectDepth;

/** Searches are asked for by readings, sheets and list alike: the last ones are kept. */
const known = new Map<string, unknown>();
const most = 64;

function kept<Value>(key: string, find: () => Value): Value {
  if (known.has(key)) return known.get(key) as Value;
  if (known.size >= most) known.delete(known.keys().next().value!);
  const value = find();
  known.set(key, value);
  return value;
}

/** The kit and what is added to it, on the camera. */
const rowsOf = (kit: KitSlug, added: readonly WishSlug[], asked: Asked) => [
  cameraRow(asked.sensorWidth, asked.circleOfConfusion),
  ...kits[kit].rows,
  ...added.map(wish),
];

/**
 * Every chain of a kit with what is added to it, judged.
 *
 * @param as `one` frame or a `stack`
 */
export function search(
  kit: KitSlug,
  added: readonly WishSlug[],
  asked: Asked,
  as: string | undefined,
  budget = Infinity,
): KitSearch {
  return kept(JSON.stringify([kit, added, asked, as, budget]), () =>
    searchSoundKit(
      rowsOf(kit, added, asked),
      {
        ...asked,
        subjectDepth: depthOfFrame(asked.subjectDepth, as),
        leastFill: asked.leastFrameFill,
        nearestDistance: asked.nearestWorkingDistance,
        longestExposure: asked.longestExposureTime,
      },
      budget,
    ),
  );
}

/** Settings of each lens that its line in the plot is drawn through. */
const settings = 14;

/** Where every chain of the kit can show something sharp: the same whatever is asked. */
export function reaches(kit: KitSlug, added: readonly WishSlug[], asked: Asked): readonly ChainReach[] {
  // Neither sensor nor circle have a part in where a chain is sharp.
  return kept(`reach ${kit} ${added.join()}`, () => kitReach(rowsOf(kit, added, asked), settings));
}
