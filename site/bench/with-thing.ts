import { mostLinks, type Chain, type Link } from '#site/chain/chain.ts';
import type { ChainKind, Thing } from '#site/chain/thing.ts';

/** What rings and tubes stand behind. */
const glass: readonly ChainKind[] = ['lens', 'tube-lens', 'objective', 'finite-objective'];

/** Where a thing of this kind is put when nobody says where: close-up lenses, coupling rings and objectives outermost, all else before the first lens. */
function usualPlace(chain: Chain, { kind }: Thing): number {
  if (['close-up-lens', 'coupling-ring', 'objective', 'finite-objective'].includes(kind)) return chain.length;
  const lens = chain.findIndex(({ thing }) => glass.includes(thing.kind));
  if (kind === 'lens' || lens < 0) return chain.length;
  // What a lens turned round hangs on stays next to it.
  return chain[lens - 1]?.thing.kind === 'reversing-ring' ? lens - 1 : lens;
}

/** A lens that comes after a ring with a thread, or on another lens, is turned round. */
function asMounted(chain: Chain, thing: Thing, at: number): Link {
  const before = chain[at - 1]?.thing.kind;
  const isTurned = thing.kind === 'lens' && (before === 'reversing-ring' || before === 'coupling-ring');
  return isTurned ? { thing, turned: true } : { thing };
}

/** The chain with *thing* in it, where that usually stands or at *place*, and where it stands; a camera takes the place of the camera. */
export function withThing(chain: Chain, thing: Thing, place?: number): { readonly chain: Chain; readonly at: number } {
  if (thing.kind === 'camera') return { chain: chain.with(0, { thing }), at: 0 };
  if (chain.length >= mostLinks) return { chain, at: chain.length - 1 };
  const at = Math.min(chain.length, Math.max(1, place ?? usualPlace(chain, thing)));
  return { chain: chain.toSpliced(at, 0, asMounted(chain, thing, at)), at };
}
