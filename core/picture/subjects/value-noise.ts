import { bandLimit } from './canvas.ts';

/** A number from 0 to 1 for two whole numbers and a seed, without any order to be seen. */
function hash(column: number, row: number, seed: number): number {
  let mixed = Math.imul(column, 374761393) ^ Math.imul(row, 668265263) ^ Math.imul(seed, 1274126177);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 1103515245);
  mixed = Math.imul(mixed ^ (mixed >>> 16), 2246822519);
  return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296;
}

/** Random numbers from 0 to 1 in a row that the seed decides. */
export function sequence(seed: number): () => number {
  let step = 0;
  return () => hash(step++, 7919, seed);
}

/** Value noise: random at whole numbers, smooth between, 0 to 1. It remembers the cell it was in, where the next sample mostly is too. */
function valueNoise(seed: number): (x: number, y: number) => number {
  let [column, row] = [NaN, NaN];
  let [topLeft, topRight, bottomLeft, bottomRight] = [0, 0, 0, 0];
  return (x, y) => {
    const left = Math.floor(x);
    const top = Math.floor(y);
    if (left !== column || top !== row) {
      column = left;
      row = top;
      topLeft = hash(column, row, seed);
      topRight = hash(column + 1, row, seed);
      bottomLeft = hash(column, row + 1, seed);
      bottomRight = hash(column + 1, row + 1, seed);
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
    readonly period: number;
    readonly strength: number;
    readonly noise: ReturnType<typeof valueNoise>;
  }[] = [];
  for (let octave = 0; octave < 7; octave++) {
    const period = coarsest / 2 ** octave;
    const left = bandLimit(2 * period, pitch);
    if (left === 0) break;
    octaves.push({ period, strength: left * 0.5 ** (octave + 1), noise: valueNoise(seed + octave) });
  }
  return (x, y) => {
    let sum = 0;
    for (const { period, strength, noise } of octaves) sum += strength * (2 * noise(x / period, y / period) - 1);
    return sum;
  };
}
