import { printQuantity } from '#core/quantity/print.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { textWidth } from '#site/figures/dimension/text-width.ts';
import { alongLine } from '#site/figures/plot/along-line.ts';
import { plotFrame } from '#site/figures/plot/frame.ts';
import { around, type Box } from '#site/figures/sheet/boxes.ts';
import { placeLabels, type Spot, type Wanted } from '#site/figures/sheet/labels.ts';

export interface RoomGiven {
  readonly focalLength: number;
  readonly magnification: number;
  readonly workingDistance: number;
  readonly flightDistance: number;
  /** From H to the subject, of any lens at any magnification. */
  readonly fromH: (focalLength: number, magnification: number) => number;
  /** Of the crate, each at this magnification: its name, its focal length and its room there. */
  readonly lenses: readonly {
    readonly slug: string;
    readonly name: string;
    readonly focalLength: number;
    readonly room: number;
  }[];
}

const focalLengths = [10, 800] as const;
const rooms = [10, 10_000] as const;
/** Each a line. */
const sizes = [0.25, 0.5, 1, 2];
/** Magnifications whose ratio is less than this are too near for two lines. */
const nearest = 1.3;

/** Half of what a mark takes of the sheet, pixels. */
const gripReach = 15;
const pointReach = 5;

const clamped = (value: number, [least, most]: readonly [number, number]) => Math.min(most, Math.max(least, value));
const isIn = (value: number, [least, most]: readonly [number, number]) => value >= least && value <= most;

/** Lines of one size each, for a lens whose H is at its rim; the crate's lenses off the line in use by their h; the animal's distance across. */
export function roomPlotLayout(given: RoomGiven, box: SheetBox) {
  const { focalLength, magnification, workingDistance, flightDistance, fromH, lenses } = given;
  const { text, small } = box;
  const frame = plotFrame(
    {
      x: { scale: 'log', domain: focalLengths, title: 'focal length f, mm', format: String },
      y: { scale: 'log', domain: rooms, title: 'room w, mm', format: String },
      foot: 1.9 * small,
    },
    box,
  );
  const others = sizes.filter((size) => Math.max(size / magnification, magnification / size) > nearest);
  const lines = [magnification, ...others].map((size) => ({ size, isOn: size === magnification, ...lineOf(size) }));
  const points = lenses
    .filter(({ focalLength: f, room }) => isIn(f, focalLengths) && isIn(room, rooms))
    .map(({ slug, name, focalLength: f, room }) => ({ slug, name, x: frame.x.at(f), y: frame.y.at(room) }));
  const grip = {
    x: frame.x.at(clamped(focalLength, focalLengths)),
    y: frame.y.at(clamped(workingDistance, rooms)),
  };
  const flightY = frame.y.at(clamped(flightDistance, rooms));
  const flightGrip = { x: frame.left + 18, y: flightY };
  const taken: Box[] = [
    ...points.map(({ x, y }) => around(x, y, pointReach)),
    around(grip.x, grip.y, gripReach),
    around(flightGrip.x, flightGrip.y, gripReach),
    ...lines.flatMap((line) => ('name' in line ? line.name.boxes : [])),
  ];
  const sheet = { left: frame.left + 4, right: box.width - 4, top: frame.top + 2, bottom: frame.bottom - 2 };
  const crossed: Box[] = [{ left: frame.left, right: frame.right, top: flightY - 1, bottom: flightY + 1 }];

  function lineOf(size: number) {
    const perMillimetre = fromH(1, size);
    const [from, to] = [
      Math.max(focalLengths[0], rooms[0] / perMillimetre),
      Math.min(focalLengths[1], rooms[1] / perMillimetre),
    ];
    if (from >= to) return { path: '' };
    const [start, end] = [from, to].map((f) => ({ x: frame.x.at(f), y: frame.y.at(f * perMillimetre) })) as [
      { x: number; y: number },
      { x: number; y: number },
    ];
    const path = `M${start.x.toFixed(1)} ${start.y.toFixed(1)}L${end.x.toFixed(1)} ${end.y.toFixed(1)}`;
    const name = printQuantity('magnification', size);
    const isTooLong = textWidth(name, text) > 0.4 * Math.hypot(end.x - start.x, end.y - start.y);
    return isTooLong ? { path } : { path, name: alongLine(name, start, end, text) };
  }

  const beside = (x: number, y: number, reach: number): Spot[] =>
    [0.35, 1.5, -0.9, 2.7, -2.1].flatMap((down): Spot[] => [
      { x: x + reach, y: y + down * text, anchor: 'start' },
      { x: x - reach, y: y + down * text, anchor: 'end' },
    ]);
  const isDrawn = isIn(workingDistance, rooms);
  const wanted: Wanted[] = [
    {
      key: 'yours',
      texts: [
        isDrawn
          ? `w ${printQuantity('working-distance', workingDistance)}`
          : workingDistance <= 0
            ? 'inside the lens'
            : `w ${printQuantity('working-distance', workingDistance)}, off the sheet`,
      ],
      size: text,
      quantity: 'working-distance',
      spots: beside(grip.x, grip.y, gripReach + 4),
    },
    {
      key: 'flight',
      texts: [
        `flight distance ${printQuantity('flight-distance', flightDistance)}`,
        printQuantity('flight-distance', flightDistance),
      ],
      size: text,
      quantity: 'flight-distance',
      spots: [-0.45, 1.1].flatMap((down): Spot[] => [
        { x: frame.left + 36, y: flightY + down * text, anchor: 'start' },
        { x: frame.right - 4, y: flightY + down * text, anchor: 'end' },
      ]),
    },
    ...points.map(({ slug, name, x, y }): Wanted => ({
      key: slug,
      texts: [name],
      size: small,
      spots: [...beside(x, y, 8), { x, y: y + 2 * small, anchor: 'middle' }],
    })),
  ];
  return { frame, lines, points, grip, flightY, flightGrip, labels: placeLabels(wanted, taken, sheet, crossed) };
}
