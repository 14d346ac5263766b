import { closestMagnification } from '#core/rig/lens-in-use.ts';
import type { Lens } from '#core/rig/lens.ts';
import { drawReach, usualLens, type Chain, type Link } from './chain.ts';
import type { Thing } from './thing.ts';

/** Something of a chain that is turned or drawn out to focus it. */
export interface Focusing {
  readonly at: number;
  /** Of a lens its focus, *m*; of bellows their length, mm. */
  readonly least: number;
  readonly most: number;
  /** The chain, or one of the same parts, with this set. */
  readonly set: (chain: Chain, to: number) => Chain;
}

/** What can be turned or drawn out: the focus of each lens the right way round, from the camera outwards, then the bellows. */
export function focusingsOf(chain: Chain, lensOf: (thing: Thing) => Lens = usualLens): readonly Focusing[] {
  const setting =
    (at: number, of: (to: number) => Partial<Link>): Focusing['set'] =>
    (to, value) =>
      to.with(at, { ...to[at]!, ...of(value) });
  const focused = chain.flatMap(({ thing, turned }, at): Focusing[] => {
    if (thing.kind !== 'lens' || turned) return [];
    const most = closestMagnification(lensOf(thing));
    return most > 0 ? [{ at, least: 0, most, set: setting(at, (focus) => ({ focus })) }] : [];
  });
  const drawn = chain.flatMap(({ thing }, at): Focusing[] =>
    thing.kind === 'bellows' ? [{ at, ...drawReach(thing), set: setting(at, (extension) => ({ extension })) }] : [],
  );
  return [...focused, ...drawn];
}
