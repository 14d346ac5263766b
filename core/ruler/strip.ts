import { lengthOf, lightOfCode, requireLineIn, type GreyPhotograph, type RulerLine } from './photograph.ts';

/** The light along a line and a little to both sides of it, straightened: columns run along the line, rows beside it. */
export interface Strip {
  readonly columns: number;
  /** An odd number: the middle one is the line itself. */
  readonly rows: number;
  /** Between neighbouring columns, pixels of the photograph; rows are one pixel apart. */
  readonly spacing: number;
  /** Linear light from 0 to 1, row by row. */
  readonly light: Float32Array;
}

/**
 * A strip of a photograph along a line.
 *
 * @param photograph see {@link GreyPhotograph}
 * @param line in pixels, both ends within the photograph, two pixels long at least
 * @param reach how far the strip goes to each side of the line, pixels, 0 or above; beyond the photograph its outermost pixels go on
 * @returns read between pixels by bilinear interpolation, which moves nothing sideways
 * @throws RangeError in words for a line or a reach that is none
 */
export function stripAlong(photograph: GreyPhotograph, line: RulerLine, reach: number): Strip {
  requireLineIn(photograph, line);
  const length = lengthOf(line);
  if (!(length >= 2)) throw new RangeError(`the line is ${length} pixels long; accepted: 2 or more`);
  if (!(reach >= 0 && reach <= 1000)) throw new RangeError(`the strip reaches ${reach} pixels; accepted: 0 to 1000`);
  const columns = Math.round(length) + 1;
  const rows = 2 * Math.round(reach) + 1;
  const [alongX, alongY] = [(line.to.x - line.from.x) / length, (line.to.y - line.from.y) / length];
  const spacing = length / (columns - 1);
  const light = new Float32Array(columns * rows);
  for (let row = 0, at = 0; row < rows; row++) {
    const aside = row - (rows - 1) / 2;
    for (let column = 0; column < columns; column++, at++) {
      const along = column * spacing;
      light[at] = lightAt(
        photograph,
        line.from.x + along * alongX - aside * alongY,
        line.from.y + along * alongY + aside * alongX,
      );
    }
  }
  return { columns, rows, spacing, light };
}

function lightAt({ columns, rows, grey }: GreyPhotograph, x: number, y: number): number {
  const [left, top] = [x - 0.5, y - 0.5];
  const [column, row] = [Math.floor(left), Math.floor(top)];
  const [right, down] = [left - column, top - row];
  const c0 = column < 0 ? 0 : column >= columns ? columns - 1 : column;
  const c1 = column < -1 ? 0 : column + 1 >= columns ? columns - 1 : column + 1;
  const r0 = columns * (row < 0 ? 0 : row >= rows ? rows - 1 : row);
  const r1 = columns * (row < -1 ? 0 : row + 1 >= rows ? rows - 1 : row + 1);
  const above = lightOfCode[grey[r0 + c0]!]! * (1 - right) + lightOfCode[grey[r0 + c1]!]! * right;
  const below = lightOfCode[grey[r1 + c0]!]! * (1 - right) + lightOfCode[grey[r1 + c1]!]! * right;
  return above * (1 - down) + below * down;
}

/** The mean over the rows of a strip whose marks lean: row by row shifted by *lean* columns a row about its middle one. */
export function profileOf({ columns, rows, light }: Strip, lean: number): Float64Array {
  const profile = new Float64Array(columns);
  for (let row = 0; row < rows; row++) {
    const shift = lean * (row - (rows - 1) / 2);
    const whole = Math.floor(shift);
    const part = shift - whole;
    const start = row * columns;
    for (let column = 0; column < columns; column++) {
      const from = column + whole;
      const one = light[start + (from < 0 ? 0 : from >= columns ? columns - 1 : from)]!;
      const next = from + 1;
      const other = light[start + (next < 0 ? 0 : next >= columns ? columns - 1 : next)]!;
      profile[column]! += one + part * (other - one);
    }
  }
  for (let column = 0; column < columns; column++) profile[column]! /= rows;
  return profile;
}
