import { printQuantity } from '#core/quantity/print.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { textWidth } from '#site/figures/dimension/text-width.ts';
import { alongLine } from '#site/figures/plot/along-line.ts';
import { plotFrame } from '#site/figures/plot/frame.ts';
import { around } from '#site/figures/sheet/boxes.ts';
import { placeLabels, type Spot, type Wanted } from '#site/figures/sheet/labels.ts';

export interface Given {
  readonly focalLength: number;
  readonly closeUpPower: number;
  /** Undefined where nothing is sharp. */
  readonly magnification: number | undefined;
  /** Whether the lens is set to infinity, where the lines hold. */
  readonly isAtInfinity: boolean;
  /** Magnification of a lens at infinity, and the distance, with a close-up lens. */
  readonly sizeAt: (focalLength: number, closeUpPower: number) => number;
  readonly distanceAt: (closeUpPower: number) => number;
  /** The crate's lenses by slug: their focal lengths. */
  readonly lenses: readonly (readonly [slug: string, focalLength: number])[];
}

const focalLengths = [10, 800] as const;
const sizes = [0.02, 10] as const;
const powers = [1, 2, 4, 10];
/** Powers whose ratio is less than this are too near for two names. */
const nearest = 1.8;
/** So much of a line its name may take. */
const share = 0.33;

/** Half of what a mark takes of the sheet, pixels. */
const gripReach = 15;
const pointReach = 5;

/** The plot placed: lines, points of the crate's lenses, where the hand takes hold, and words where they find room. */
export function sizePlotLayout(given: Given, box: SheetBox) {
  const { focalLength, closeUpPower, magnification, sizeAt, distanceAt, lenses } = given;
  const frame = plotFrame(
    {
      x: { scale: 'log', domain: focalLengths, title: 'focal length f, mm', format: String },
      y: { scale: 'log', domain: sizes, title: 'magnification m', format: String },
      foot: 1.9 * box.small,
    },
    box,
  );
  const lines = [...new Set([closeUpPower, ...powers])].map((power) => ({ power, ...lineOf(power) }));
  const points = lenses.flatMap(([slug, length]) => {
    const size = sizeAt(length, closeUpPower);
    return size < sizes[0] || size > sizes[1] ? [] : [{ slug, length, x: frame.x.at(length), y: frame.y.at(size) }];
  });
  const grip = magnification !== undefined && {
    x: frame.x.at(clamped(focalLength, focalLengths)),
    y: frame.y.at(clamped(magnification, sizes)),
  };
  const taken = [
    ...points.map(({ x, y }) => around(x, y, pointReach)),
    ...(grip ? [around(grip.x, grip.y, gripReach)] : []),
    ...lines.flatMap((line) => ('name' in line ? line.name.boxes : [])),
  ];
  const sheet = { left: frame.left + 4, right: box.width - 4, top: frame.top + 2, bottom: frame.bottom - 2 };
  const wanted: Wanted[] = [...(grip ? [yours(grip, given, box)] : []), ...points.map(nameOfPoint)];

  /** Where a power's line runs, and its name written along it, at its upper end. */
  function lineOf(power: number) {
    const isOn = power === closeUpPower;
    // A power of f is straight here: where it enters the plot and where it leaves it.
    const [from, to] = ends(sizeAt, power).map(([length, size]) => ({ x: frame.x.at(length), y: frame.y.at(size) }));
    if (!from || !to) return { isOn, path: '' };
    const path = `M${from.x.toFixed(1)} ${from.y.toFixed(1)}L${to.x.toFixed(1)} ${to.y.toFixed(1)}`;
    // Lines so near to the one in use leave no room for a second name.
    if (!isOn && Math.max(power / closeUpPower, closeUpPower / power) < nearest) return { isOn, path };
    const name = printQuantity('close-up-power', power);
    const whole = `${name}: w ${printQuantity('working-distance', distanceAt(power))}`;
    const room = share * Math.hypot(to.x - from.x, to.y - from.y);
    const texts = [whole, name].filter((one) => textWidth(one, box.text) < room);
    const text = texts[0];
    return text === undefined ? { isOn, path } : { isOn, path, name: alongLine(text, from, to, box.text) };
  }

  function nameOfPoint({ slug, length, x, y }: (typeof points)[number]): Wanted {
    const spots: Spot[] = [
      { x: x + 7, y: y + 1.1 * box.small, anchor: 'start' },
      { x: x - 7, y: y - 0.5 * box.small, anchor: 'end' },
      { x, y: y + 2 * box.small, anchor: 'middle' },
    ];
    return { key: slug, texts: [printQuantity('focal-length', length)], size: box.small, spots };
  }

  return { frame, lines, points, grip, labels: placeLabels(wanted, taken, sheet) };
}

const clamped = (value: number, [least, most]: readonly [number, number]) => Math.min(most, Math.max(least, value));

/** Where a power's line enters the plot and where it leaves it; none where it does neither. */
function ends(sizeAt: Given['sizeAt'], power: number): (readonly [number, number])[] {
  const perMillimetre = sizeAt(1, power);
  const [from, to] = [
    Math.max(focalLengths[0], sizes[0] / perMillimetre),
    Math.min(focalLengths[1], sizes[1] / perMillimetre),
  ];
  return from < to ? [from, to].map((length) => [length, sizeAt(length, power)] as const) : [];
}

/** What the reader's own lens gives, beside the place where it is taken hold of. */
function yours(grip: { x: number; y: number }, { magnification, isAtInfinity }: Given, box: SheetBox): Wanted {
  const value = `m ${printQuantity('magnification', magnification!)}`;
  const { x, y } = grip;
  const spots = [gripReach + 4, -gripReach - 4].flatMap((beside): Spot[] =>
    [0.35, 1.6, -1].map((lines) => ({
      x: x + beside,
      y: y + lines * box.text,
      anchor: beside > 0 ? 'start' : 'end',
    })),
  );
  return {
    key: 'yours',
    texts: isAtInfinity ? [value] : [`${value}, focused closer`, value],
    size: box.text,
    quantity: 'magnification',
    spots,
  };
}
