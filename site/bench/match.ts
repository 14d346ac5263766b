import { drawOf, type Chain, type Link } from '#site/chain/chain.ts';
import { focusingsOf, settingBetween, triedSettings, type Tried } from '#site/chain/focusing.ts';
import { measuresOf, placedChain } from './placed.ts';

/** What two chains may have alike. */
export const alike = ['magnification', 'working-distance'] as const;

export type Alike = (typeof alike)[number];

/** A chain set to a wanted value, or from where to where it goes where it does not reach it: down to a magnification of 0, out to Infinity. */
export type Matched =
  | { readonly kind: 'matched'; readonly chain: Chain }
  | { readonly kind: 'out of reach'; readonly least: number; readonly most: number }
  /** Nothing in it can be set. */
  | { readonly kind: 'fixed' };

/** So many steps are tried between the ends. */
const tries = 48;

/** *name* of the chain; undefined where it has none, or where no picture is to be had. */
export function measured(chain: Chain, name: Alike | 'focus-distance'): number | undefined {
  const placed = placedChain(chain);
  if (placed.kind !== 'built' || placed.positions.solved.sharpPlane !== 'in front') return undefined;
  return measuresOf(placed)[name];
}

/** The same with the far end: a chain set to infinity has no magnification, and no end of room. */
function reached(chain: Chain, name: Alike | 'focus-distance'): number | undefined {
  const placed = placedChain(chain);
  if (placed.kind !== 'built') return undefined;
  const { sharpPlane } = placed.positions.solved;
  if (sharpPlane === 'at infinity') return name === 'magnification' ? 0 : Infinity;
  return sharpPlane === 'in front' ? measuresOf(placed)[name] : undefined;
}

/**
 * The chain set so that it gives *value* of *name*: by the focus of its lens where that reaches it, else by its bellows, else by both: bellows are drawn out
 * with the lens at its closest.
 *
 * Of several settings that give it the nearest to how it is set now is taken.
 */
export function matchedTo(chain: Chain, name: Alike | 'focus-distance', value: number): Matched {
  if (chain.some(({ thing }) => thing.fault !== undefined)) return { kind: 'fixed' };
  const now = measured(chain, name);
  if (now !== undefined && isSame(now, value)) return { kind: 'matched', chain };
  const all = focusingsOf(chain);
  if (all.length === 0) return { kind: 'fixed' };
  let [low, high] = [Infinity, -Infinity];
  for (const { at, least, most, set } of all) {
    const ask = (setting: number) => reached(set(chain, setting), name);
    const from = current(chain[at]!, least, most);
    const roots: number[] = [];
    let before: Tried | undefined;
    for (const tried of triedSettings(ask, { least, most }, tries)) {
      if (tried) {
        low = Math.min(low, tried.found);
        high = Math.max(high, tried.found);
        if (isSame(tried.found, value)) roots.push(tried.setting);
        else if (before && tried.found >= value !== before.found >= value) {
          const root = settingBetween(ask, before, tried, value);
          // A jump from one side to the other is no way through the middle.
          if (root !== undefined && Math.abs((ask(root) ?? NaN) - value) <= 1e-6 * Math.abs(value)) roots.push(root);
        }
      }
      before = tried;
    }
    if (roots.length > 0) {
      const root = roots.reduce((best, one) => (Math.abs(one - from) < Math.abs(best - from) ? one : best));
      return { kind: 'matched', chain: set(chain, root) };
    }
  }
  return low <= high ? { kind: 'out of reach', least: low, most: high } : { kind: 'fixed' };
}

const isSame = (one: number, other: number) => Math.abs(one - other) <= 1e-9 * Math.abs(other);

function current(link: Link, least: number, most: number): number {
  if (link.thing.kind === 'bellows') return drawOf(link);
  return Math.min(most, Math.max(least, link.focus ?? most));
}
