import { ownThing } from '#site/chain/own-thing.ts';
import { keptKit } from '#site/kit/kept-kit.ts';
import type { Kit } from '#site/kit/part.ts';
import { shelfOfCrate, type Shelf as ShelfOfThings } from './crate-shelf.ts';

/** Where things lie to be picked: the reader's kit first, the crate after it. */
export type Shelf = ShelfOfThings;

/** For pages that always have the kit with them; else `crate-shelf.ts` by itself is lighter. */
export const crateShelf = shelfOfCrate;

/** The reader's kit as a shelf; none where nothing of it stands in a chain. */
export function kitShelf(kit: Kit): readonly Shelf[] {
  const things = kit.parts.flatMap((part) => ownThing(part, kit) ?? []);
  return things.length === 0 ? [] : [{ label: 'Your kit', things }];
}

/** Tells the shelf of the kit as it is kept, now and whenever another tab changes it; returns the way to stop. */
export function followKit(tell: (shelves: readonly Shelf[]) => void): () => void {
  tell(kitShelf(keptKit.read().value));
  return keptKit.onChanged(({ value }) => tell(kitShelf(value)));
}
