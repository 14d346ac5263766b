import { quantityOf } from '#core/quantity/vocabulary.ts';
import { rigSpans } from '#core/rig/spans.ts';
import { levelPitch, stackDimensions, type Span } from '../dimension/stack.ts';
import type { Box } from '../sheet/boxes.ts';
import { boxOf, type ChainDrawing } from './drawing.ts';
import type { DimensionLevels } from './frame.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { SideViewChain, SideViewDimension } from './side-view.ts';

/** A row of dimensions on one side of a drawing. */
export interface DimensionRows {
  readonly spans: readonly Span[];
  readonly y: number;
  readonly outwards: 1 | -1;
}

/** Optical distances stand above the drawing, those that a tape measures below it. */
const above = new Set<string>([
  'subject-distance',
  'image-distance',
  'principal-separation',
  'focal-length',
  'focus-travel',
  'front-principal-depth',
  'entrance-pupil-distance',
  'close-up-gap',
]);

/** A second thing of a kind is dimensioned where the first would be. */
export const isAbove = (name: string) => above.has(name.split('.').at(-1)!);

/** Room for an arrowhead that points at an end from outside, pixels. */
const arrowhead = 10;

/** Rows that fit: the most important dimensions first, until what is left would be too low to draw in. */
export function dimensionsThatFit(chain: SideViewChain, room: number, text: number): readonly SideViewDimension[] {
  const rows = Math.max(0, Math.floor(room / (levelPitch * text)));
  let outside = 0;
  return (chain.dimensions ?? []).filter(({ inside }) => inside === true || outside++ < rows);
}

/** The spans of one side of a drawing, on the sheet; what does not stand on the sheet has none. */
function spansOn(
  isUpper: boolean,
  dimensions: readonly SideViewDimension[],
  { positions }: SideViewChain,
  place: SheetPlace,
): Span[] {
  const spans = rigSpans(positions);
  const x = (at: number) => (at === positions.sharpPlane ? place.subjectX : place.x(at));
  return dimensions.flatMap(({ name, value, part, span, inside }): Span[] => {
    const whole = part === undefined ? undefined : positions.parts[part]!;
    const ends = span ?? (whole ? ([whole.from, whole.to] as const) : spans[name]);
    if (inside || !ends || isAbove(name) !== isUpper) return [];
    const [to, from] = [x(ends[0]), x(ends[1])];
    if (Math.min(from, to) < arrowhead || Math.max(from, to) > place.width - arrowhead) return [];
    return [{ name, letter: quantityOf(name).symbol, value, from, to, fromY: place.axisY }];
  });
}

/** How many levels the dimensions of a chain take as it stands. */
export function levelsUsed(
  dimensions: readonly SideViewDimension[],
  chain: SideViewChain,
  place: SheetPlace,
  text: number,
): DimensionLevels {
  const levels = (isUpper: boolean) =>
    1 +
    Math.max(
      -1,
      ...stackDimensions(spansOn(isUpper, dimensions, chain, place), text, place.width).map(({ level }) => level),
    );
  return { above: levels(true), below: levels(false) };
}

/** Dimensions above and below, outside of outlines, labels and marks. */
export function rowsOutside(
  dimensions: readonly SideViewDimension[],
  chain: SideViewChain,
  drawing: ChainDrawing,
  place: SheetPlace,
  taken: readonly Box[],
  text: number,
): DimensionRows[] {
  const { axisY } = place;
  const own = taken.filter((other) => other.bottom > place.top && other.top < place.bottom);
  const boxes = [...drawing.outlines.map((outline) => boxOf(outline, axisY)), ...own];
  const half = Math.max(drawing.sharp?.half ?? 0, drawing.sensor.half);
  const top = Math.max(place.top, Math.min(axisY - half, ...boxes.map((one) => one.top)));
  const bottom = Math.min(place.bottom, Math.max(axisY + half, ...boxes.map((one) => one.bottom)));
  return [
    { spans: spansOn(true, dimensions, chain, place), y: top - 0.7 * text, outwards: -1 },
    { spans: spansOn(false, dimensions, chain, place), y: bottom + 1.25 * text, outwards: 1 },
  ];
}
