import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { drawingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';

/** One of the two pictures of the sheet, pixels. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Where the point's image lies: the middle. */
  readonly centreX: number;
  readonly centreY: number;
}

/** Pixels drawn from the middle one to the right and upwards, itself included. */
export interface Counts {
  readonly columns: number;
  readonly rows: number;
}

export interface PixelSheetLayout {
  readonly scale: DrawingScale;
  readonly light: Frame;
  readonly record: Frame;
  /** Undefined where the pixels are too small to be drawn one by one. */
  readonly counts: Counts | undefined;
}

/** Fewer pixels than this are no grid; a smaller one than this, in pixels of the screen, no square. */
const leastPixels = 10;
const smallestSquare = 5;
const mostSquares = 400;

/**
 * Two pictures of one scale side by side, headings above, dimensions, title block and rule below. The scale follows the pixels,
 * so that the disc is seen to grow on them, until the disc no longer fits. A scale that is *held* while the hand drags stays.
 */
export function pixelSheetLayout(
  pixelPitch: number,
  airyDiameter: number,
  box: SheetBox,
  held?: DrawingScale,
): PixelSheetLayout {
  const [margin, gap, top] = [8, 0.8 * box.text, 1.7 * box.text];
  const width = Math.max(40, (box.width - 2 * margin - gap) / 2);
  const height = Math.max(40, box.height - top - 4.4 * box.text - 1.7 * box.small);
  const scale = held ?? drawingScale(Math.max(leastPixels * pixelPitch, 1.35 * airyDiameter), Math.min(width, height));
  const frame = (x: number): Frame => ({ x, y: top, width, height, centreX: x + width / 2, centreY: top + height / 2 });
  return {
    scale,
    light: frame(margin),
    record: frame(margin + width + gap),
    counts: countsIn(width, height, pixelPitch * scale.pixelsPerMillimetre),
  };
}

function countsIn(width: number, height: number, square: number): Counts | undefined {
  const columns = Math.ceil(width / 2 / square + 0.5);
  const rows = Math.ceil(height / 2 / square + 0.5);
  return square < smallestSquare || columns * rows > mostSquares ? undefined : { columns, rows };
}

/** The lines between the pixels of a frame, as an SVG path. */
export function gridPath(frame: Frame, { columns, rows }: Counts, square: number): string {
  const lines = (count: number, centre: number, start: number, length: number, draw: (at: number) => string) =>
    Array.from({ length: 2 * count }, (_, k) => centre + (k - count + 0.5) * square)
      .filter((at) => at > start && at < start + length)
      .map(draw)
      .join('');
  return (
    lines(columns, frame.centreX, frame.x, frame.width, (x) => `M${x} ${frame.y}v${frame.height}`) +
    lines(rows, frame.centreY, frame.y, frame.height, (y) => `M${frame.x} ${y}h${frame.width}`)
  );
}

/** The squares of a pixel and its mirror images in a frame, up to eight that record the same, as an SVG path. */
export function squaresPath(frame: Frame, column: number, row: number, square: number): string {
  const places = new Set<string>();
  for (const [x, y] of [
    [column, row],
    [row, column],
  ] as const) {
    for (const [a, b] of [
      [x, y],
      [-x, y],
      [x, -y],
      [-x, -y],
    ] as const) {
      const [left, upper] = [frame.centreX + (a - 0.5) * square, frame.centreY + (b - 0.5) * square];
      const isSeen =
        left < frame.x + frame.width &&
        left > frame.x - square &&
        upper < frame.y + frame.height &&
        upper > frame.y - square;
      if (isSeen) places.add(`M${left.toFixed(2)} ${upper.toFixed(2)}`);
    }
  }
  const size = square.toFixed(2);
  return [...places].map((place) => `${place}h${size}v${size}h-${size}z`).join('');
}
