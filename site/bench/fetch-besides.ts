import type BesideActions from './BesideActions.svelte';
import type { besideOf as BesideOf } from './beside.ts';

/** What a second chain takes: what sets it like the first, and what is done with the two. */
export interface Besides {
  readonly besideOf: typeof BesideOf;
  readonly Actions: typeof BesideActions;
}

/** Fetches it. Rejects where the network does not give it. */
export async function fetchBesides(): Promise<Besides> {
  const [{ besideOf }, { default: Actions }] = await Promise.all([
    import('./beside.ts'),
    import('./BesideActions.svelte'),
  ]);
  return { besideOf, Actions };
}
