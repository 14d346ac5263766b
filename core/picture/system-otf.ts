import type { Filter } from '#core/fourier/filter.ts';
import { sinc } from '#core/fourier/sinc.ts';
import type { RadialOtf } from './radial-otf.ts';

/** What is done to light between the scene and the pixels' values, on a grid of the sensor. */
export interface SystemBlur {
  /** millimetres on the sensor from one place of the grid to the next */
  readonly spacing: number;
  /** side of the square that a pixel averages over, mm */
  readonly pixel: number;
  /** side of the square that the samples of the scene have been averaged over already, mm; 0 if they are points */
  readonly averaged: number;
  readonly motion?: { readonly width: number; readonly angle: number };
  /** absent: perfect optics, pixels alone */
  readonly optics?: RadialOtf;
}

/** The optical transfer function of the whole system, optics × pixels × movement, on the frequencies of a plane of columns × rows. */
export function systemOtf(blur: SystemBlur, columns: number, rows: number): Filter {
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
    box: {
      acrossColumns: phases(columns, Math.PI * width * Math.cos(angle) * perColumn),
      acrossRows: phases(rows, Math.PI * width * Math.sin(angle) * perRow),
    },
  };
}

/** The highest frequency on a grid, in the direction of its diagonal. */
export const cornerFrequency = (spacing: number) => Math.SQRT1_2 / spacing;

function boxAt({ pixel, averaged }: SystemBlur, frequency: number): number {
  return sinc(Math.PI * frequency * pixel) / sinc(Math.PI * frequency * averaged);
}

function phases(count: number, each: number): Float64Array {
  return Float64Array.from({ length: count }, (_, k) => (2 * k > count ? k - count : k) * each);
}
