import type { Picture, Shape } from '../picture.ts';
import { requireShape } from '../same-shape.ts';
import { localContrast } from './contrast.ts';
import { addExpanded, type LevelSize, levelSizes, reduceLevel } from './pyramid.ts';
import { coveredBy, resampled } from './resampled.ts';

/** Contrast that nobody sees, a thousandth of white squared: where no frame has more, they all count alike. */
const unseen = 1e-6;
/** Where a frame shows nothing of the subject it counts as if there were that part of it: less than any other, yet more than nothing. */
const outside = 1e-3;

/** One level of the picture being merged. */
interface Level {
  /** A plane a channel: details times weights, added up, in units of the largest weight so far. */
  readonly sum: readonly Float32Array[];
  /** The weights, added up, in the same units. */
  readonly weight: Float32Array;
  /** The largest contrast so far. */
  readonly best: Float32Array;
}

/**
 * Merges the frames of a stack into one picture, each place from the frames that show most there. Frames are taken one by one and not
 * kept, so memory does not grow with their number.
 *
 * On each level of a Laplacian pyramid the details of all frames are averaged with weights (contrast + 10⁻⁶)⁴, see {@link localContrast}.
 *
 * @throws RangeError for a picture of another shape, for one that holds what is not a number, and for a result of no frames
 *
 * Assumes frames equally exposed. What no frame shows sharply stays as they show it: soft where the step is too large, and smeared
 * where an edge out of focus hides it.
 * Derived in [README](README.md#local-contrast).
 *
 * @example frames.forEach((frame, k) => merge.add(frame, scaleOf(views[k], reference)))
 */
export class Merge {
  readonly #shape: Shape;
  readonly #sizes: readonly LevelSize[];
  readonly #levels: readonly Level[];
  /** The pyramid of the frame just added: planes of each channel. */
  readonly #frame: readonly (readonly Float32Array[])[];
  readonly #contrast: readonly Float32Array[];
  readonly #spare: readonly [Float32Array, Float32Array];
  #count = 0;

  constructor(columns: number, rows: number, channels: 1 | 3) {
    this.#shape = { columns, rows, channels };
    this.#sizes = levelSizes(columns, rows);
    const plane = (size: LevelSize) => new Float32Array(size.columns * size.rows);
    const planes = (size: LevelSize) => Array.from({ length: channels }, () => plane(size));
    this.#levels = this.#sizes.map((size) => ({ sum: planes(size), weight: plane(size), best: plane(size) }));
    this.#frame = Array.from({ length: channels }, () => this.#sizes.map(plane));
    this.#contrast = this.#sizes.map(plane);
    this.#spare = [plane({ columns, rows }), plane({ columns, rows })];
  }

  /**
   * Takes one more frame.
   *
   * @param scale how many times larger details are in it than they shall be in the result: `scaleOf`, `estimateScale`, or 1 to leave
   *   the frame as it is, right or not
   */
  add(picture: Picture, scale: number): void {
    const { light } = resampled(requireShape(picture, this.#shape), scale);
    const { columns, rows } = this.#shape;
    const [squares, spare] = this.#spare;
    this.#frame.forEach((levels, channel) => {
      levels[0]!.set(light.subarray(channel * columns * rows, (channel + 1) * columns * rows));
      for (let level = 0; level < levels.length - 1; level++) {
        reduceLevel(levels[level]!, this.#sizes[level]!, levels[level + 1]!, spare);
        addExpanded(levels[level]!, this.#sizes[level]!, levels[level + 1]!, spare, -1);
      }
      // Whatever is not a number has spread to the last level.
      if (!levels.at(-1)!.every(Number.isFinite))
        throw new RangeError('a frame of the stack holds what is not a finite number');
    });
    localContrast(this.#frame, this.#sizes, this.#contrast, squares, spare);
    for (const [level, size] of this.#sizes.entries()) this.#lay(level, size, scale);
    this.#count += 1;
  }

  /** Adds the frame's details on one level to those of the frames before. */
  #lay(level: number, { columns, rows }: LevelSize, scale: number): void {
    const { sum, weight, best } = this.#levels[level]!;
    const details = this.#frame.map((levels) => levels[level]!);
    const contrast = this.#contrast[level]!;
    const across = seenOn(level, this.#shape.columns, columns, scale);
    const down = seenOn(level, this.#shape.rows, rows, scale);
    for (let row = 0, at = 0; row < rows; row++) {
      const inRow = row >= down.first && row < down.end;
      for (let column = 0; column < columns; column++, at++) {
        const isSeen = inRow && column >= across.first && column < across.end;
        const here = isSeen ? contrast[at]! + unseen : unseen * outside;
        const before = best[at]!;
        if (here > before) {
          const kept = (before / here) ** 4;
          weight[at] = weight[at]! * kept + 1;
          for (let channel = 0; channel < sum.length; channel++)
            sum[channel]![at] = sum[channel]![at]! * kept + details[channel]![at]!;
          best[at] = here;
        } else {
          const share = (here / before) ** 4;
          weight[at]! += share;
          for (let channel = 0; channel < sum.length; channel++) sum[channel]![at]! += share * details[channel]![at]!;
        }
      }
    }
  }

  /** The frames so far as one picture. More may be added after it. */
  result(): Picture {
    if (this.#count === 0) throw new RangeError('no frame has been added, so there is nothing to merge; one is enough');
    const { columns, rows, channels } = this.#shape;
    const light = new Float32Array(columns * rows * channels);
    for (let channel = 0; channel < channels; channel++) {
      let above: Float32Array | undefined;
      for (let level = this.#sizes.length - 1; level >= 0; level--) {
        const { sum, weight } = this.#levels[level]!;
        const plane = sum[channel]!.map((value, at) => value / weight[at]!);
        if (above) addExpanded(plane, this.#sizes[level]!, above, this.#spare[0], 1);
        above = plane;
      }
      light.set(above!, channel * columns * rows);
    }
    return { columns, rows, channels, light };
  }
}

/** The columns or rows of a level that are made of what a frame covers alone: each looks two of its own widths around itself. */
function seenOn(level: number, length: number, ofLevel: number, scale: number) {
  const { first, end } = coveredBy(length, scale);
  if (first === 0) return { first: 0, end: ofLevel };
  const width = 2 ** level;
  return { first: Math.ceil(first / width) + 2, end: Math.floor((end - 1) / width) - 1 };
}
