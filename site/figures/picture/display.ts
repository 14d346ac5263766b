import type { Rendered, Pixels } from './messages.ts';

/** What stands beside the picture, and how. */
export type Beside = 'nothing' | 'sharp' | 'aside';
export type Arrangement = 'side-by-side' | 'divided' | 'difference';

/** A rectangle of the screen, pixels. */
export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The largest area of the shape *columns* to *rows* in the middle of a place. */
export function fitted(columns: number, rows: number, place: Area): Area {
  const scale = Math.min(place.width / columns, place.height / rows);
  const [width, height] = [columns * scale, rows * scale];
  return { x: place.x + (place.width - width) / 2, y: place.y + (place.height - height) / 2, width, height };
}

/** Where the picture goes and where what stands beside it goes. */
export function areasOf(
  shape: { readonly columns: number; readonly rows: number },
  width: number,
  height: number,
  isPair: boolean,
): { readonly left: Area; readonly right?: Area } {
  const gap = 6;
  if (!isPair) return { left: fitted(shape.columns, shape.rows, { x: 0, y: 0, width, height }) };
  // On a phone one above the other gives larger pictures.
  const isWide = width / height > (0.9 * shape.columns) / shape.rows;
  const half = isWide ? (width - gap) / 2 : (height - gap) / 2;
  const place = (second: 0 | 1): Area =>
    isWide
      ? { x: second * (half + gap), y: 0, width: half, height }
      : { x: 0, y: second * (half + gap), width, height: half };
  return {
    left: fitted(shape.columns, shape.rows, place(0)),
    right: fitted(shape.columns, shape.rows, place(1)),
  };
}

/** A picture as something that can be drawn at any size. */
export function canvasOf({ columns, rows, rgba }: Pixels): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = columns;
  canvas.height = rows;
  canvas.getContext('2d')!.putImageData(new ImageData(rgba, columns, rows), 0, 0);
  return canvas;
}

/** How like two pictures are, in words and a number. */
export function likenessInWords({ likeness }: Rendered): string {
  if (likeness === undefined) return '';
  if (likeness === Infinity) return 'identical to the perfectly sharp picture';
  // The root mean square difference as a share of white.
  const difference = Number((100 * 10 ** (-likeness / 20)).toPrecision(2));
  return `differs from the perfectly sharp picture by typically ${difference}\u202f% of white (${likeness.toFixed(1)} dB)`;
}

/** A file name that says what the picture shows and how it was taken. */
export function fileName(parts: readonly string[]): string {
  const plain = parts.map((part) =>
    part
      .toLowerCase()
      .replace(/×/g, 'x')
      .replace(/f\//g, 'f')
      .replace(/[^a-z0-9.]+/g, '-')
      .replace(/^-+|-+$/g, ''),
  );
  return `${plain.filter((part) => part !== '').join('_')}.png`;
}
