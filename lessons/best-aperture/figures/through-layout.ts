import { printQuantity } from '#core/quantity/print.ts';
import type { PlotFrame } from '#site/figures/plot/frame.ts';
import { curvePath, evenSamples } from '#site/figures/plot/plot.ts';
import { around, type Box } from '#site/figures/sheet/boxes.ts';
import { placeLabels, type Spot, type Wanted } from '#site/figures/sheet/labels.ts';

/** What the plot through the depth knows. */
export interface ThroughState {
  readonly fNumber: number;
  readonly subjectDepth: number;
  readonly best: number | undefined;
  /** Contrast left at a place, mm behind the nearest part; undefined where the lens does not open so wide. */
  readonly contrastAt: (fNumber: number, place: number) => number | undefined;
}

type Points = readonly (readonly [number, number])[];

/** Contrast from front to back at the f-number set and at the best one, with their worst places and the sharp plane. */
export function throughRemarks(state: ThroughState, { x, y, top, bottom, left, right }: PlotFrame, text: number) {
  const depth = state.subjectDepth;
  const mark = (fNumber: number) => printQuantity('f-number', fNumber);
  const sampled = (fNumber: number): Points =>
    evenSamples(0, depth, 81).flatMap((place) => {
      const contrast = state.contrastAt(fNumber, place);
      return contrast === undefined ? [] : [[place, contrast] as const];
    });
  const kinds = [
    { name: 'contrast', fNumber: state.fNumber, word: '' },
    ...(state.best === undefined || state.best === state.fNumber
      ? []
      : [{ name: 'best-f-number', fNumber: state.best, word: 'best ' }]),
  ].map((kind) => ({ ...kind, points: sampled(kind.fNumber) }));
  const boxes: Box[] = kinds.flatMap(({ points }) => points.map(([at, value]) => around(x.at(at), y.at(value), 3)));
  const worst = kinds.flatMap(({ name, fNumber, word, points }) => {
    if (points.length === 0) return [];
    const least = points.reduce((low, point) => (point[1] < low[1] ? point : low));
    return [
      {
        name,
        x: x.at(least[0]),
        y: y.at(least[1]),
        words: `${word}${mark(fNumber)}: ${printQuantity('contrast', least[1])}`,
      },
    ];
  });
  const [plane, end] = [x.at(depth / 2), x.at(depth)];
  const wanted: Wanted[] = [
    ...worst.map(({ name, x: atX, y: atY, words }) => ({
      key: name,
      texts: [words],
      size: text,
      spots: [-0.8, -2, -3.2, 1.4, -4.4].flatMap((down): Spot[] => [
        { x: atX + 0.6 * text, y: atY + down * text, anchor: 'start' },
        { x: atX - 0.6 * text, y: atY + down * text, anchor: 'end' },
      ]),
      quantity: name,
    })),
    {
      key: 'plane',
      texts: ['sharp plane'],
      size: text,
      spots: [1.2, 2.5].flatMap((drop): Spot[] => [
        { x: plane + 0.4 * text, y: top + drop * text, anchor: 'start' },
        { x: plane - 0.4 * text, y: top + drop * text, anchor: 'end' },
      ]),
    },
    {
      key: 'end',
      texts: [`Z ${printQuantity('subject-depth', depth)}`],
      size: text,
      spots: [1.2, 2.5, 3.8].flatMap((drop): Spot[] => [
        { x: end - 0.5 * text, y: top + drop * text, anchor: 'end' },
        { x: end + 0.5 * text, y: top + drop * text, anchor: 'start' },
      ]),
      quantity: 'subject-depth',
    },
  ];
  return {
    curves: kinds.map(({ name, points }) => ({ name, path: curvePath(points, x.at, y.at) })),
    worst,
    plane: `M${plane} ${top}V${bottom}`,
    ends: `M${x.at(0)} ${top}V${bottom}M${end} ${top}V${bottom}`,
    endX: end,
    labels: placeLabels(wanted, [around(end, bottom, 12)], { left, top, right, bottom: bottom - 2 }, boxes),
  };
}
