import { crateThings } from '#site/chain/crate-things.ts';
import type { Shelf } from './shelves.ts';

/** Everything of the crate that stands in a chain. */
export const shelfOfCrate: Shelf = { label: 'The club’s crate', things: [...crateThings.values()] };
