import { around, meet } from '../sheet/boxes.ts';
import type { SideViewLayout } from './layout.ts';

/** Half of what the mark takes of the sheet, pixels. */
const reach = 14;

/** Where the free end of a lens is taken hold of. */
export interface TurnPlace {
  readonly x: number;
  readonly y: number;
  /** The middle of the lens, about which it turns, and its outline. */
  readonly middle: number;
  readonly path: string;
  /** From the mark to the middle: so far the hand pulls it. */
  readonly reach: number;
}

/**
 * On the lens at its free end, at the rim and below the axis if it can be, else nearer to the axis; clear of all words and other marks of
 * the drawing, else nowhere.
 *
 * @param at of the lens in its chain
 * @param width of the sheet, pixels
 */
export function placeTurn(
  { chains, boxes }: Pick<SideViewLayout, 'chains' | 'boxes'>,
  chain: number,
  at: number,
  width: number,
): TurnPlace | undefined {
  const { place, outlines } = chains[chain]!;
  const { left, right, half, path } = outlines[at]!;
  const middle = (left + right) / 2;
  const inside = (x: number) => Math.min(width - reach, Math.max(reach, x));
  const ys = [half, half / 2, 2 * reach, 0].flatMap((up) => [place.axisY + up, place.axisY - up]);
  const xs = [left, left - reach, Math.min(left + reach, middle - 4), left - 2 * reach].map(inside);
  const spots = ys.flatMap((y) => xs.map((x) => ({ x, y })));
  const free = spots.find(
    ({ x, y }) =>
      x < middle - 3 &&
      y - reach > 0 &&
      y <= place.bottom + reach &&
      !boxes.some(({ box }) => meet(around(x, y, reach), box)),
  );
  return free && { ...free, middle, path, reach: middle - free.x };
}

/** The same for several lenses of a drawing, each clear of those before it: the place of each, undefined where one finds none. */
export function placeTurns(
  layout: Pick<SideViewLayout, 'chains' | 'boxes'>,
  lenses: readonly { readonly chain: number; readonly at: number }[],
  width: number,
): readonly (TurnPlace | undefined)[] {
  let { boxes } = layout;
  return lenses.map(({ chain, at }) => {
    const place = placeTurn({ ...layout, boxes }, chain, at, width);
    if (place) boxes = [...boxes, { what: 'a mark', box: around(place.x, place.y, reach) }];
    return place;
  });
}
