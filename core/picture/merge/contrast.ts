import { type LevelSize, reduceLevel } from './pyramid.ts';

/**
 * How much there is to see at each place of each level of a pyramid: the squares of its details around it, and those of all finer levels.
 *
 * e_l = smooth(sum over channels of details²) + half(e_{l−1}); for the last level, which has no details, the second term alone
 *
 * A blur leaves coarse details almost as they are and takes the fine ones away. So the fine ones, where there are any, decide about the coarse.
 *
 * @param levels of each channel
 * @param contrast a plane a level; filled
 * @param squares as large as the first level; overwritten
 * @param spare as large as the first level; overwritten
 *
 * Derived in [README](README.md#local-contrast).
 */
export function localContrast(
  levels: readonly (readonly Float32Array[])[],
  sizes: readonly LevelSize[],
  contrast: readonly Float32Array[],
  squares: Float32Array,
  spare: Float32Array,
): void {
  sizes.forEach((size, level) => {
    const here = contrast[level]!;
    const count = here.length;
    if (level > 0) reduceLevel(contrast[level - 1]!, sizes[level - 1]!, here, spare);
    else here.fill(0);
    if (level === sizes.length - 1) return;
    squares.fill(0, 0, count);
    for (const channel of levels) {
      const details = channel[level]!;
      for (let at = 0; at < count; at++) squares[at]! += details[at]! * details[at]!;
    }
    smooth(squares, size, spare);
    smooth(squares, size, spare);
    for (let at = 0; at < count; at++) here[at]! += squares[at]!;
  });
}

/** (1 4 6 4 1)/16 either way, in place; at its rim a plane goes on as it ends. */
function smooth(plane: Float32Array, { columns, rows }: LevelSize, spare: Float32Array): void {
  for (let row = 0; row < rows; row++) {
    const from = row * columns;
    const last = columns - 1;
    for (let x = 0; x < columns; x++) {
      const a = plane[from + (x > 1 ? x - 2 : 0)]!;
      const b = plane[from + (x > 0 ? x - 1 : 0)]!;
      const c = plane[from + (x < last ? x + 1 : last)]!;
      const d = plane[from + (x < last - 1 ? x + 2 : last)]!;
      spare[from + x] = (a + d + 4 * (b + c) + 6 * plane[from + x]!) / 16;
    }
  }
  const last = rows - 1;
  for (let row = 0; row < rows; row++) {
    const a = Math.max(0, row - 2) * columns;
    const b = Math.max(0, row - 1) * columns;
    const c = Math.min(last, row + 1) * columns;
    const d = Math.min(last, row + 2) * columns;
    const at = row * columns;
    for (let x = 0; x < columns; x++)
      plane[at + x] = (spare[a + x]! + spare[d + x]! + 4 * (spare[b + x]! + spare[c + x]!) + 6 * spare[at + x]!) / 16;
  }
}
