import type { ChainReach } from '#core/rig/kit/reach.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { plotFrame } from '#site/figures/plot/frame.ts';
import { around } from '#site/figures/sheet/boxes.ts';
import { labelBox, placeLabels, type Wanted } from '#site/figures/sheet/labels.ts';
import type { Asked } from './searches.ts';
import { linePath } from './line-path.ts';

/** What the plot holds: magnification, and working distance in mm. */
const sizes = [0.05, 12] as const;
const rooms = [10, 1000] as const;

/** A chain as it was set: where it is in the list, how large and from how far. */
export interface ReachPoint {
  readonly rank: number;
  readonly suits: boolean;
  readonly magnification: number;
  readonly room: number;
}

/** The plot, and where a chain is drawn beside it; none where the sheet is too narrow for both. */
export function reachBoxes(box: SheetBox): { readonly plot: SheetBox; readonly beside: SheetBox | undefined } {
  if (box.width < 1.45 * box.height || box.width < 26 * box.text) return { plot: box, beside: undefined };
  const width = Math.round(0.56 * box.width);
  return { plot: { ...box, width }, beside: { ...box, width: box.width - width } };
}

const isInside = (value: number, [least, most]: readonly [number, number]) => value >= least && value <= most;
const clamp = (value: number, [least, most]: readonly [number, number]) => Math.min(most, Math.max(least, value));

/** Axes of the plot. */
export function reachFrame(box: SheetBox) {
  return plotFrame(
    {
      x: { scale: 'log', domain: sizes, title: 'magnification m', format: String },
      y: { scale: 'log', domain: rooms, title: 'working distance w, mm', format: String },
      foot: 1.9 * box.small,
    },
    box,
  );
}

type Frame = ReturnType<typeof reachFrame>;

/** A chain from one end of its focusing to the other, as far as the plot goes; a lens that cannot be focused is a dot. */
function pathOf({ places }: Pick<ChainReach, 'places'>, { x, y }: Frame): string {
  const isOn = ([m, w]: (typeof places)[number]) => isInside(m, sizes) && isInside(w, rooms);
  const from = places.findIndex(isOn);
  if (from < 0) return '';
  const off = places.findIndex((place, index) => index > from && !isOn(place));
  const path = linePath(places.slice(from, off < 0 ? undefined : off).map(([m, w]) => [x.at(m), y.at(w)]));
  return path.includes('L') ? path : `${path}h.1`;
}

/** All lines of a kit as one path, what lies on another once. */
export function pathsOf(reaches: readonly ChainReach[], frame: Frame): string {
  return [...new Set(reaches.map((reach) => pathOf(reach, frame)))].join('');
}

/** What is asked, as a box that a line has to run through: open at the top, for there can be no more room than is wanted. */
export function askedBox(asked: Asked, { x, y, top }: Frame) {
  const filling = asked.sensorWidth / asked.subjectWidth;
  const right = x.at(clamp(filling, sizes));
  const left = Math.min(right - 1, x.at(clamp(filling * asked.leastFrameFill, sizes)));
  const bottom = y.at(clamp(asked.nearestWorkingDistance, rooms));
  return { left, right, top, bottom };
}

/** Dots, and words where they find room. */
export function reachMarks(
  points: readonly ReachPoint[],
  chosen: ReachPoint & { readonly names: readonly string[] },
  asked: ReturnType<typeof askedBox>,
  frame: Frame,
  box: SheetBox,
) {
  const { x, y } = frame;
  const isOnSheet = ({ magnification, room }: ReachPoint) => isInside(magnification, sizes) && isInside(room, rooms);
  const placed = (point: ReachPoint) => ({ ...point, x: x.at(point.magnification), y: y.at(point.room) });
  const spots = new Set<string>();
  // Of dots on one spot the best is there.
  const dots = points
    .filter(isOnSheet)
    .map(placed)
    .filter((dot) => {
      const spot = `${Math.round(dot.x / 4)} ${Math.round(dot.y / 4)}`;
      return !spots.has(spot) && spots.add(spot);
    });
  const own = isOnSheet(chosen) ? placed(chosen) : undefined;
  const wanted: Wanted[] = [
    ...(own
      ? [
          {
            key: 'chosen',
            texts: chosen.names,
            size: box.text,
            spots: [
              { x: own.x + 14, y: own.y - 0.5 * box.text, anchor: 'start' as const },
              { x: own.x - 14, y: own.y - 0.5 * box.text, anchor: 'end' as const },
              { x: own.x + 14, y: own.y + box.text, anchor: 'start' as const },
              { x: own.x - 14, y: own.y + box.text, anchor: 'end' as const },
              { x: frame.right, y: frame.top + box.text, anchor: 'end' as const },
            ],
            quantity: 'magnification',
          },
        ]
      : [
          {
            key: 'chosen',
            texts: [`outside this plot: ${chosen.names[0]}`, 'outside this plot'],
            size: box.small,
            spots: [{ x: frame.right, y: frame.bottom - 0.5 * box.small, anchor: 'end' as const }],
          },
        ]),
    {
      key: 'asked',
      texts: ['asked for', 'asked'],
      size: box.small,
      spots: [
        { x: asked.left - 6, y: asked.top + box.small, anchor: 'end' },
        { x: asked.right + 6, y: asked.top + box.small, anchor: 'start' },
      ],
      quantity: 'subject-width',
    },
  ];
  const taken = [
    ...(own ? [around(own.x, own.y, 10)] : []),
    // What can be taken hold of.
    around(frame.right - 14, asked.bottom, 13),
    { left: asked.left - 13, right: asked.right + 13, top: asked.top, bottom: asked.bottom },
    ...frame.labels.map(({ text, size, x: at, y: line, anchor }) => labelBox(text, size, { x: at, y: line, anchor })),
  ];
  const sheet = { left: frame.left + 2, right: box.width - 2, top: frame.top - 2, bottom: frame.bottom };
  return {
    dots,
    own,
    labels: placeLabels(
      wanted,
      taken,
      sheet,
      dots.map((dot) => around(dot.x, dot.y, 4)),
    ),
  };
}
