import { handfuls, ofPart, type Kind } from './kinds.ts';
import type { KitCloseUpLens, KitCouplingRing, KitLens, KitReversingRing } from './kit.ts';

/** What stands before the rings: a lens, and how it is mounted and lengthened in front. */
export interface Front {
  readonly lens: KitLens;
  /** The lens hangs on it, turned round; null for a lens the right way round. */
  readonly reversingRing: KitReversingRing | null;
  readonly closeUpLenses: readonly KitCloseUpLens[];
  /** A second lens, turned round, on the first; null without. */
  readonly coupled: { readonly ring: KitCouplingRing; readonly lens: KitLens } | null;
  readonly price: number;
}

/** Whether two lenses can be had at once: not one of which there is only one with itself, nor a zoom at two of its settings. */
export function canBeCoupled(main: Kind<KitLens>, second: Kind<KitLens>): boolean {
  if (main.row.zoom !== undefined && main.row.zoom === second.row.zoom) return false;
  return second !== main || second.ids.length > 1;
}

/**
 * Every front that a camera of *mount* can carry, each once.
 *
 * A lens the right way round needs the camera’s mount, any other hangs on its filter thread. A lens that is turned round, or has
 * another before it, offers no thread to a close-up lens.
 */
export function frontsOf(kinds: readonly Kind[], mount: string): readonly Front[] {
  const lenses = ofPart(kinds, 'lens');
  const fitting = lenses.filter(({ row }) => row.mount === mount);
  const closeUps = handfuls(ofPart(kinds, 'close-up lens'), 1).map(([hand]) => hand ?? []);
  const reversing = ofPart(kinds, 'reversing ring').filter(({ row }) => row.mount === mount);
  const bare = { reversingRing: null, closeUpLenses: [], coupled: null };
  return [
    ...fitting.flatMap(({ row: lens }) =>
      closeUps.map((closeUpLenses) => ({
        ...bare,
        lens,
        closeUpLenses,
        price: closeUpLenses.reduce((sum, { price }) => sum + price, lens.price),
      })),
    ),
    ...reversing.flatMap(({ row: reversingRing }) =>
      lenses.map(({ row: lens }) => ({ ...bare, lens, reversingRing, price: lens.price + reversingRing.price })),
    ),
    ...ofPart(kinds, 'coupling ring').flatMap(({ row: ring }) =>
      fitting.flatMap((main) =>
        lenses
          .filter((second) => canBeCoupled(main, second))
          .map(({ row: second }) => ({
            ...bare,
            lens: main.row,
            coupled: { ring, lens: second },
            price: main.row.price + ring.price + second.price,
          })),
      ),
    ),
  ];
}
