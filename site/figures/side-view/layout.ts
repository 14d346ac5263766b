import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { dimensionLabelBox, levelPitch, stackDimensions } from '../dimension/stack.ts';
import { labelOfPixels } from '../scale/drawing-scale.ts';
import { around, type Box } from '../sheet/boxes.ts';
import type { PlacedLabel } from '../sheet/labels.ts';
import { titleHeight, titleWidth } from '../sheet/title-block.ts';
import { dimensionsThatFit, isAbove, rowsOutside, type DimensionRows } from './dimension-rows.ts';
import { drawChain, type ChainDrawing } from './drawing.ts';
import { frameOf, type Frame, type HeldFrame } from './frame.ts';
import { gripReach, placeGrips, type PlacedGrip } from './grips.ts';
import { insideLines, labelsOf, type InsideLine } from './labels-of-chain.ts';
import { sheetPlace, type SheetPlace } from './sheet-place.ts';
import type { Alignment, SideViewChain, SideViewHandle, SideViewShown } from './side-view.ts';

/** One chain with everything that belongs to it, placed. */
export interface ChainLayout extends ChainDrawing {
  readonly place: SheetPlace;
  readonly labels: readonly PlacedLabel[];
  readonly dimensions: readonly DimensionRows[];
  /** h and the like: lines inside the outlines. */
  readonly insideLines: readonly InsideLine[];
}

export interface SideViewLayout {
  readonly frame: Frame;
  readonly chains: readonly ChainLayout[];
  /** One for each handle, in their order. */
  readonly grips: readonly PlacedGrip[];
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
  /** Laid out in millimetres of paper: a recommended scale, printed as the ratio that it is. */
  readonly onPaper?: boolean;
  readonly held?: HeldFrame | undefined;
}

const unit = 'mm';

/** How high a drawing is at least, in text sizes, whatever has to give way. */
const leastDrawing = 5.5;

export function sideViewLayout(plan: SideViewPlan): SideViewLayout {
  const { box, title, chains, shown, align = 'sensor', onPaper = false } = plan;
  const foot = titleHeight * box.small + 16;
  const bandHeight = (box.height - foot) / chains.length;
  const dimensions = chains.map((chain) => dimensionsThatFit(chain, bandHeight - leastDrawing * box.text, box.text));
  const pitch = levelPitch * box.text;
  const rows = dimensions.map((list) => {
    const outside = list.filter(({ inside }) => !inside);
    const over = outside.filter(({ name }) => isAbove(name)).length;
    return { above: over * pitch, all: outside.length * pitch };
  });
  const tallest = Math.max(...rows.map(({ all }) => all));
  const room = Math.max(2 * box.text, (bandHeight - tallest) / 2 - 0.35 * box.text);
  const positions = chains.map((chain) => chain.positions);
  const frame = frameOf(positions, box, { room, align, onPaper, held: plan.held });

  const places = positions.map(({ sharpPlane, solved, foremost }, index) =>
    sheetPlace(frame, index, {
      axisY: index * bandHeight + rows[index]!.above + room + 0.3 * box.text,
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
    const lines = insideLines(dimensions[index]!, drawing, chain, place, box.small);
    const labels = labelsOf(chain, drawing, place, lines, gripBoxes, box);
    const taken = [...labels.map((label) => label.box), ...gripBoxes];
    return {
      ...drawing,
      place,
      labels,
      insideLines: lines,
      dimensions: rowsOutside(dimensions[index]!, chain, drawing, place, taken, box),
    };
  });

  const scale = onPaper ? labelOfPixels(frame.pixelsPerMillimetre) : undefined;
  const fromSubject = align === 'subject' && frame.broken.every((isBroken) => !isBroken);
  // On a narrow sheet the block gets smaller before it gets too wide.
  const wide = titleWidth(title, scale, unit, box.small);
  const width = Math.min(wide, box.width - 8);
  const size = (box.small * width) / wide;
  const titleX = fromSubject ? box.width - 4 : 4;
  const titleBox = {
    left: fromSubject ? titleX - width : titleX,
    right: fromSubject ? titleX : titleX + width,
    top: box.height - 11 - titleHeight * size,
    bottom: box.height - 11,
  };
  return {
    frame,
    chains: laidOut,
    grips,
    title: { x: titleX, y: titleBox.bottom, size, atLeft: !fromSubject, ...(scale !== undefined && { scale }) },
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
