import { printQuantity } from '#core/quantity/print.ts';
import type { PlotFrame } from '#site/figures/plot/frame.ts';
import { curvePath } from '#site/figures/plot/plot.ts';
import { around } from '#site/figures/sheet/boxes.ts';
import { placeLabels, type Spot, type Wanted } from '#site/figures/sheet/labels.ts';
import { smallestMark } from './depth.ts';

/** What the plot of the worst place knows. */
export interface ApertureState {
  readonly fNumber: number;
  readonly maxAperture: number;
  readonly balancedFNumber: number;
  /** The mark with most, and what it keeps; none where no mark keeps the pattern. */
  readonly best: { readonly fNumber: number; readonly contrast: number } | undefined;
  /** The marks that are tried. */
  readonly marks: readonly number[];
  /** The least contrast left anywhere in the depth. */
  readonly contrastAt: (fNumber: number) => number;
}

const eight = 8;
const share = (contrast: number) => printQuantity('contrast', contrast);
const mark = (fNumber: number) => printQuantity('f-number', fNumber);

/** The curve, the marks on it, what stands out among them, and where nine tenths of the top are kept. */
export function contrastRemarks(
  lens: ApertureState,
  samples: readonly number[],
  { x, y, top, bottom, left, right }: PlotFrame,
  text: number,
) {
  const points = samples.map((at) => [at, lens.contrastAt(at)] as const);
  const on = (fNumber: number) => {
    const contrast = fNumber < lens.maxAperture ? 0 : lens.contrastAt(fNumber);
    return { x: Math.min(right, Math.max(left, x.at(fNumber))), y: y.at(contrast), contrast };
  };
  const here = on(lens.fNumber);
  const { best } = lens;
  const nearTop = best ? points.filter(([, contrast]) => contrast >= 0.9 * best.contrast).map(([at]) => x.at(at)) : [];
  const band = nearTop.length > 1 ? ([Math.min(...nearTop), Math.max(...nearTop)] as const) : undefined;
  const atBest = best && on(best.fNumber);
  const balanced = x.at(lens.balancedFNumber);
  const isOnSheet = balanced >= left && balanced <= right;

  const around4 = (at: { x: number; y: number }, far = 1): Spot[] =>
    [far, far + 1.3, far + 2.6].flatMap((rise) => [
      { x: at.x, y: at.y - rise * text, anchor: 'middle' as const },
      { x: at.x + text, y: at.y - (rise - 0.6) * text, anchor: 'start' as const },
      { x: at.x - text, y: at.y - (rise - 0.6) * text, anchor: 'end' as const },
      { x: at.x + 0.4 * text, y: at.y - rise * text, anchor: 'start' as const },
      { x: at.x - 0.4 * text, y: at.y - rise * text, anchor: 'end' as const },
    ]);
  /** So near that no other mark can be meant. */
  const beside = (at: { x: number; y: number }): Spot[] =>
    [0.5, -0.5, 1.2].flatMap((rise) => [
      { x: at.x - 0.6 * text, y: at.y - rise * text, anchor: 'end' as const },
      { x: at.x + 0.6 * text, y: at.y - rise * text, anchor: 'start' as const },
    ]);
  const isBest = best?.fNumber === lens.fNumber;
  /** The two habits that a reader may have: always f/8, always the smallest hole. */
  const habits = [eight, smallestMark].filter(
    (habit) => habit >= lens.maxAperture && habit !== lens.fNumber && habit !== best?.fNumber,
  );
  const wanted: Wanted[] = [
    ...(best && atBest
      ? [
          {
            key: 'best',
            texts: [`best ${mark(best.fNumber)}: ${share(best.contrast)}`, mark(best.fNumber)],
            size: text,
            spots: around4(atBest, 1.1),
            quantity: 'best-f-number',
          },
        ]
      : []),
    ...(isBest
      ? []
      : [
          {
            key: 'here',
            texts: [`${mark(lens.fNumber)}: ${share(here.contrast)}`, mark(lens.fNumber)],
            size: text,
            spots: around4(here, 1.5),
            quantity: 'contrast',
          },
        ]),
    ...habits.map((habit) => ({
      key: `habit-${habit}`,
      texts: [`${mark(habit)}: ${share(on(habit).contrast)}`],
      size: text,
      spots: beside(on(habit)),
    })),
    ...(isOnSheet
      ? [
          {
            key: 'balanced',
            texts: [`balanced ${mark(lens.balancedFNumber)}`, 'balanced'],
            size: text,
            spots: [3.2, 4.6, 6].flatMap((rise): Spot[] => [
              { x: balanced + 0.4 * text, y: top + rise * text, anchor: 'start' },
              { x: balanced - 0.4 * text, y: top + rise * text, anchor: 'end' },
            ]),
            quantity: 'balanced-f-number',
          },
        ]
      : []),
    ...(band
      ? [
          {
            key: 'band',
            texts: ['nine tenths of the top, or more', 'nine tenths of the top', '9/10 of the top'],
            size: text,
            spots: [1.2, 2.6].flatMap((drop): Spot[] => [
              { x: (band[0] + band[1]) / 2, y: top + drop * text, anchor: 'middle' },
              { x: band[0], y: top + drop * text, anchor: 'start' },
              { x: band[1], y: top + drop * text, anchor: 'end' },
            ]),
          },
        ]
      : []),
  ];
  const curve = samples.map((at, index) => around(x.at(at), y.at(points[index]![1]), 3));
  return {
    here,
    best: atBest,
    balanced: isOnSheet ? `M${balanced} ${top}V${bottom}` : '',
    band: band ? `M${band[0]} ${top}H${band[1]}V${bottom}H${band[0]}Z` : '',
    curve: curvePath(points, x.at, y.at),
    dots: lens.marks.map((one) => ({ mark: one, ...on(one) })),
    labels: placeLabels(
      wanted,
      [around(here.x, here.y, 12)],
      { left, top: top - 0.2 * text, right, bottom: bottom - 2 },
      curve,
    ),
  };
}
