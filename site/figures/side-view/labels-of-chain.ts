import { quantityOf } from '#core/quantity/vocabulary.ts';
import { rigSpans } from '#core/rig/spans.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import type { Box } from '../sheet/boxes.ts';
import { placeLabels, type PlacedLabel, type Spot, type Wanted } from '../sheet/labels.ts';
import type { ChainDrawing } from './drawing.ts';
import { gripReach } from './grips.ts';
import type { Lettered, Stroke } from './shapes.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { SideViewChain, SideViewDimension } from './side-view.ts';

const cautionOf: Partial<Record<SideViewChain['positions']['solved']['sharpPlane'], readonly string[]>> = {
  inside: ['the sharp plane is inside the lens', 'inside the lens'],
  nowhere: ['nothing can be sharp: the lens is too near the sensor', 'nothing can be sharp'],
};

/** Everything that is written into the drawing, the most needed first. */
export function labelsOf(
  chain: SideViewChain,
  drawing: ChainDrawing,
  place: SheetPlace,
  lines: readonly InsideLine[],
  grips: readonly Box[],
  { width, text, small }: SheetBox,
): PlacedLabel[] {
  const { solved } = chain.positions;
  const inside = { left: 4, right: width - 4, top: place.top, bottom: place.bottom };
  const wanted: Wanted[] = [];
  const cautions = chain.notice === undefined ? cautionOf[solved.sharpPlane] : [chain.notice];
  if (cautions) {
    wanted.push({
      key: 'caution',
      texts: cautions,
      size: text,
      className: 'caution',
      isNeeded: true,
      spots: corners(inside, text),
    });
  }
  if (chain.field !== undefined && drawing.sharp) {
    const spots = besideLine(drawing.sharp.x, drawing.sharp.half, place, text);
    wanted.push({
      key: 'field',
      texts: [chain.field],
      size: text,
      quantity: 'field-width',
      className: 'field-label',
      spots,
    });
  }
  const isCircle = ({ key }: Lettered) => key === 'around';
  wanted.push(...drawing.lettered.filter((one) => !isCircle(one)).map((point) => letterOf(point, place, small)));
  wanted.push(...lines.map((line) => line.letter));
  if (place.breakX !== null)
    wanted.push(breakLabel(solved.sharpPlane === 'at infinity', place.breakX, place, text, small));
  wanted.push(...partLabels(chain, drawing, place, small));
  // What is said of the circle is said elsewhere too: names of parts go before it.
  wanted.push(...drawing.lettered.filter(isCircle).map((point) => letterOf(point, place, small)));
  return placeLabels(wanted, grips, inside, marksOf(drawing, place), keptFree(drawing, place));
}

/** A letter beside its mark: within the outline near its rim, then outside of it, then on the other side of the mark. */
function letterOf(
  { key, letters, x, half, isLeft, isBeyond = false, isHigh = false, quantity }: Lettered,
  place: SheetPlace,
  size: number,
): Wanted {
  const within = [half - 0.4 * size, half - 1.6 * size];
  const beyond = [half + size, -half - 0.3 * size];
  const heights = [
    ...(isHigh ? [-half + size, half - 0.4 * size, -half + 2.2 * size] : []),
    ...(isBeyond ? beyond : within),
    ...(isBeyond ? within : [half + size]),
    -half + size,
    -half - 0.3 * size,
    1.3 * size,
    -0.5 * size,
  ];
  const spots = [isLeft, !isLeft].flatMap((toLeft) =>
    heights.map((below): Spot => ({
      x: x + (toLeft ? -4 : 4),
      y: place.axisY + below,
      anchor: toLeft ? 'end' : 'start',
    })),
  );
  return { key, texts: letters, size, className: 'quiet', spots, ...(quantity && { quantity }) };
}

/** That the axis is broken is said beside the break. */
function breakLabel(isInfinite: boolean, x: number, place: SheetPlace, text: number, size: number): Wanted {
  const texts = isInfinite ? ['∞, the axis is broken', '∞'] : ['the axis is broken', 'broken'];
  const spots = [-1.6, 2.2, -2.8, 3.4].map((lines): Spot => ({ x, y: place.axisY + lines * text, anchor: 'middle' }));
  const atEdge = spots.map(({ y }): Spot => ({ x: 6, y, anchor: 'start' }));
  return { key: 'broken', texts, size, className: 'quiet', spots: [...spots, ...atEdge] };
}

const upright = (x: number, half: number, axisY: number): Box => ({
  left: x - 1,
  right: x + 1,
  top: axisY - half,
  bottom: axisY + half,
});

/** Where no word stands: across outlines, glass, sharp plane and sensor. */
export function keptFree({ sharp, sensor, outlines, strokes }: ChainDrawing, { axisY, sensorX }: SheetPlace): Box[] {
  return [
    ...outlines.flatMap((outline) => outline.edges),
    ...strokes.flatMap(({ box }) => box ?? []),
    ...(sharp ? [upright(sharp.x, sharp.half, axisY)] : []),
    upright(sensorX, sensor.half, axisY),
  ];
}

/** Principal planes, pupils and the like: words had better not stand on them. */
export const marksOf = ({ lettered }: ChainDrawing, { axisY }: SheetPlace): Box[] =>
  lettered.map(({ x, half }) => upright(x, half, axisY));

function corners({ left, right, top, bottom }: Box, size: number): Spot[] {
  return [bottom - 0.3 * size, bottom - 1.6 * size, top + size, top + 2.3 * size].flatMap((y): Spot[] => [
    { x: left + 4, y, anchor: 'start' },
    { x: right - 4, y, anchor: 'end' },
  ]);
}

/** Beside the ends of an upright line, on the lens's side first. */
function besideLine(x: number, half: number, place: SheetPlace, size: number): Spot[] {
  const ends = [
    place.axisY - half - 0.4 * size,
    place.axisY - half + size,
    place.axisY + half + size,
    place.axisY + half - 0.4 * size,
  ];
  const within = ends.map((y) => Math.min(place.bottom - 0.3 * size, Math.max(place.top + 0.9 * size, y)));
  return [8, -8].flatMap((beside) =>
    within.map((y): Spot => ({ x: Math.max(8, x + beside), y, anchor: beside > 0 ? 'start' : 'end' })),
  );
}

/** The names of all parts that have one. */
export function partLabels(
  { labels = [] }: SideViewChain,
  drawing: ChainDrawing,
  place: SheetPlace,
  size: number,
): Wanted[] {
  return labels.flatMap((label, index) => (label === '' ? [] : [partLabel(index, label, drawing, place, size)]));
}

/** A part's name: in its outline where it fits there, above or below it where not. */
function partLabel(index: number, label: string, { outlines }: ChainDrawing, place: SheetPlace, size: number): Wanted {
  const { left, right, half } = outlines[index]!;
  const middle = (left + right) / 2;
  const heights = [
    -half - 0.4 * size,
    half + size,
    -half + 1.2 * size,
    half - 0.5 * size,
    -half - 1.7 * size,
    half + 2.3 * size,
  ];
  const spots = heights.flatMap((y): Spot[] => [
    { x: middle, y: place.axisY + y, anchor: 'middle' },
    { x: left, y: place.axisY + y, anchor: 'start' },
    { x: right, y: place.axisY + y, anchor: 'end' },
    { x: middle, y: place.axisY + y, anchor: 'start' },
    { x: middle, y: place.axisY + y, anchor: 'end' },
  ]);
  // Between two parts there is no room beside one; before the foremost there is, or before a grip that stands there.
  const beside = index === outlines.length - 1 ? [-half + size, -0.4 * size, 1.2 * size, half - 0.4 * size] : [];
  for (const away of [0.4 * size, 0.4 * size + 2 * gripReach])
    spots.push(...beside.map((y): Spot => ({ x: left - away, y: place.axisY + y, anchor: 'end' })));
  return { key: `part ${index}`, texts: [label], size, className: 'quiet', isApart: true, spots };
}

/** A dimension inside the outlines: a line with two ticks, and its letter. */
export interface InsideLine extends Stroke {
  readonly letter: Wanted;
}

export function insideLines(
  dimensions: readonly SideViewDimension[],
  { outlines }: ChainDrawing,
  { positions }: SideViewChain,
  place: SheetPlace,
  size: number,
): InsideLine[] {
  const spans = rigSpans(positions);
  const y = place.axisY - 0.4 * outlines.at(-1)!.half;
  return dimensions.flatMap(({ name, inside }): InsideLine[] => {
    const span = spans[name];
    if (!inside || !span) return [];
    const [from, to] = [place.x(span[0]), place.x(span[1])];
    const path = `M${to.toFixed(1)} ${y.toFixed(1)}H${from.toFixed(1)}m0 -4v8M${to.toFixed(1)} ${(y - 4).toFixed(1)}v8`;
    const spots = [y - 4, y + size].map((at): Spot => ({ x: (from + to) / 2, y: at, anchor: 'middle' }));
    return [
      {
        key: `inside ${name}`,
        className: 'inside-line',
        quantity: name,
        path,
        letter: { key: `inside ${name}`, texts: [quantityOf(name).symbol], size, quantity: name, spots },
      },
    ];
  });
}
