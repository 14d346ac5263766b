import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { dimensionLabelBox, levelPitch, stackDimensions } from '../dimension/stack.ts';
import { labelOfPixels } from '../scale/drawing-scale.ts';
import { around, type Box } from '../sheet/boxes.ts';
import { placeLabels, withSpace, type PlacedLabel } from '../sheet/labels.ts';
import { titleHeight, titleWidth } from '../sheet/title-block.ts';
import { dimensionsThatFit, isAbove, levelsUsed, rowsOutside, type DimensionRows } from './dimension-rows.ts';
import { boxOf, drawChain, type ChainDrawing } from './drawing.ts';
import { frameOf, type Alignment, type DimensionLevels, type Frame, type HeldFrame } from './frame.ts';
import { gripReach, placeGrips, type PlacedGrip } from './grips.ts';
import { insideLines, keptFree, labelsOf, marksOf, partLabels } from './labels-of-chain.ts';
import { sheetPlace, type SheetPlace } from './sheet-place.ts';
import type { SideViewShown } from './shown.ts';
import type { SideViewChain, SideViewDimension, SideViewHandle } from './side-view.ts';

/** One chain with everything that belongs to it, placed. */
export interface ChainLayout extends ChainDrawing {
  readonly place: SheetPlace;
  readonly labels: readonly PlacedLabel[];
  readonly dimensions: readonly DimensionRows[];
}

export interface SideViewLayout {
  readonly frame: Frame;
  readonly chains: readonly ChainLayout[];
  /** One for each handle, in their order; none where what it moves is not drawn. */
  readonly grips: readonly (PlacedGrip | undefined)[];
  readonly title: {
    readonly x: number;
    readonly y: number;
    readonly size: number;
    readonly atLeft: boolean;
    readonly scale?: string;
  };
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
  readonly held?: HeldFrame | undefined;
}

const unit = 'mm';

/** How high a drawing is at least, in text sizes, whatever has to give way; where three are compared, their dimensions are the point. */
const leastDrawing = (chains: number) => (chains > 2 ? 3 : 5.5);

/** Scale and places with so many rows of dimensions. */
function framed(
  { box, chains, handles, align = 'sensor', held }: SideViewPlan,
  band: number,
  rows: readonly DimensionLevels[],
) {
  const pitch = levelPitch * box.text;
  const tallest = pitch * Math.max(...rows.map(({ above, below }) => above + below));
  const least = chains.length > 2 ? 1 : 2;
  const room = Math.max(least * box.text, (band - tallest) / 2 - 0.35 * box.text);
  const positions = chains.map((chain) => chain.positions);
  const subjectMoves = handles.some(({ at }) => at === 'subject');
  const reachesUp = Math.max(0, ...chains.map((chain) => chain.reachesUp ?? 0));
  const frame = frameOf(positions, box, { room, rows, align, subjectMoves, reachesUp, held });
  const places = positions.map(({ sharpPlane, solved, foremost }, index) =>
    sheetPlace(frame, index, {
      axisY: index * band + rows[index]!.above * pitch + room + 0.3 * box.text,
      width: box.width,
      sharpPlane: solved.sharpPlane === 'nowhere' ? null : sharpPlane,
      front: foremost,
    }),
  );
  return { frame, places };
}

/** A row for every dimension first; then, larger, with as many as they took, where those are still enough. */
function fitted(plan: SideViewPlan, band: number, dimensions: readonly (readonly SideViewDimension[])[]) {
  const { held, chains, box } = plan;
  if (held) return framed(plan, band, held.rows);
  const all = dimensions.map((list): DimensionLevels => {
    const outside = list.filter(({ inside }) => !inside);
    const above = outside.filter(({ name }) => isAbove(name)).length;
    return { above, below: outside.length - above };
  });
  const used = (places: readonly SheetPlace[]) =>
    places.map((place, index) => levelsUsed(dimensions[index]!, chains[index]!, place, box.text));
  const first = framed(plan, band, all);
  const rows = used(first.places);
  const second = framed(plan, band, rows);
  const isEnough = used(second.places).every(
    ({ above, below }, index) => above <= rows[index]!.above && below <= rows[index]!.below,
  );
  return isEnough ? second : first;
}

/** Where the title block stands: over the rule's ticks in the corner away from its zero, or above the rule where it would hide the numbers. */
function titlePlace({ box, title }: SideViewPlan, scale: string | undefined, atLeft: boolean) {
  // On a narrow sheet the block gets smaller before it gets too wide.
  const wide = titleWidth(title, scale, unit, box.small);
  const width = Math.min(wide, box.width - 8);
  const size = (box.small * width) / wide;
  const left = atLeft ? 4 : box.width - 4 - width;
  const isOver = width > mostOfRule * box.width;
  const bottom = box.height - 11 - (isOver ? 1.1 * box.small + 3 : 0);
  const place = { left, right: left + width, top: bottom - titleHeight * size, bottom };
  return {
    title: { x: atLeft ? left : left + width, y: bottom, size, atLeft, ...(scale !== undefined && { scale }) },
    box: place,
    without: (isOver ? [0, 0] : [place.left, place.right]) as readonly [number, number],
  };
}

/** So much of the rule's numbers may give way to the title. */
const mostOfRule = 0.5;

/** What dimensions take of the sheet: their words, and their lines between the arrows. */
function boxesOf(rows: readonly DimensionRows[], { text, width }: SheetBox) {
  return rows.flatMap(({ spans, y, outwards }) =>
    stackDimensions(spans, text, width).map((span) => {
      const lineY = y + outwards * span.level * levelPitch * text;
      const line = {
        left: span.left - 2 * gripReach,
        right: span.right + 2 * gripReach,
        top: lineY - 6,
        bottom: lineY + 6,
      };
      return { name: span.name, label: dimensionLabelBox(span, lineY, text), line };
    }),
  );
}

/**
 * Places all of a sheet. Names of parts that find no room within their own drawing stand between the drawings at last, where nothing else does.
 */
export function sideViewLayout(plan: SideViewPlan): SideViewLayout {
  const { box, chains, shown, align = 'sensor' } = plan;
  const { onPaper = false } = box;
  // The ratio's own width is not known before the scale is: the longest counts.
  const foot = box.height - titlePlace(plan, onPaper ? '1:1000' : undefined, true).box.top + 5;
  const band = (box.height - foot) / chains.length;
  const dimensions = chains.map((chain) =>
    dimensionsThatFit(chain, band - leastDrawing(chains.length) * box.text, box.text),
  );
  const { frame, places } = fitted(plan, band, dimensions);
  const drawings = chains.map((chain, index) => drawChain(chain, shown, places[index]!));
  const grips = placeGrips(plan.handles, chains, drawings, places, box, shown);
  const gripBoxes = grips.flatMap((grip) => (grip ? [around(grip.x, grip.y, gripReach)] : []));
  const laidOut = chains.map((chain, index): ChainLayout => {
    const drawing = drawings[index]!;
    const place = places[index]!;
    const lines = insideLines(dimensions[index]!, drawing, chain, place, box.small);
    const labels = labelsOf(chain, drawing, place, lines, gripBoxes, box);
    const taken = [...labels.map((label) => label.box), ...gripBoxes];
    return {
      ...drawing,
      strokes: [...drawing.strokes, ...lines],
      place,
      labels,
      dimensions: rowsOutside(dimensions[index]!, chain, drawing, place, taken, box.text),
    };
  });

  const dimensionBoxes = laidOut.map(({ dimensions: rows }) => boxesOf(rows, box));
  const taken = [
    ...gripBoxes,
    ...dimensionBoxes.flat().flatMap(({ label, line }) => [label, line]),
    ...laidOut.flatMap((one) => [
      ...one.labels.map(withSpace),
      ...one.outlines.map((outline) => boxOf(outline, one.place.axisY)),
      ...keptFree(one, one.place),
      ...marksOf(one, one.place),
    ]),
  ];
  const drawn = { left: 4, right: box.width - 4, top: 2, bottom: box.height - foot };
  const named = laidOut.map((one, index): ChainLayout => {
    const missing = partLabels(chains[index]!, one, one.place, box.small).filter(
      ({ key }) => !one.labels.some((label) => label.key === key),
    );
    const late = placeLabels(missing, taken, drawn);
    taken.push(...late.map((label) => label.box));
    return { ...one, labels: [...one.labels, ...late] };
  });

  const fromSubject = align === 'subject' && frame.sensorX.some((at) => at !== frame.sensorX[0]);
  const title = titlePlace(plan, onPaper ? labelOfPixels(frame.pixelsPerMillimetre) : undefined, !fromSubject);
  return {
    frame,
    chains: named,
    grips,
    title: title.title,
    rule: {
      zero: fromSubject ? places[0]!.subjectX : frame.sensorX[0]!,
      direction: fromSubject ? 1 : -1,
      from: Math.max(0, ...places.map(({ breakX }) => breakX ?? 0)),
      without: title.without,
    },
    boxes: [
      { what: 'title block', box: title.box },
      ...gripBoxes.map((grip, index) => ({ what: `grip ${index}`, box: grip })),
      ...named.flatMap(({ labels }, index) => [
        ...labels.map((label) => ({ what: `label ${index} ${label.text}`, box: label.box })),
        ...dimensionBoxes[index]!.map(({ name, label }) => ({ what: `dimension ${index} ${name}`, box: label })),
      ]),
    ],
  };
}
