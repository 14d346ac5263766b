import { printQuantity } from '#core/quantity/print.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import type { Span } from '#site/figures/dimension/stack.ts';
import { drawingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import type { LensState } from './lens-state.ts';

/** Fewer pixels across than this are no grid; what is smaller than this, in pixels of the screen, is no square. */
const leastAcross = 10;
const smallestSquare = 5;
const mostSquares = 400;

/**
 * Two pictures of one size and scale side by side, headings above, dimensions, title block and rule below. The scale follows
 * the pixels, so that the disc is seen to grow on them, until the disc no longer fits. A scale that is *held* while the hand
 * drags stays. Columns and rows are counted from the middle one outwards, itself included; 0 where pixels are too small to be
 * drawn one by one.
 */
export function pixelSheetLayout({ pixelPitch, airyDiameter }: LensState, box: SheetBox, held?: DrawingScale) {
  const [left, gap, top] = [8, 0.8 * box.text, 1.7 * box.text];
  const halfWidth = (box.width - 2 * left - gap) / 4;
  const halfHeight = (box.height - top - 4.4 * box.text - 1.7 * box.small) / 2;
  const room = 2 * Math.min(halfWidth, halfHeight);
  const scale = held ?? drawingScale(Math.max(leastAcross * pixelPitch, 1.35 * airyDiameter), room);
  const square = pixelPitch * scale.pixelsPerMillimetre;
  const [columns, rows] = [halfWidth, halfHeight].map((half) => Math.ceil(half / square + 0.5)) as [number, number];
  const areDrawn = square >= smallestSquare && columns * rows <= mostSquares;
  /** Middles of the pictures, where the point's image lies. */
  const [lightX, recordX] = [left + halfWidth, box.width - left - halfWidth];
  const foot = top + 2 * halfHeight;
  const span = (name: string, letter: string, value: string, x: number, length: number): Span => {
    const half = (length * scale.pixelsPerMillimetre) / 2;
    return { name, letter, value, from: x - half, to: x + half, fromY: foot };
  };
  return {
    scale,
    square,
    left,
    halfWidth,
    halfHeight,
    lightX,
    recordX,
    y: top + halfHeight,
    foot,
    columns: areDrawn ? columns : 0,
    rows: areDrawn ? rows : 0,
    spans: [
      span('airy-diameter', '', `Airy disc ${printQuantity('airy-diameter', airyDiameter)}`, lightX, airyDiameter),
      span('pixel-pitch', 'p', printQuantity('pixel-pitch', pixelPitch), recordX, pixelPitch),
    ],
  };
}

/** The lines between pixels, about the middle of a picture, as an SVG path; what sticks out is for a clip to cut. */
export function gridPath(columns: number, rows: number, square: number): string {
  const [width, height] = [columns * square, rows * square];
  const lines = (count: number, line: (at: number) => string) =>
    Array.from({ length: 2 * count }, (_, k) => line((k - count + 0.5) * square)).join('');
  return lines(columns, (x) => `M${x} ${-height}V${height}`) + lines(rows, (y) => `M${-width} ${y}H${width}`);
}

/** A pixel with its mirror images about the middle, up to eight that record the same, as an SVG path. */
export interface Squares {
  readonly far: number;
  readonly near: number;
  readonly path: string;
}

/** All pixels of a picture, each with its mirror images. */
export function squaresPaths(columns: number, rows: number, square: number): readonly Squares[] {
  const side = square.toFixed(2);
  const corner = (place: number) => ((place - 0.5) * square).toFixed(2);
  const squareAt = (column: number, row: number) => `M${corner(column)} ${corner(row)}h${side}v${side}h-${side}z`;
  const mirrored = (a: number, b: number) => squareAt(a, b) + squareAt(-a, b) + squareAt(a, -b) + squareAt(-a, -b);
  return (
    Array.from({ length: columns * rows }, (_, index) => ({ far: index % columns, near: Math.floor(index / columns) }))
      // Above the diagonal stand mirror images, unless the picture is higher than wide.
      .filter(({ far, near }) => near <= far || near >= columns)
      .map(({ far, near }) => ({ far, near, path: mirrored(far, near) + mirrored(near, far) }))
  );
}
