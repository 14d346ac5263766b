import { quantityOf } from '#core/quantity/vocabulary.ts';
import { rigSpans } from '#core/rig/spans.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { levelPitch, type Span } from '../dimension/stack.ts';
import type { Box } from '../sheet/boxes.ts';
import { boxOf, type ChainDrawing } from './drawing.ts';
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

/** Dimensions above and below, outside of outlines, labels and marks. */
export function rowsOutside(
  dimensions: readonly SideViewDimension[],
  { positions }: SideViewChain,
  drawing: ChainDrawing,
  place: SheetPlace,
  taken: readonly Box[],
  box: SheetBox,
): DimensionRows[] {
  const spans = rigSpans(positions);
  const own = taken.filter((other) => other.bottom > place.top && other.top < place.bottom);
  const boxes = [...drawing.outlines.map((outline) => boxOf(outline, place.axisY)), ...own];
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
    if (Math.min(from, to) < arrowhead || Math.max(from, to) > box.width - arrowhead) return [];
    return [{ name, letter: quantityOf(name).symbol, value, from, to, fromY: place.axisY }];
  };
  const outside = dimensions.filter(({ inside }) => !inside);
  const side = (upper: boolean) => outside.filter(({ name }) => isAbove(name) === upper).flatMap(spanOf);
  return [
    { spans: side(true), y: top - 0.7 * box.text, outwards: -1 },
    { spans: side(false), y: bottom + 1.25 * box.text, outwards: 1 },
  ];
}
