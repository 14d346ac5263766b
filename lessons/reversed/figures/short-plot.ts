import { printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { plotFrame, type PlotFrame } from '#site/figures/plot/frame.ts';
import { curvePath, logSamples } from '#site/figures/plot/plot.ts';
import { around } from '#site/figures/sheet/boxes.ts';
import { labelBox, placeLabels, type PlacedLabel, type Spot, type Wanted } from '#site/figures/sheet/labels.ts';

export interface LensPoint {
  readonly slug: string;
  readonly focalLength: number;
  /** Undefined where nothing is sharp. */
  readonly size: number | undefined;
  readonly room: number | undefined;
}

export interface Given {
  readonly focalLength: number;
  /** How deep H is behind the rim of the reader's lens, mm. */
  readonly depth: number;
  readonly magnification: number | undefined;
  readonly room: number | undefined;
  readonly sizeAt: (focalLength: number, depth: number) => number | undefined;
  readonly roomAt: (focalLength: number, depth: number) => number | undefined;
  readonly lenses: readonly LensPoint[];
}

/** One plot: what is drawn over the focal length. */
export interface Panel {
  readonly key: 'magnification' | 'working-distance';
  /** Where it stands on the sheet, pixels. */
  readonly x: number;
  readonly frame: PlotFrame;
  readonly lines: readonly { readonly depth: number; readonly isOn: boolean; readonly path: string }[];
  readonly points: readonly { readonly slug: string; readonly x: number; readonly y: number }[];
  /** The reader's own lens. */
  readonly here: { readonly x: number; readonly y: number } | undefined;
  readonly labels: readonly PlacedLabel[];
}

const focalLengths = [8, 200] as const;
const sizes = [0.05, 20] as const;
const rooms = [10, 1000] as const;
/** Depths of H behind the rim that lines are drawn for besides the reader's own, mm; one this near to it is left out. */
const depths = [20, 60];
const tooNear = 6;

/** A sheet at least so many texts wide has room for two plots beside each other. */
const twoPanels = 46;

const gripReach = 15;
const pointReach = 5;

/** Magnification over focal length and, where there is room, working distance beside it. */
export function shortPlotLayout(given: Given, box: SheetBox): readonly Panel[] {
  const isWide = box.width >= twoPanels * box.text;
  const width = isWide ? box.width / 2 : box.width;
  const size = panel(
    given,
    { ...box, width },
    {
      key: 'magnification',
      title: 'magnification m',
      domain: sizes,
      at: given.sizeAt,
      own: given.magnification,
      of: ({ size: value }) => value,
      isNamed: true,
      said: (value) => `m ${printQuantity('magnification', value)}`,
    },
  );
  if (!isWide) return [size];
  const room = panel(
    given,
    { ...box, width },
    {
      key: 'working-distance',
      title: 'working distance w, mm',
      domain: rooms,
      at: given.roomAt,
      own: given.room,
      of: ({ room: value }) => value,
      isNamed: false,
      said: (value) => `w ${printQuantity('working-distance', value)}`,
    },
  );
  return [size, { ...room, x: width }];
}

interface Plan {
  readonly key: Panel['key'];
  readonly title: string;
  readonly domain: readonly [number, number];
  readonly at: Given['sizeAt'];
  readonly own: number | undefined;
  readonly of: (lens: LensPoint) => number | undefined;
  /** Whether the lines have their names here. */
  readonly isNamed: boolean;
  readonly said: (value: number) => string;
}

function panel(given: Given, box: SheetBox, plan: Plan): Panel {
  const { focalLength, depth, lenses } = given;
  const [least, most] = plan.domain;
  const isShown = (value: number | undefined): value is number =>
    value !== undefined && value >= least && value <= most;
  const frame = plotFrame(
    {
      x: { scale: 'log', domain: focalLengths, title: 'f, mm', format: String, ticks: [10, 20, 50, 100, 200] },
      y: { scale: 'log', domain: plan.domain, title: plan.title, format: String },
      foot: 1.9 * box.small,
    },
    box,
  );
  const drawn = [depth, ...depths.filter((other) => Math.abs(other - depth) >= tooNear)];
  const lines = drawn.map((at) => {
    const values = logSamples(focalLengths[0], focalLengths[1], 400)
      .map((f) => [f, plan.at(f, at)] as const)
      .filter((point): point is readonly [number, number] => isShown(point[1]));
    return { depth: at, isOn: at === depth, path: curvePath(values, frame.x.at, frame.y.at), values };
  });
  const points = lenses.flatMap((lens) => {
    const value = plan.of(lens);
    return isShown(value)
      ? [{ slug: lens.slug, f: lens.focalLength, x: frame.x.at(lens.focalLength), y: frame.y.at(value) }]
      : [];
  });
  const isOnAxis = focalLength >= focalLengths[0] && focalLength <= focalLengths[1];
  const here =
    plan.own !== undefined && isOnAxis
      ? { x: frame.x.at(focalLength), y: frame.y.at(Math.min(most, Math.max(least, plan.own))) }
      : undefined;

  const wanted: Wanted[] = [];
  if (here && plan.own !== undefined) {
    wanted.push({
      key: 'yours',
      texts: plan.isNamed
        ? [`h ${printQuantity('front-principal-depth', depth)}: ${plan.said(plan.own)}`, plan.said(plan.own)]
        : [plan.said(plan.own)],
      size: box.text,
      quantity: plan.key,
      spots: besideGrip(here, box.text),
    });
  }
  for (const { slug, f, x, y } of points) {
    wanted.push({
      key: slug,
      texts: [printQuantity('focal-length', f)],
      size: box.small,
      spots: besidePoint(x, y, box.small),
    });
  }
  // Lines run close together: only the outer ones have room for a name, on the side away from the others.
  const [lowest, ...higher] = lines.toSorted((one, other) => one.depth - other.depth);
  const highest = higher.at(-1);
  const names = [
    ...(highest ? [{ line: highest, side: 'above' } as const] : []),
    ...(lowest ? [{ line: lowest, side: 'below' } as const] : []),
  ];
  for (const { line, side } of names) {
    // The reader's own is named where it is taken hold of.
    if (plan.isNamed && !line.isOn) wanted.push(nameOf(line, frame, box.small, side));
  }
  const taken = [
    ...(here ? [around(here.x, here.y, gripReach)] : []),
    ...points.map(({ x, y }) => around(x, y, pointReach)),
    ...frame.labels.map(({ text, size, x, y, anchor }) => labelBox(text, size, { x, y, anchor })),
  ];
  const crossed = lines.flatMap(({ values }) =>
    values.map(([f, value]) => around(frame.x.at(f), frame.y.at(value), 1)),
  );
  const sheet = { left: frame.left + 3, right: frame.right + 8, top: frame.top + 2, bottom: frame.bottom - 2 };
  return { key: plan.key, x: 0, frame, lines, points, here, labels: placeLabels(wanted, taken, sheet, crossed) };
}

function besideGrip({ x, y }: { x: number; y: number }, size: number): Spot[] {
  return [gripReach + 4, -gripReach - 4].flatMap((beside): Spot[] =>
    [-0.5, 0.35, 1.4].map((lines) => ({ x: x + beside, y: y + lines * size, anchor: beside > 0 ? 'start' : 'end' })),
  );
}

function besidePoint(x: number, y: number, size: number): Spot[] {
  return [
    { x: x + 7, y: y - 0.3 * size, anchor: 'start' },
    { x: x - 7, y: y + 1.1 * size, anchor: 'end' },
    { x: x + 7, y: y + 1.2 * size, anchor: 'start' },
    { x: x - 7, y: y - 0.3 * size, anchor: 'end' },
  ];
}

interface Line {
  readonly depth: number;
  readonly values: readonly (readonly [number, number])[];
}

/** A line's name on one side of its upper part. */
function nameOf({ depth, values }: Line, frame: PlotFrame, size: number, side: 'above' | 'below'): Wanted {
  const spots = [0.25, 0.3, 0.2, 0.4, 0.5, 0.1].flatMap((share): Spot[] => {
    const point = values[Math.floor(share * (values.length - 1))];
    if (!point) return [];
    const [x, y] = [frame.x.at(point[0]), frame.y.at(point[1])];
    return side === 'above'
      ? [{ x: x + 6, y: y - 0.4 * size, anchor: 'start' }]
      : [{ x: x - 6, y: y + 1.2 * size, anchor: 'end' }];
  });
  const quantity: QuantityName = 'front-principal-depth';
  return { key: `depth ${depth}`, texts: [`h ${printQuantity(quantity, depth)}`], size, quantity, spots };
}
