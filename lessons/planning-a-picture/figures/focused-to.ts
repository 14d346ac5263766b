import { closestMagnification } from '#core/rig/lens-in-use.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Rig } from '#core/rig/rig.ts';
import { solveRig } from '#core/rig/solve.ts';
import { usualLens, type Chain, type Link } from '#site/chain/chain.ts';
import type { Thing } from '#site/chain/thing.ts';
import { numberIn } from '#site/kit/part.ts';

/** So many settings are tried from end to end; between two on both sides of what is wanted the rest is halving. */
const tries = 24;
const halvings = 48;

interface Setting {
  readonly least: number;
  readonly most: number;
  readonly set: (chain: Chain, to: number) => Chain;
}

/** What is turned or drawn out: the focus of the lens nearest to the camera, if it is the right way round, and bellows, with that lens at its closest. */
function settingsOf(chain: Chain, lensOf: (thing: Thing) => Lens): readonly Setting[] {
  const at = chain.findIndex(({ thing }) => thing.kind === 'lens');
  const put =
    (place: number, of: (to: number) => Partial<Link>): Setting['set'] =>
    (to, value) =>
      to.with(place, { ...to[place]!, ...of(value) });
  const most = at < 0 || chain[at]!.turned ? 0 : closestMagnification(lensOf(chain[at]!.thing));
  return [
    ...(most > 0 ? [{ least: 0, most, set: put(at, (focus) => ({ focus })) }] : []),
    ...chain.flatMap(({ thing: { kind, part } }, place) =>
      kind === 'bellows'
        ? [
            {
              least: numberIn(part, 'shortest')!,
              most: numberIn(part, 'longest')!,
              set: put(place, (extension) => ({ extension })),
            },
          ]
        : [],
    ),
  ];
}

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
