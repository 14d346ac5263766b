import { kept } from './canvas.ts';

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

/** Value noise: random at whole numbers, smooth between, 0 to 1. */
export function valueNoise(x: number, y: number, seed: number): number {
  const [column, row] = [Math.floor(x), Math.floor(y)];
  const [across, down] = [x - column, y - row];
  const [u, v] = [across * across * (3 - 2 * across), down * down * (3 - 2 * down)];
  const top = hash(column, row, seed) * (1 - u) + hash(column + 1, row, seed) * u;
  const bottom = hash(column, row + 1, seed) * (1 - u) + hash(column + 1, row + 1, seed) * u;
  return top * (1 - v) + bottom * v;
}

/**
 * Noise of many sizes from *coarsest* mm down, each half as large and half as strong as the one before; −1 to 1.
 *
 * What is too fine for the grid is left out, so that another grid samples the same pattern.
 */
export function grain(x: number, y: number, coarsest: number, pitch: number, seed: number): number {
  let [sum, strength, period] = [0, 0.5, coarsest];
  for (let octave = 0; octave < 7; octave++) {
    const left = kept(2 * period, pitch);
    if (left === 0) break;
    sum += left * strength * (2 * valueNoise(x / period, y / period, seed + octave) - 1);
    strength /= 2;
    period /= 2;
  }
  return sum;
}
