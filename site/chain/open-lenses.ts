import type { PossibleLenses } from '#core/rig/assumed/known-lens.ts';
import { turnedRound } from '#core/rig/assumed/turned-round.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Chain } from './chain.ts';
import type { Thing } from './thing.ts';

/** A lens of a chain of which something is assumed, or measured with an error; and between which lenses it lies as it stands there. */
export interface OpenLens {
  readonly thing: Thing;
  readonly lenses: PossibleLenses;
}

/** Which lens each of them is taken to be. */
export type Way = ReadonlyMap<Thing, Lens>;

/** The lenses of a chain that are open, each once. */
export function openLenses(chain: Chain): readonly OpenLens[] {
  const lenses = new Map<Thing, PossibleLenses>();
  for (const { thing, turned } of chain) {
    const known = lenses.get(thing) ?? thing.lenses;
    if (known) lenses.set(thing, turned ? turnedRound(known) : known);
  }
  return [...lenses].flatMap(([thing, possible]) =>
    possible.extremes.length > 1 ? [{ thing, lenses: possible }] : [],
  );
}

/** Each lens as each that it may be, together with the others where those are not more than *most*; else with the others as usual. */
export function waysOf(open: readonly OpenLens[], most: number): readonly Way[] {
  const count = open.reduce((product, { lenses }) => product * lenses.extremes.length, 1);
  if (count > most) {
    return open.flatMap(({ thing, lenses }) => lenses.extremes.map((lens) => new Map([[thing, lens]])));
  }
  return open.reduce<readonly Way[]>(
    (ways, { thing, lenses }) => ways.flatMap((way) => lenses.extremes.map((lens) => new Map([...way, [thing, lens]]))),
    [new Map()],
  );
}
