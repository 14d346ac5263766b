import { lanesFor, type Scratch } from './fft.ts';
import type { RadialTransfer } from './transfer.ts';

/** What is done to light between the scene and the pixels' values, on a grid of the sensor. */
export interface Blur {
  /** millimetres on the sensor from one place of the grid to the next */
  readonly spacing: number;
  /** side of the square that a pixel averages over, mm */
  readonly pixel: number;
  /** side of the square that the samples of the scene have been averaged over already, mm; 0 if they are points */
  readonly averaged: number;
  readonly motion?: { readonly width: number; readonly angle: number };
  /** absent: perfect optics, pixels alone */
  readonly optics?: RadialTransfer;
}

/** A real transfer on the frequencies of a plane of columns × rows. Made by {@link dampingOf}. */
export interface Damping {
  readonly columns: number;
  readonly rows: number;
  /** the quarter of frequencies that are not negative, the factor 1/(columns rows) of the inverse transform included */
  readonly quarter: Float32Array;
  /** half the phase across the movement at every column and row, where there is one */
  readonly motion?: { readonly acrossColumns: Float64Array; readonly acrossRows: Float64Array };
}

/** Optics, pixels and movement on the frequencies of a plane that is transformed as columns × rows. */
export function dampingOf(blur: Blur, columns: number, rows: number): Damping {
  const across = Math.floor(columns / 2) + 1;
  const down = Math.floor(rows / 2) + 1;
  const quarter = new Float32Array(across * down);
  const perColumn = 1 / (columns * blur.spacing);
  const perRow = 1 / (rows * blur.spacing);
  const boxes = Float64Array.from({ length: across }, (_, k) => boxAt(blur, k * perColumn));
  const scale = 1 / (columns * rows);
  const { step, values } = blur.optics ?? { step: 1, values: undefined };
  for (let row = 0, at = 0; row < down; row++) {
    const frequency = row * perRow;
    const box = boxAt(blur, frequency) * scale;
    for (let column = 0; column < across; column++, at++) {
      let optics = 1;
      if (values) {
        const place = Math.sqrt(frequency * frequency + (column * perColumn) ** 2) / step;
        const below = Math.trunc(place);
        const start = values[below]!;
        optics = start + (place - below) * (values[below + 1]! - start);
      }
      quarter[at] = optics * box * boxes[column]!;
    }
  }
  if (!blur.motion) return { columns, rows, quarter };
  const { width, angle } = blur.motion;
  return {
    columns,
    rows,
    quarter,
    motion: {
      acrossColumns: phases(columns, Math.PI * width * Math.cos(angle) * perColumn),
      acrossRows: phases(rows, Math.PI * width * Math.sin(angle) * perRow),
    },
  };
}

/** The highest frequency on a grid, in the direction of its diagonal. */
export const reachOf = (spacing: number) => Math.SQRT1_2 / spacing;

function boxAt({ pixel, averaged }: Blur, frequency: number): number {
  return sinc(Math.PI * frequency * pixel) / sinc(Math.PI * frequency * averaged);
}

const sinc = (a: number) => (Math.abs(a) < 1e-6 ? 1 : Math.sin(a) / a);

function phases(count: number, each: number): Float64Array {
  return Float64Array.from({ length: count }, (_, k) => (2 * k > count ? k - count : k) * each);
}

/** Multiplies *count* transformed columns from *first* on, side by side in the scratch. */
export function damp(
  { columns, rows, quarter, motion }: Damping,
  scratch: Scratch,
  first: number,
  count: number,
): void {
  const across = Math.floor(columns / 2) + 1;
  const { re, im } = scratch;
  const lanes = lanesFor(count);
  const end = first + count;
  const middle = Math.min(end, across);
  for (let row = 0; row < rows; row++) {
    const from = (2 * row > rows ? rows - row : row) * across;
    let at = row * lanes;
    if (motion) {
      for (let column = first; column < end; column++, at++) {
        const moved = sinc(motion.acrossColumns[column]! + motion.acrossRows[row]!);
        const factor = moved * quarter[from + (column < across ? column : columns - column)]!;
        re[at] = re[at]! * factor;
        im[at] = im[at]! * factor;
      }
      continue;
    }
    for (let k = from + first; k < from + middle; k++, at++) {
      re[at] = re[at]! * quarter[k]!;
      im[at] = im[at]! * quarter[k]!;
    }
    for (let k = from + columns - Math.max(first, across); k > from + columns - end; k--, at++) {
      re[at] = re[at]! * quarter[k]!;
      im[at] = im[at]! * quarter[k]!;
    }
  }
}
