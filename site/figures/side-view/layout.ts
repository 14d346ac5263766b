import { quantityOf } from '#core/quantity/vocabulary.ts';
import { rigSpans } from '#core/rig/spans.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { dimensionLabelBox, levelPitch, stackDimensions, type Span } from '../dimension/stack.ts';
import { labelOfPixels } from '../scale/drawing-scale.ts';
import { around, meet, type Box } from '../sheet/boxes.ts';
import { placeLabels, type PlacedLabel, type Spot, type Wanted } from '../sheet/labels.ts';
import { titleHeight, titleWidth } from '../sheet/title-block.ts';
import { boxOf, drawChain, type ChainDrawing } from './drawing.ts';
import { frameOf, type Frame, type HeldFrame } from './frame.ts';
import { sheetPlace, type SheetPlace } from './sheet-place.ts';
import type { Alignment, SideViewChain, SideViewDimension, SideViewHandle, SideViewShown } from './side-view.ts';

/** A row of dimensions on one side of a drawing. */
export interface DimensionRows {
  readonly spans: readonly Span[];
  readonly y: number;
  readonly outwards: 1 | -1;
}

/** One chain with everything that belongs to it, placed. */
export interface ChainLayout extends ChainDrawing {
  readonly place: SheetPlace;
  readonly labels: readonly PlacedLabel[];
  readonly dimensions: readonly DimensionRows[];
  /** h and the like: lines inside the outlines. */
  readonly insideLines: readonly { readonly name: string; readonly path: string }[];
}

/** A handle's mark. */
export interface PlacedGrip {
  readonly x: number;
  readonly y: number;
}

export interface SideViewLayout {
  readonly frame: Frame;
  readonly chains: readonly ChainLayout[];
  /** One for each handle, in their order. */
  readonly grips: readonly PlacedGrip[];
  readonly title: { readonly x: number; readonly y: number; readonly atLeft: boolean; readonly scale?: string };
  readonly rule: {
    readonly zero: number;
    readonly direction: 1 | -1;
    readonly from: number;
    readonly without: readonly [number, number];
  };
  /** Every box on which nothing else with words may stand: for whoever checks. */
  readonly boxes: readonly { readonly what: string; readonly box: Box }[];
}

export interface SideViewPlan {
  readonly box: SheetBox;
  readonly title: string;
  readonly chains: readonly SideViewChain[];
  readonly shown: SideViewShown;
  readonly handles: readonly SideViewHandle[];
  readonly align?: Alignment;
  /** Laid out in millimetres of paper: a recommended scale, printed as the ratio that it is. */
  readonly onPaper?: boolean;
  readonly held?: HeldFrame | undefined;
}

/** Optical distances stand above the drawing, those that a tape measures below it. */
const above = new Set<string>([
  'subject-distance',
  'image-distance',
  'principal-separation',
  'focal-length',
  'front-principal-depth',
  'entrance-pupil-distance',
  'close-up-gap',
]);

/** A second thing of a kind is dimensioned where the first would be. */
const isAbove = (name: string) => above.has(name.split('.').at(-1)!);

const gripReach = 14;
const unit = 'mm';

/** Rows that fit: the most important dimensions first, until what is left would be too low to draw in. */
function dimensionsThatFit(chain: SideViewChain, room: number, text: number): readonly SideViewDimension[] {
  const rows = Math.max(0, Math.floor(room / (levelPitch * text)));
  let outside = 0;
  return (chain.dimensions ?? []).filter(({ inside }) => inside === true || outside++ < rows);
}

/** How high a drawing is at least, in text sizes, whatever has to give way. */
const leastDrawing = 6.5;

export function sideViewLayout(plan: SideViewPlan): SideViewLayout {
  const { box, title, chains, shown, align = 'sensor', onPaper = false } = plan;
  const foot = titleHeight * box.small + 16;
  const bandHeight = (box.height - foot) / chains.length;
  const dimensions = chains.map((chain) => dimensionsThatFit(chain, bandHeight - leastDrawing * box.text, box.text));
  const rowsOf = (side: 'above' | 'below') =>
    Math.max(
      0,
      ...dimensions.map(
        (list) => list.filter(({ name, inside }) => !inside && isAbove(name) === (side === 'above')).length,
      ),
    );
  const pitch = levelPitch * box.text;
  const [rowsAbove, rowsBelow] = [rowsOf('above') * pitch, rowsOf('below') * pitch];
  const room = Math.max(2 * box.text, (bandHeight - rowsAbove - rowsBelow) / 2 - 0.35 * box.text);
  const positions = chains.map((chain) => chain.positions);
  const frame = frameOf(positions, box, { room, align, onPaper, held: plan.held });

  const places = positions.map(({ sharpPlane, solved, foremost }, index) =>
    sheetPlace(frame, index, {
      axisY: index * bandHeight + rowsAbove + room + 0.3 * box.text,
      width: box.width,
      sharpPlane: solved.sharpPlane === 'nowhere' ? null : sharpPlane,
      front: foremost,
    }),
  );
  const drawings = chains.map((chain, index) => drawChain(chain, shown, places[index]!));
  const grips = placeGrips(plan.handles, drawings, places, box);
  const gripBoxes = grips.map(({ x, y }) => around(x, y, gripReach));
  const laidOut = chains.map((chain, index): ChainLayout => {
    const drawing = drawings[index]!;
    const place = places[index]!;
    return {
      ...drawing,
      place,
      ...annotate(chain, dimensions[index]!, drawing, place, gripBoxes, box),
    };
  });

  const scale = onPaper ? labelOfPixels(frame.pixelsPerMillimetre) : undefined;
  const fromSubject = align === 'subject' && frame.broken.every((isBroken) => !isBroken);
  const width = titleWidth(title, scale, unit, box.small);
  const titleX = fromSubject ? box.width - 4 : 4;
  const titleBox = {
    left: fromSubject ? titleX - width : titleX,
    right: fromSubject ? titleX : titleX + width,
    top: box.height - 11 - titleHeight * box.small,
    bottom: box.height - 11,
  };
  return {
    frame,
    chains: laidOut,
    grips,
    title: { x: titleX, y: titleBox.bottom, atLeft: !fromSubject, ...(scale !== undefined && { scale }) },
    rule: {
      zero: fromSubject ? frame.farX : frame.sensorX[0]!,
      direction: fromSubject ? 1 : -1,
      from: Math.max(0, ...places.map(({ breakX }) => breakX ?? 0)),
      without: [titleBox.left, titleBox.right],
    },
    boxes: [
      { what: 'title block', box: titleBox },
      ...gripBoxes.map((grip, index) => ({ what: `grip ${index}`, box: grip })),
      ...laidOut.flatMap(({ labels, dimensions: rows }, index) => [
        ...labels.map((label) => ({ what: `label ${index} ${label.text}`, box: label.box })),
        ...rows.flatMap(({ spans, y, outwards }) =>
          stackDimensions(spans, box.text, box.width).map((span) => ({
            what: `dimension ${index} ${span.name}`,
            box: dimensionLabelBox(span, y + outwards * span.level * pitch, box.text),
          })),
        ),
      ]),
    ],
  };
}

/** Marks of the handles: on the axis for a subject, on the rim of a part, each clear of those before it. */
function placeGrips(
  handles: readonly SideViewHandle[],
  drawings: readonly ChainDrawing[],
  places: readonly SheetPlace[],
  box: SheetBox,
): PlacedGrip[] {
  const taken: Box[] = [];
  const inside = (value: number, most: number) => Math.min(most - gripReach, Math.max(gripReach, value));
  return handles.map(({ at, chain = 0 }) => {
    const place = places[chain]!;
    const spots: PlacedGrip[] = [];
    if (at === 'subject') spots.push({ x: inside(place.subjectX, box.width), y: place.axisY });
    else {
      const { left, right, half } = drawings[chain]!.outlines[at]!;
      const up = Math.max(half, 2 * gripReach);
      const x = Math.min(left + 16, (left + right) / 2);
      for (const shift of [0, gripReach, 2 * gripReach, 3 * gripReach, 4 * gripReach]) {
        for (const side of [-1, 1]) {
          spots.push({
            x: inside(x + shift, box.width),
            y: place.axisY + side * Math.min(up, place.bottom - place.axisY),
          });
        }
      }
    }
    const free = spots.find((spot) => !taken.some((other) => meet(around(spot.x, spot.y, gripReach), other)));
    const spot = free ?? spots[0]!;
    taken.push(around(spot.x, spot.y, gripReach));
    return spot;
  });
}

const cautionOf: Partial<Record<SideViewChain['positions']['solved']['sharpPlane'], readonly string[]>> = {
  inside: ['the sharp plane is inside the lens', 'inside the lens'],
  nowhere: ['nothing can be sharp: the lens is too near the sensor', 'nothing can be sharp'],
};

const wordsOf = { 'at infinity': ['∞, the axis is broken', '∞'], broken: ['the axis is broken', 'broken'] };

/** Labels into the drawing, then dimensions outside of all that is there. */
function annotate(
  chain: SideViewChain,
  dimensions: readonly SideViewDimension[],
  drawing: ChainDrawing,
  place: SheetPlace,
  grips: readonly Box[],
  box: SheetBox,
): Pick<ChainLayout, 'labels' | 'dimensions' | 'insideLines'> {
  const { positions } = chain;
  const { solved } = positions;
  const inside = { left: 4, right: box.width - 4, top: place.top, bottom: place.bottom };
  const { text, small } = box;
  const wanted: Wanted[] = [];
  const cautions = chain.notice === undefined ? cautionOf[solved.sharpPlane] : [chain.notice];
  if (cautions)
    wanted.push({ key: 'caution', texts: cautions, size: text, className: 'caution', spots: corners(inside, text) });
  if (chain.field !== undefined && drawing.sharp) {
    wanted.push({
      key: 'field',
      texts: [chain.field],
      size: text,
      quantity: 'field-width',
      className: 'field-label',
      spots: besideLine(drawing.sharp.x, drawing.sharp.half, place, text),
    });
  }
  for (const { key, letters, x, half, isLeft, quantity } of drawing.lettered) {
    const anchor = isLeft ? 'end' : 'start';
    const across = x + (isLeft ? -4 : 4);
    const heights = [
      half - 0.4 * small,
      half - 1.6 * small,
      half + small,
      -half + small,
      -half - 0.3 * small,
      1.3 * small,
      -0.5 * small,
    ];
    const spots = heights.map((below): Spot => ({ x: across, y: place.axisY + below, anchor }));
    const others = spots.map((spot): Spot => ({ ...spot, x: 2 * x - across, anchor: isLeft ? 'start' : 'end' }));
    wanted.push({
      key,
      texts: letters,
      size: small,
      className: 'quiet',
      spots: [...spots, ...others],
      ...(quantity && { quantity }),
    });
  }
  const lines = insideLines(dimensions, drawing, chain, place, small);
  wanted.push(...lines.wanted);
  if (place.breakX !== null) {
    const texts = wordsOf[solved.sharpPlane === 'at infinity' ? 'at infinity' : 'broken'];
    const spots = [-1.6, 2.2, -2.8, 3.4].map((lines_): Spot => ({
      x: place.breakX!,
      y: place.axisY + lines_ * text,
      anchor: 'middle',
    }));
    const atEdge = spots.map(({ y }): Spot => ({ x: 6, y, anchor: 'start' }));
    wanted.push({ key: 'broken', texts, size: small, className: 'quiet', spots: [...spots, ...atEdge] });
  }
  chain.labels?.forEach((label, index) => {
    if (label !== '') wanted.push(partLabel(index, label, drawing, place, small));
  });
  const labels = placeLabels(wanted, grips, inside);
  return {
    labels,
    insideLines: lines.lines,
    dimensions: rowsOutside(dimensions, chain, drawing, place, labels, grips, box),
  };
}

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
  ]);
  return { key: `part ${index}`, texts: [label], size, className: 'quiet', spots };
}

/** Dimensions inside the outlines: a line with two ticks, and the letter over it. */
function insideLines(
  dimensions: readonly SideViewDimension[],
  { outlines }: ChainDrawing,
  { positions }: SideViewChain,
  place: SheetPlace,
  size: number,
): { lines: { name: string; path: string }[]; wanted: Wanted[] } {
  const spans = rigSpans(positions);
  const half = outlines.at(-1)!.half;
  const found = dimensions
    .filter(({ inside }) => inside)
    .flatMap(({ name }) => {
      const span = spans[name];
      return span ? [{ name, from: place.x(span[0]), to: place.x(span[1]) }] : [];
    });
  const y = place.axisY - 0.4 * half;
  return {
    lines: found.map(({ name, from, to }) => ({
      name,
      path: `M${to.toFixed(1)} ${y.toFixed(1)}H${from.toFixed(1)}m0 -4v8M${to.toFixed(1)} ${(y - 4).toFixed(1)}v8`,
    })),
    wanted: found.map(({ name, from, to }) => ({
      key: `inside ${name}`,
      texts: [quantityOf(name).symbol],
      size,
      quantity: name,
      spots: [y - 4, y + size].map((at): Spot => ({ x: (from + to) / 2, y: at, anchor: 'middle' })),
    })),
  };
}

/** Dimensions above and below, outside of outlines, labels and marks. */
function rowsOutside(
  dimensions: readonly SideViewDimension[],
  { positions }: SideViewChain,
  drawing: ChainDrawing,
  place: SheetPlace,
  labels: readonly PlacedLabel[],
  grips: readonly Box[],
  box: SheetBox,
): DimensionRows[] {
  const spans = rigSpans(positions);
  const own = grips.filter((grip) => grip.bottom > place.top && grip.top < place.bottom);
  const boxes = [
    ...drawing.outlines.map((outline) => boxOf(outline, place.axisY)),
    ...labels.map((label) => label.box),
    ...own,
  ];
  const sharp = drawing.sharp?.half ?? 0;
  const top = Math.max(
    place.top,
    Math.min(place.axisY - Math.max(sharp, drawing.sensor.half), ...boxes.map((one) => one.top)),
  );
  const bottom = Math.min(
    place.bottom,
    Math.max(place.axisY + Math.max(sharp, drawing.sensor.half), ...boxes.map((one) => one.bottom)),
  );
  const toSubject = (at: number) => (at === positions.sharpPlane ? place.subjectX : place.x(at));
  const spanOf = ({ name, value, part }: SideViewDimension): Span[] => {
    const ends = part === undefined ? spans[name] : [positions.parts[part]!.from, positions.parts[part]!.to];
    if (!ends) return [];
    const [to, from] = [toSubject(ends[0]!), toSubject(ends[1]!)];
    if (Math.min(from, to) < 0 || Math.max(from, to) > box.width) return [];
    return [{ name, letter: quantityOf(name).symbol, value, from, to, fromY: place.axisY }];
  };
  const outside = dimensions.filter(({ inside }) => !inside);
  const side = (upper: boolean) => outside.filter(({ name }) => isAbove(name) === upper).flatMap(spanOf);
  return [
    { spans: side(true), y: top - 0.45 * box.text, outwards: -1 },
    { spans: side(false), y: bottom + 1.25 * box.text, outwards: 1 },
  ];
}
