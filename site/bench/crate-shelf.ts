import { crateThings } from '#site/chain/crate-things.ts';
import type { Thing } from '#site/chain/thing.ts';

/** Where things lie to be picked. */
export interface Shelf {
  readonly label: string;
  readonly things: readonly Thing[];
}

/** Everything of the crate that stands in a chain. */
export const shelfOfCrate: Shelf = { label: 'The club’s crate', things: [...crateThings.values()] };
