import type { Lens } from '#core/rig/lens.ts';
import type { Rig } from '#core/rig/rig.ts';
import { solveRig } from '#core/rig/solve.ts';
import { mainLensAt, usualLens, type Chain } from '#site/chain/chain.ts';
import { focusingsOf, settingBetween, triedSettings, type Tried } from '#site/chain/focusing.ts';
import type { Thing } from '#site/chain/thing.ts';

/** So many steps are tried from end to end. */
const tries = 24;

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
    let before: Tried | undefined;
    for (const tried of triedSettings(ask, { least, most }, tries)) {
      if (tried) {
        const { setting, found } = tried;
        const root =
          before && found >= wanted !== before.found >= wanted ? settingBetween(ask, before, tried, wanted) : undefined;
        if (root !== undefined) return set(now, root);
        const off = found > 0 ? Math.abs(Math.log(found / wanted)) : Number.MAX_VALUE;
        if (off < best.off) best = { value: setting, off };
      }
      before = tried;
    }
    now = set(now, best.value);
  }
  return now;
}
