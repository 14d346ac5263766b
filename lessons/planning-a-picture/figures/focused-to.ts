import type { Lens } from '#core/rig/lens.ts';
import type { Rig } from '#core/rig/rig.ts';
import { solveRig } from '#core/rig/solve.ts';
import { mainLensAt, usualLens, type Chain } from '#site/chain/chain.ts';
import { focusingsOf } from '#site/chain/focusing.ts';
import type { Thing } from '#site/chain/thing.ts';

/** So many settings are tried from end to end; between two on both sides of what is wanted the rest is halving. */
const tries = 24;
const halvings = 48;

/** What is turned or drawn out: the focus of the lens nearest to the camera, if it is the right way round, and bellows, with that lens at its closest. */
const settingsOf = (chain: Chain, lensOf: (thing: Thing) => Lens) =>
  focusingsOf(chain, lensOf).filter(({ at }) => chain[at]!.thing.kind === 'bellows' || at === mainLensAt(chain));

/**
 * The chain set so that it gives *wanted*, or as near to that as it comes.
 *
 * Where several settings give it, the one farthest off is taken.
 *
 * @param wanted *m*, above 0
 * @param rigOf the chain as the engine has it; may throw for what cannot be built
 */
export function focusedTo(
  chain: Chain,
  wanted: number,
  rigOf: (chain: Chain) => Rig,
  lensOf: (thing: Thing) => Lens = usualLens,
): Chain {
  const sizeOf = (set: Chain) => {
    const solved = solveRig(rigOf(set));
    if (solved.sharpPlane === 'at infinity') return 0;
    const isSharp = solved.sharpPlane === 'in front' || solved.sharpPlane === 'inside';
    return isSharp && !solved.upright ? solved.magnification : undefined;
  };
  let now = chain;
  for (const { least, most, set } of settingsOf(chain, lensOf)) {
    const ask = (value: number) => sizeOf(set(now, value));
    let best = { value: most, off: Infinity };
    let before: { readonly value: number; readonly size: number } | undefined;
    for (let step = 0; step <= tries; step++) {
      const value = least + ((most - least) * step) / tries;
      const size = ask(value);
      if (size === undefined) {
        before = undefined;
        continue;
      }
      if (before && size >= wanted !== before.size >= wanted) {
        return set(now, between(ask, before.value, value, wanted));
      }
      const off = size > 0 ? Math.abs(Math.log(size / wanted)) : Number.MAX_VALUE;
      if (off < best.off) best = { value, off };
      before = { value, size };
    }
    now = set(now, best.value);
  }
  return now;
}

function between(ask: (value: number) => number | undefined, one: number, other: number, wanted: number): number {
  let [low, high] = [one, other];
  const isAbove = ask(low)! >= wanted;
  for (let step = 0; step < halvings; step++) {
    const middle = (low + high) / 2;
    const size = ask(middle);
    if (size !== undefined && size >= wanted === isAbove) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
