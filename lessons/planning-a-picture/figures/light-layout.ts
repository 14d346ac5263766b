import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { around, type Box } from '#site/figures/sheet/boxes.ts';
import { placeLabels, type Wanted } from '#site/figures/sheet/labels.ts';
import type { SideViewLayout } from '#site/figures/side-view/layout.ts';
import { along, up, type Light } from './light-at.ts';

/** Half of what a mark to take hold of takes of the sheet, pixels. */
const grip = 14;

/**
 * Pixels of the side view: the light obliquely above the subject, what it looks like from there, and its words where nothing else stands. None where the
 * subject is not where it is drawn.
 *
 * @param words by key, the fullest first
 */
export function lightLayout(
  { flashDistance, sourceSize }: Light,
  { chains, frame, boxes }: SideViewLayout,
  box: SheetBox,
  words: Readonly<Record<string, readonly string[]>>,
) {
  const { place, outlines, sharp } = chains[0]!;
  if (place.breakX !== null || !sharp) return undefined;
  const pixels = frame.pixelsPerMillimetre;
  const { subjectX: x, axisY: y } = place;
  const half = sourceSize / 2;
  const middle = { x: x + flashDistance * along * pixels, y: y - flashDistance * up * pixels };
  const end = (sign: 1 | -1) => ({
    x: middle.x + sign * half * up * pixels,
    y: middle.y + sign * half * along * pixels,
  });
  const [one, other] = [end(1), end(-1)];
  const point = ({ x: across, y: down }: { readonly x: number; readonly y: number }) =>
    `${across.toFixed(1)} ${down.toFixed(1)}`;
  // A light beyond the sheet is taken hold of where its way leaves that.
  const share = Math.min(1, (y - grip) / (y - middle.y), (box.width - grip - x) / Math.max(1e-9, middle.x - x));
  const held = { x: x + share * (middle.x - x), y: y + share * (middle.y - y) };
  /** Along its way, so many pixels before where it is taken hold of, and to one side. */
  const beside = (before: number, aside: number) =>
    point({ x: held.x - before * along + aside * up, y: held.y + before * up + aside * along });
  const taken: Box[] = [
    ...boxes.map((each) => each.box),
    ...outlines.map(({ left, right, half: tall }) => ({ left, right, top: y - tall, bottom: y + tall })),
    around(held.x, held.y, grip),
    ...[0, 0.25, 0.75, 1].map((part) => around(one.x + part * (other.x - one.x), one.y + part * (other.y - one.y), 5)),
  ];
  const sheet = { left: 4, right: box.width - 4, top: 2, bottom: place.bottom };
  const size = box.small;
  const besides = [
    { x: held.x + 18, y: held.y + 0.35 * size, anchor: 'start' as const },
    { x: held.x - 18, y: held.y + 0.35 * size, anchor: 'end' as const },
  ];
  const corners = [1, 2.3, 3.6].flatMap((line) => [
    { x: 6, y: line * 1.1 * size, anchor: 'start' as const },
    { x: box.width - 6, y: line * 1.1 * size, anchor: 'end' as const },
  ]);
  const wanted = Object.entries(words).map(([key, texts], index): Wanted => ({
    key,
    texts,
    size,
    spots: [...besides.map((spot) => ({ ...spot, y: spot.y + index * 1.3 * size })), ...corners],
  }));
  return {
    held,
    /** Two strokes across the way to a light that stands farther off than the sheet goes. */
    broken:
      share < 1
        ? [grip + 5, grip + 10].map((before) => `M${beside(before - 2, -8)}L${beside(before + 2, 8)}`).join('')
        : undefined,
    source: `M${point(one)}L${point(other)}`,
    beam: `M${point({ x, y })}L${point(one)}L${point(other)}z`,
    labels: placeLabels(wanted, taken, sheet),
    /** Along the light's own way, mm: away from the subject. */
    farther: (moved: { readonly x: number; readonly y: number }) => (moved.x * along - moved.y * up) / pixels,
  };
}
