import { printQuantity } from '#core/quantity/print.ts';
import type { PlotFrame } from '#site/figures/plot/frame.ts';
import { curvePath } from '#site/figures/plot/plot.ts';
import { around, type Box } from '#site/figures/sheet/boxes.ts';
import { placeLabels, type Spot, type Wanted } from '#site/figures/sheet/labels.ts';

/** What the plot of the two blurs knows: both at any f-number, mm on the sensor. */
export interface BlursState {
  readonly fNumber: number;
  readonly maxAperture: number;
  readonly balancedFNumber: number;
  readonly circleOfConfusion: number;
  readonly ends: (fNumber: number) => number;
  readonly airy: (fNumber: number) => number;
}

/** Whole decades that hold both curves and the circle of confusion, mm. */
export function decadesOf({ ends, airy, circleOfConfusion }: BlursState, samples: readonly number[]) {
  const [first, last] = [samples[0]!, samples.at(-1)!];
  const all = [ends(first), ends(last), airy(first), airy(last), circleOfConfusion];
  return [10 ** Math.floor(Math.log10(Math.min(...all))), 10 ** Math.ceil(Math.log10(Math.max(...all)))] as const;
}

/** Both curves, the circle of confusion as a line, the place where the curves cross, and the words at them. */
export function blursRemarks(
  lens: BlursState,
  samples: readonly number[],
  { x, y, top, bottom, left, right }: PlotFrame,
  text: number,
) {
  const inside = (fNumber: number) => Math.min(right, Math.max(left, x.at(fNumber)));
  const path = (of: (fNumber: number) => number) =>
    curvePath(
      samples.map((at) => [at, of(at)] as const),
      x.at,
      y.at,
    );
  const boxes = (of: (fNumber: number) => number): Box[] => samples.map((at) => around(x.at(at), y.at(of(at)), 3));
  const [here, seen] = [inside(lens.fNumber), Math.max(lens.maxAperture, lens.fNumber)];
  const [blur, disc, circle] = [lens.ends(seen), lens.airy(seen), y.at(lens.circleOfConfusion)];
  const crossing = x.at(lens.balancedFNumber);
  const isOnSheet = crossing >= left && crossing <= right;
  const um = (name: 'defocus-blur' | 'airy-diameter' | 'circle-of-confusion', value: number) =>
    printQuantity(name, value);
  const beside = (atX: number, atY: number): Spot[] =>
    [-0.6, 1.3, -1.9, 2.6, -3.2, 3.9, -4.5, 5.2].flatMap((down): Spot[] => [
      { x: atX + 1.1 * text, y: atY + down * text, anchor: 'start' },
      { x: atX - 1.1 * text, y: atY + down * text, anchor: 'end' },
    ]);
  const wanted: Wanted[] = [
    {
      key: 'ends',
      texts: [`ends of the depth ${um('defocus-blur', blur)}`, `ends ${um('defocus-blur', blur)}`],
      size: text,
      spots: beside(here, y.at(blur)),
      quantity: 'defocus-blur',
    },
    {
      key: 'airy',
      texts: [`Airy disc ${um('airy-diameter', disc)}`],
      size: text,
      spots: beside(here, y.at(disc)),
      quantity: 'airy-diameter',
    },
    {
      key: 'circle',
      texts: [`c ${um('circle-of-confusion', lens.circleOfConfusion)}`],
      size: text,
      spots: [0.3, 0.6, 0.9].flatMap((part): Spot[] =>
        [-0.4, 1].map((down) => ({ x: right - part * (right - left), y: circle + down * text, anchor: 'start' })),
      ),
      quantity: 'circle-of-confusion',
    },
    ...(isOnSheet
      ? [
          {
            key: 'balanced',
            texts: [`balanced ${printQuantity('f-number', lens.balancedFNumber)}`, 'balanced'],
            size: text,
            spots: [1.2, 2.5].flatMap((drop): Spot[] => [
              { x: crossing + 0.4 * text, y: top + drop * text, anchor: 'start' },
              { x: crossing - 0.4 * text, y: top + drop * text, anchor: 'end' },
            ]),
            quantity: 'balanced-f-number',
          },
        ]
      : []),
  ];
  return {
    hereX: here,
    hereY: y.at(blur),
    discY: y.at(disc),
    ends: path(lens.ends),
    airy: path(lens.airy),
    circle: `M${left} ${circle}H${right}`,
    balanced: isOnSheet ? `M${crossing} ${top}V${bottom}` : '',
    crossing: isOnSheet ? { x: crossing, y: y.at(lens.airy(lens.balancedFNumber)) } : undefined,
    labels: placeLabels(
      wanted,
      [around(here, y.at(blur), 12), around(here, y.at(disc), 5)],
      { left, top, right, bottom: bottom - 2 },
      [...boxes(lens.ends), ...boxes(lens.airy)],
    ),
  };
}
