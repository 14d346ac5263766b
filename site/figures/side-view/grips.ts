import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { around, meet, type Box } from '../sheet/boxes.ts';
import type { ChainDrawing } from './drawing.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { SideViewShown } from './shown.ts';
import type { SideViewChain, SideViewHandle } from './side-view.ts';

/** A handle's mark. */
export interface PlacedGrip {
  readonly x: number;
  readonly y: number;
}

/** Half of what a mark takes of the sheet, pixels. */
export const gripReach = 14;
/** Marks of the handles: on the axis for a subject, on the rim of a part, each clear of those before it; none for a circle that is not drawn. */
export function placeGrips(
  handles: readonly SideViewHandle[],
  chains: readonly SideViewChain[],
  drawings: readonly ChainDrawing[],
  places: readonly SheetPlace[],
  box: SheetBox,
  { about }: SideViewShown,
): (PlacedGrip | undefined)[] {
  const taken: Box[] = [];
  const inside = (value: number, most: number) => Math.min(most - gripReach, Math.max(gripReach, value));
  // A subject's stands where the subject does; those of parts make way.
  const order = handles.map((_, index) => index).sort((one, other) => rank(handles[one]!) - rank(handles[other]!));
  const grips: (PlacedGrip | undefined)[] = handles.map(() => undefined);
  for (const index of order) {
    const { at, chain = 0 } = handles[index]!;
    const place = places[chain]!;
    const spots: PlacedGrip[] = [];
    if (at === 'subject') spots.push({ x: inside(place.subjectX, box.width), y: place.axisY });
    else if (at === 'around') {
      const around = about?.spotsAround(chains[chain]!, place, gripReach) ?? [];
      if (around.length === 0) continue;
      spots.push(...around.map(({ x, y }) => ({ x: inside(x, box.width), y })));
    } else {
      const { left, right, half } = drawings[chain]!.outlines[at]!;
      const room = place.bottom - place.axisY;
      const up = Math.max(0, Math.min(Math.max(half, 2 * gripReach), room - gripReach));
      const x = Math.min(left + 16, (left + right) / 2);
      for (let step = 0; step <= 6; step++) {
        const shift = step * gripReach;
        for (const side of [-1, 1]) {
          for (const to of [x + shift, x - shift]) {
            spots.push({ x: inside(to, box.width), y: place.axisY + side * up });
          }
        }
      }
    }
    const free = spots.find((spot) => !taken.some((other) => meet(around(spot.x, spot.y, gripReach), other)));
    const spot = free ?? spots[0]!;
    taken.push(around(spot.x, spot.y, gripReach));
    grips[index] = spot;
  }
  return grips;
}

const rank = ({ at }: SideViewHandle) => (at === 'subject' ? 0 : at === 'around' ? 1 : 2);
