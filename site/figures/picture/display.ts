import type { Rendered, Pixels } from './messages.ts';

/** What stands beside the picture, and how. */
export type Beside = 'nothing' | 'sharp' | 'aside';
export const arrangements = ['side-by-side', 'divided', 'difference', 'enlarged'] as const;
export type Arrangement = (typeof arrangements)[number];

/** How many times the enlarged part is larger than it is in the whole picture: no more, for a halo is seen by its edge, and it is wide. */
export const enlargement = 1.5;

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

/**
 * The part of a picture, one *enlargement*-th of its width and height, in which it differs most from the other: where *difference* is lightest in all.
 * Parts are tried a quarter of their own size apart. Pixels of the picture.
 */
export function mostDifferent({ columns, rows, rgba }: Pixels): Area {
  const [width, height] = [Math.ceil(columns / enlargement), Math.ceil(rows / enlargement)];
  // Sums from the top left corner: those of any rectangle follow from its four corners.
  const sums = new Float64Array((columns + 1) * (rows + 1));
  const at = (x: number, y: number) => y * (columns + 1) + x;
  for (let y = 0; y < rows; y++) {
    for (let x = 0; x < columns; x++) {
      const pixel = 4 * (y * columns + x);
      const light = rgba[pixel]! + rgba[pixel + 1]! + rgba[pixel + 2]!;
      sums[at(x + 1, y + 1)] = light + sums[at(x, y + 1)]! + sums[at(x + 1, y)]! - sums[at(x, y)]!;
    }
  }
  let best: Area = { x: 0, y: 0, width, height };
  let most = -1;
  for (let y = 0; y + height <= rows; y += Math.max(1, height >> 2)) {
    for (let x = 0; x + width <= columns; x += Math.max(1, width >> 2)) {
      const [right, bottom] = [x + width, y + height];
      const sum = sums[at(right, bottom)]! - sums[at(x, bottom)]! - sums[at(right, y)]! + sums[at(x, y)]!;
      if (sum <= most) continue;
      most = sum;
      best = { x, y, width, height };
    }
  }
  return best;
}

/** A stripe all across a picture, shares of its height from the top. */
export interface Stripe {
  readonly from: number;
  readonly to: number;
}

/**
 * The stripes in which a picture differs from the other: where the lightness of *difference*, row by row and evened out over a fortieth of the height, is
 * more than half-way up from where it is least to where it is most. None where it is nearly alike all over, nor stripes thinner than a fortieth.
 */
export function stripesOf({ columns, rows, rgba }: Pixels): readonly Stripe[] {
  const reach = Math.max(1, Math.round(rows / 80));
  const light = Array.from({ length: rows }, (_, y) => {
    let sum = 0;
    for (let at = 4 * y * columns; at < 4 * (y + 1) * columns; at += 4) sum += rgba[at + 1]!;
    return sum / columns;
  });
  const even = light.map((_, y) => {
    const near = light.slice(Math.max(0, y - reach), y + reach + 1);
    return near.reduce((a, b) => a + b) / near.length;
  });
  const [least, most] = [Math.min(...even), Math.max(...even)];
  if (most < 1.5 * least + 1) return [];
  const isIn = even.map((one) => one > (least + most) / 2);
  const stripes: Stripe[] = [];
  for (let y = 0; y < rows; y++) {
    if (!isIn[y] || isIn[y - 1]) continue;
    let end = y;
    while (isIn[end]) end++;
    if (end - y > 2 * reach) stripes.push({ from: y / rows, to: end / rows });
  }
  return stripes;
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
