import type { Named } from '#core/quantity/formula.ts';
import type { KitSubject } from '#core/rig/kit/kit.ts';
import { kitReachByFront, type ChainReach } from '#core/rig/kit/reach.ts';
import { searchSoundKit, type KitSearch } from '#core/rig/kit/search-sound-kit.ts';
import { keyOf, rowsOn, type KitSlug, type WishSlug } from '#site/state/kits.ts';

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

/** What is asked, as a search takes it. */
export const subjectOf = (asked: Asked, as: string | undefined): KitSubject => ({
  ...asked,
  subjectDepth: depthOfFrame(asked.subjectDepth, as),
  leastFill: asked.leastFrameFill,
  nearestDistance: asked.nearestWorkingDistance,
  longestExposure: asked.longestExposureTime,
});

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
  const rows = rowsOn(kit, added, asked);
  // Where nothing costs anything all budgets are one.
  const limit = rows.every(({ price }) => price === 0) ? Infinity : budget;
  return kept(JSON.stringify([keyOf(kit), added, asked, as, limit]), () =>
    searchSoundKit(rows, subjectOf(asked, as), limit),
  );
}

/** Neither sensor nor circle have a part in where a chain is sharp, but for a kit with cameras of its own. */
export const reachKey = (kit: KitSlug, added: readonly WishSlug[], { sensorWidth }: Pick<Asked, 'sensorWidth'>) =>
  [keyOf(kit), ...added, ...(kit === 'own' ? [sensorWidth] : [])].join();

/** Settings of each lens that its line in the plot is drawn through. */
const settings = 14;

/** Where chains can show something sharp, some of them at a time, in the order of their numbers. */
export type Reaches = readonly (readonly ChainReach[])[];

interface Reaching {
  readonly rest: Iterator<readonly ChainReach[], void>;
  pieces: Reaches;
  isWhole: boolean;
}

/** How many make a piece, or one front more: it is worked out, and drawn, in one task of a few milliseconds. */
const inPiece = 150;

/**
 * Where every chain of the kit can show something sharp: the same whatever is asked. What is not known yet is worked out piece by piece beside what
 * the hand does, and *ongrown* called after each; what is known is kept.
 *
 * @returns how far it is by now, and what ends the work
 */
export function reaches(
  kit: KitSlug,
  added: readonly WishSlug[],
  asked: Asked,
  ongrown: (pieces: Reaches) => void,
): { readonly now: Reaches; readonly stop: () => void } {
  const found = kept<Reaching>(`reach ${reachKey(kit, added, asked)}`, () => ({
    rest: kitReachByFront(rowsOn(kit, added, asked), settings),
    pieces: [],
    isWhole: false,
  }));
  let timer: ReturnType<typeof setTimeout> | undefined;
  const work = () => {
    grow(found);
    ongrown(found.pieces);
    if (!found.isWhole) timer = setTimeout(work);
  };
  if (!found.isWhole) timer = setTimeout(work);
  return { now: found.pieces, stop: () => clearTimeout(timer) };
}

/** All of it at once, for a page that is being built and not looked at. */
export function allReaches(kit: KitSlug, added: readonly WishSlug[], asked: Asked): Reaches {
  return [[...kitReachByFront(rowsOn(kit, added, asked), settings)].flat()];
}

/** Adds a piece. */
function grow(found: Reaching): void {
  const piece: ChainReach[] = [];
  do {
    const next = found.rest.next();
    found.isWhole = next.done === true;
    if (!next.done) piece.push(...next.value);
  } while (!found.isWhole && piece.length < inPiece);
  if (piece.length > 0) found.pieces = [...found.pieces, piece];
}
