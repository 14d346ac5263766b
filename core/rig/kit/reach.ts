import { blocksOf } from './blocks.ts';
import type { KitRow } from './kit.ts';
import { mountWalk, walkAt, walkOf } from './walk.ts';

/** How large and from how far a chain can show something sharp, from one end of its focusing to the other. */
export interface ChainReach {
  /** *m* and *w*, mm, setting by setting, the lens's infinity first; where nothing is sharp, or only upright, there is none. */
  readonly places: readonly (readonly [magnification: number, workingDistance: number])[];
  /** How many chains of the kit have it: rings that make up one length, with contacts or without. */
  readonly chains: number;
}

/** More would take minutes. */
const mostSettings = 10_000;

/**
 * The reach of every chain of a kit, each different one once.
 *
 * @param kit as `searchKit` accepts it: it is not looked through for faults
 * @param settings how many settings of each lens are tried, 2 to 10000: closer together towards infinity, where m changes fastest for its size
 * @returns in the order of the chains' numbers; a lens turned round has one place only, for its rim is mounted and not its flange
 * @throws RangeError for less than two settings or more than 10000
 *
 * Source: the walk of the search, at other settings. See [README](README.md#judging).
 */
export function kitReach(kit: readonly KitRow[], settings: number): readonly ChainReach[] {
  return [...kitReachByFront(kit, settings)].flat();
}

/**
 * The same piece by piece, for a page that stays free for the hand meanwhile: one piece for each camera with each front.
 *
 * @param kit as `kitReach` takes it; @param settings as there
 * @returns the pieces in order: laid end to end they are what `kitReach` returns
 * @throws RangeError for less than two settings or more than 10000, before the first piece
 */
export function* kitReachByFront(kit: readonly KitRow[], settings: number): Generator<readonly ChainReach[], void> {
  if (!(Number.isInteger(settings) && settings >= 2 && settings <= mostSettings)) {
    throw new RangeError(`${settings} settings; accepted: whole numbers from 2 to ${mostSettings}`);
  }
  for (const { camera, front, backs } of blocksOf(kit)) {
    const walk = walkOf(front);
    const fixed = walk.reversed || walk.main.closest === 0;
    const counts = new Uint32Array(backs.lengths.length);
    for (const { lengths } of backs.all) counts[lengths]!++;
    yield backs.lengths.map((back, index) => {
      mountWalk(walk, camera, back, front.reversingRing?.extension ?? 0);
      const places: [number, number][] = [];
      for (let step = 0; step < (fixed ? 1 : settings); step++) {
        walkAt(walk, walk.main.closest * (step / (settings - 1)) ** 2);
        if (walk.magnification > 0 && walk.real) places.push([walk.magnification, walk.workingDistance]);
      }
      return { places, chains: counts[index]! };
    });
  }
}
