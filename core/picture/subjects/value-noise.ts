import { chanceFrom } from '#core/chance/chance-from.ts';
import { bandLimit } from './canvas.ts';

/** Values at the whole numbers of a plane repeat after so many either way: more than a picture shows cells of what it can resolve. */
const period = 256;

/**
 * Random numbers from 0 to 1 at the whole numbers of a plane, without any order to be seen: a table of them, entered by way of a
 * permutation of its places.
 *
 * Source: Perlin, An image synthesizer, Computer Graphics 19 (1985), 287 (from memory).
 */
function lattice(seed: number): (column: number, row: number) => number {
  const next = chanceFrom(seed);
  const values = Float64Array.from({ length: period }, next);
  const order = Uint8Array.from({ length: period }, (_, place) => place);
  for (let place = period - 1; place > 0; place--) {
    const other = Math.floor(next() * (place + 1));
    [order[place], order[other]] = [order[other]!, order[place]!];
  }
  return (column, row) => values[order[(order[column & (period - 1)]! + row) & (period - 1)]!]!;
}

/** Value noise: random at whole numbers, smooth between, 0 to 1. It remembers the cell it was in, where the next sample mostly is too. */
function valueNoise(seed: number): (x: number, y: number) => number {
  const at = lattice(seed);
  let [column, row] = [NaN, NaN];
  let [topLeft, topRight, bottomLeft, bottomRight] = [0, 0, 0, 0];
  return (x, y) => {
    const left = Math.floor(x);
    const top = Math.floor(y);
    if (left !== column || top !== row) {
      column = left;
      row = top;
      topLeft = at(column, row);
      topRight = at(column + 1, row);
      bottomLeft = at(column, row + 1);
      bottomRight = at(column + 1, row + 1);
    }
    const across = x - column;
    const down = y - row;
    const u = across * across * (3 - 2 * across);
    const v = down * down * (3 - 2 * down);
    return (topLeft * (1 - u) + topRight * u) * (1 - v) + (bottomLeft * (1 - u) + bottomRight * u) * v;
  };
}

/**
 * Noise of many sizes from *coarsest* mm down, each half as large and half as strong as the one before; −1 to 1.
 *
 * What is too fine for the grid is left out, so that another grid samples the same pattern.
 *
 * @returns the noise at a place, mm
 */
export function grain(coarsest: number, pitch: number, seed: number): (x: number, y: number) => number {
  const octaves: {
    readonly size: number;
    readonly strength: number;
    readonly noise: ReturnType<typeof valueNoise>;
  }[] = [];
  for (let octave = 0; octave < 7; octave++) {
    const size = coarsest / 2 ** octave;
    const left = bandLimit(2 * size, pitch);
    if (left === 0) break;
    octaves.push({ size, strength: left * 0.5 ** (octave + 1), noise: valueNoise(seed + octave) });
  }
  return (x, y) => {
    let sum = 0;
    for (const { size, strength, noise } of octaves) sum += strength * (2 * noise(x / size, y / size) - 1);
    return sum;
  };
}
