import { printQuantity } from '#core/quantity/print.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { plotFrame } from '#site/figures/plot/frame.ts';
import { around } from '#site/figures/sheet/boxes.ts';
import { labelBox, placeLabels, type Spot, type Wanted } from '#site/figures/sheet/labels.ts';

/** A road as a point: how large, how much room, and what it works at. */
export interface CostPoint {
  readonly key: string;
  readonly name: string;
  readonly short: string;
  readonly magnification: number;
  readonly workingDistance: number;
  readonly effectiveFNumber: number;
}

/** What the plot holds: magnification, and working distance in mm. */
const sizes = [1, 20] as const;
const rooms = [8, 200] as const;

const reach = 7;
const ownReach = 12;

/** What a road works at, after its name. */
const coneOf = ({ effectiveFNumber }: Pick<CostPoint, 'effectiveFNumber'>) =>
  `, ${printQuantity('effective-f-number', effectiveFNumber)}`;

const isInside = (value: number, [least, most]: readonly [number, number]) => value >= least && value <= most;
export const isOnSheet = ({ magnification, workingDistance }: CostPoint) =>
  isInside(magnification, sizes) && isInside(workingDistance, rooms);

/** Points of the crate's roads and of the reader's own, with words where they find room. */
export function costPlotLayout(
  roads: readonly CostPoint[],
  own: (CostPoint & { readonly room: string }) | undefined,
  box: SheetBox,
) {
  const frame = plotFrame(
    {
      x: { scale: 'log', domain: sizes, title: 'magnification m', format: String },
      y: { scale: 'log', domain: rooms, title: 'working distance w, mm', format: String },
      foot: 1.9 * box.small,
    },
    box,
  );
  const placed = <Point extends CostPoint>(point: Point) => ({
    ...point,
    x: frame.x.at(point.magnification),
    y: frame.y.at(point.workingDistance),
  });
  const points = roads.filter(isOnSheet).map(placed);
  const yours = own && isOnSheet(own) ? placed(own) : undefined;
  // The reader's own first; where it is one of the crate's that one's words serve.
  const crates = points.find(({ x, y }) => yours && Math.hypot(x - yours.x, y - yours.y) < 1);
  const yourKey = crates?.key ?? 'yours';
  const labelOf = ({ key, short, effectiveFNumber, x, y }: (typeof points)[number], size: number): Wanted => {
    const cone = coneOf({ effectiveFNumber });
    const beside = (key === yourKey ? ownReach : reach) + 4;
    const onLine = (line: number): Spot[] => [
      { x: x + beside, y: y + line * size, anchor: 'start' },
      { x: x - beside, y: y + line * size, anchor: 'end' },
    ];
    const spots: Spot[] = [
      ...onLine(0.35),
      { x, y: y - beside, anchor: 'middle' },
      { x, y: y + beside + 0.8 * size, anchor: 'middle' },
      ...onLine(-0.4),
      ...onLine(1.1),
    ];
    return {
      key,
      texts: [short + cone, short],
      size,
      spots,
    };
  };
  const taken = [
    ...points.map(({ x, y }) => around(x, y, reach)),
    ...(yours ? [around(yours.x, yours.y, ownReach)] : []),
    ...frame.labels.map(({ text, size, x, y, anchor }) => labelBox(text, size, { x, y, anchor })),
  ];
  const sheet = {
    left: frame.left + 3,
    right: box.width - 3,
    top: frame.top - 0.8 * box.text,
    bottom: frame.bottom - 3,
  };
  // Where points crowd there is the least room for words: those get theirs before the others.
  const roomOf = (one: (typeof points)[number]) =>
    Math.min(...points.filter((other) => other !== one).map((other) => Math.hypot(other.x - one.x, other.y - one.y)));
  const others = points.filter((point) => point !== crates).sort((one, other) => roomOf(one) - roomOf(other));
  const outside: Wanted[] =
    own && !yours
      ? [
          {
            key: 'outside',
            texts: [
              `yours, outside this plot: ${printQuantity('magnification', own.magnification)}, ${own.room}`,
              'yours: outside this plot',
            ],
            size: box.small,
            spots: [{ x: frame.right, y: frame.top + 0.2 * box.small, anchor: 'end' }],
            quantity: 'magnification',
          },
        ]
      : [];
  const wanted = [
    ...outside,
    ...(yours && !crates ? [labelOf({ ...yours, key: yourKey }, box.text)] : []),
    ...[...(crates ? [crates] : []), ...others].map((point) => labelOf(point, box.small)),
  ];
  /** What each works at is the end of its label: it can be withheld where the name is not. */
  const cones = new Map(
    [...points, ...(yours ? [{ ...yours, key: yourKey }] : [])].map((one) => [one.key, coneOf(one)]),
  );
  const labels = placeLabels(wanted, taken, sheet).map((label) => {
    const cone = cones.get(label.key);
    const from = label.text.length - (cone !== undefined && label.text.endsWith(cone) ? cone.length : 0);
    return { ...label, name: label.text.slice(0, from), cone: label.text.slice(from) };
  });
  return { frame, points, yours, labels };
}
