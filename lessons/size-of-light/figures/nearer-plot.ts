import { illuminanceByInverseSquare } from '#core/exposure/illuminance-by-inverse-square.formula.ts';
import { illuminanceFromDisc } from '#core/exposure/illuminance-from-disc.formula.ts';
import { printQuantity } from '#core/quantity/print.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { plotFrame } from '#site/figures/plot/frame.ts';
import { curvePath, logSamples } from '#site/figures/plot/plot.ts';
import { around, type Box } from '#site/figures/sheet/boxes.ts';
import { placeLabels, type Spot, type Wanted } from '#site/figures/sheet/labels.ts';

/** A disc that lights what faces it; mm, cd/m². */
export interface Nearer {
  readonly sourceSize: number;
  readonly flashDistance: number;
  readonly luminance: number;
}

/** Decades of distances about the widths of the light, those of the vocabulary at most. */
const widths = [0.1, 20] as const;

/** From here on the law is right to a tenth: at so many widths. */
export const partsAt = 0.5 / Math.sqrt(0.1);

/** Light against distance, exact and by the square law; where the two part by more than a tenth is shaded. */
export function nearerLayout(given: Nearer, range: { readonly least: number; readonly most: number }, box: SheetBox) {
  const { sourceSize, flashDistance, luminance } = given;
  const { text, small } = box;
  const at = (distance: number) => ({ sourceSize, luminance, flashDistance: distance });
  const nearest = Math.max(range.least, Math.min(widths[0] * sourceSize, 0.8 * flashDistance));
  const farthest = Math.min(range.most, Math.max(widths[1] * sourceSize, 1.25 * flashDistance));
  const domain = [nearest, farthest] as const;
  const most = 2 * illuminanceByInverseSquare(at(0.5 * sourceSize));
  const least = 0.7 * illuminanceFromDisc(at(farthest));
  const frame = plotFrame(
    {
      x: { scale: 'log', domain, title: 'distance d', format: (mm) => printQuantity('flash-distance', mm) },
      y: {
        scale: 'log',
        domain: [least, most],
        title: 'light on what faces it, lx',
        format: (lux) =>
          lux >= 0.001 && lux < 1e6 ? printQuantity('illuminance', lux).replace(/\s?lx$/, '') : power(lux),
      },
      foot: 1.9 * small,
    },
    box,
  );
  const { x, y, left, right, top, bottom } = frame;
  const samples = logSamples(nearest, farthest, 91);
  const exact = samples.map((distance) => [distance, illuminanceFromDisc(at(distance))] as const);
  const law = samples
    .map((distance) => [distance, illuminanceByInverseSquare(at(distance))] as const)
    .map(([distance, lux]) => [distance, lux > most ? NaN : lux] as const);
  const here = { x: x.at(flashDistance), y: y.at(illuminanceFromDisc(at(flashDistance))) };
  const promised = y.at(Math.min(most, illuminanceByInverseSquare(at(flashDistance))));
  const apart = Math.min(right, Math.max(left, x.at(Math.min(farthest, Math.max(nearest, partsAt * sourceSize)))));
  const boxes = (points: readonly (readonly [number, number])[]) =>
    points.filter(([, lux]) => !Number.isNaN(lux)).map(([mm, lux]) => around(x.at(mm), y.at(lux), 3));
  const crossed: Box[] = [...boxes(exact), ...boxes(law)];
  const beside = (atX: number, atY: number): Spot[] =>
    [1.6, -0.8, 2.9, -2.1, 4.2].flatMap((down): Spot[] => [
      { x: atX - 16, y: atY + down * text, anchor: 'end' },
      { x: atX + 16, y: atY + down * text, anchor: 'start' },
    ]);
  const along = (points: readonly (readonly [number, number])[], parts: readonly number[]): Spot[] => {
    const seen = points.filter(([, lux]) => !Number.isNaN(lux));
    return parts.flatMap((part): Spot[] => {
      const point = seen[Math.floor(part * (seen.length - 1))]!;
      const [atX, atY] = [x.at(point[0]), y.at(point[1])];
      return [
        { x: atX + 10, y: atY - 0.3 * text, anchor: 'start' },
        { x: atX - 10, y: atY + 1.1 * text, anchor: 'end' },
      ];
    });
  };
  const wanted: Wanted[] = [
    {
      key: 'here',
      texts: [`here ${printQuantity('illuminance', illuminanceFromDisc(at(flashDistance)))}`],
      size: text,
      spots: beside(here.x, here.y),
      quantity: 'illuminance',
    },
    {
      key: 'law',
      texts: ['square law'],
      size: text,
      spots: along(law, [0.08, 0.2, 0.35, 0.02]),
      quantity: 'flash-distance',
    },
    {
      key: 'apart',
      texts: ['here the law gives over a tenth too much', 'the law gives too much', 'too much'],
      size: small,
      spots: [
        { x: left + 6, y: bottom - 0.6 * small, anchor: 'start' },
        { x: left + 6, y: bottom - 2.2 * small, anchor: 'start' },
      ],
    },
  ];
  return {
    frame,
    exact: curvePath(exact, x.at, y.at),
    law: curvePath(law, x.at, y.at),
    gap: Math.abs(promised - here.y) > 3 ? `M${here.x} ${here.y}V${promised}` : '',
    here,
    apart: { x: left, y: top, width: Math.max(0, apart - left), height: bottom - top },
    labels: placeLabels(
      wanted,
      [around(here.x, here.y, 14)],
      { left, top: top + 1, right: right, bottom: bottom - 1 },
      crossed,
    ),
  };
}

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';
function power(lux: number): string {
  const exponent = Math.round(Math.log10(lux));
  return `10${exponent < 0 ? '⁻' : ''}${[...String(Math.abs(exponent))].map((digit) => superscripts[Number(digit)]).join('')}`;
}
