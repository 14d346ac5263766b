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

/** A setting that was tried, and what the chain gave with it. */
export interface Tried {
  readonly setting: number;
  readonly found: number;
}

/** Settings evenly from end to end, each with what it gives; undefined for one that gives nothing. */
export function* triedSettings(
  ask: (setting: number) => number | undefined,
  { least, most }: Pick<Focusing, 'least' | 'most'>,
  steps: number,
): Generator<Tried | undefined, void> {
  for (let step = 0; step <= steps; step++) {
    const setting = least + ((most - least) * step) / steps;
    const found = ask(setting);
    yield found === undefined ? undefined : { setting, found };
  }
}

/** So often that no digit is left of the stretch between two settings that were tried. */
const halvings = 52;

/** Between two settings that give more and less than *wanted* the one where it goes past, by halving; undefined where some setting between gives nothing. */
export function settingBetween(
  ask: (setting: number) => number | undefined,
  one: Tried,
  other: Tried,
  wanted: number,
): number | undefined {
  let [low, high] = [one.setting, other.setting];
  for (let step = 0; step < halvings; step++) {
    const middle = (low + high) / 2;
    const found = ask(middle);
    if (found === undefined) return undefined;
    if (found >= wanted === one.found >= wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
