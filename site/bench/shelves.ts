import { crateThings } from '#site/chain/crate-things.ts';
import { ownThing, type Thing } from '#site/chain/thing.ts';
import type { Kit } from '#site/kit/part.ts';

/** Where things lie to be picked: the reader's kit first, the crate after it. */
export interface Shelf {
  readonly label: string;
  readonly things: readonly Thing[];
}

export const crateShelf: Shelf = { label: 'The club’s crate', things: [...crateThings.values()] };

/** The reader's kit as a shelf; none where nothing of it stands in a chain. */
export function kitShelf(kit: Kit): readonly Shelf[] {
  const things = kit.parts.flatMap((part) => ownThing(part, kit) ?? []);
  return things.length === 0 ? [] : [{ label: 'Your kit', things }];
}
