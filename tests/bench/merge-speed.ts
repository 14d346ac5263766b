import { Merge } from '#core/picture/merge/merge.ts';
import type { Picture } from '#core/picture/picture.ts';
import { percentile } from './percentile.ts';

/** What it takes to merge a stack of pictures of three channels, on one core. */
export interface MergeSpeed {
  readonly frames: number;
  /** Milliseconds of one frame added, median */
  readonly add: number;
  /** Milliseconds of the result */
  readonly result: number;
  /** Megabytes held in arrays at the most, over what was held before the first stack; what earlier stacks left uncollected counts too */
  readonly memory: number;
}

const [columns, rows] = [768, 512];

/** A frame sharp in one band of it: stripes there, even grey elsewhere. */
function frame(index: number, frames: number): Picture {
  const light = new Float32Array(3 * columns * rows).fill(0.5);
  const [top, bottom] = [index, index + 1].map((at) => Math.floor((at * rows) / frames)) as [number, number];
  for (let channel = 0; channel < 3; channel++) {
    for (let row = top; row < bottom; row++) {
      const from = channel * columns * rows + row * columns;
      for (let column = 0; column < columns; column++) light[from + column] = column % 8 < 4 ? 0.2 : 0.8;
    }
  }
  return { columns, rows, channels: 3, light };
}

const held = () => process.memoryUsage().arrayBuffers / 1e6;

function mergeOf(frames: number, before: number): MergeSpeed {
  const merge = new Merge(columns, rows, 3);
  const times: number[] = [];
  let most = 0;
  for (let index = 0; index < frames; index++) {
    const picture = frame(index, frames);
    const start = performance.now();
    merge.add(picture, 1 + index * 1e-4);
    times.push(performance.now() - start);
    most = Math.max(most, held() - before);
  }
  const start = performance.now();
  merge.result();
  return { frames, add: percentile(times, 0.5), result: performance.now() - start, memory: most };
}

/** Merges stacks of more and more frames: memory must not grow with them beyond what waits to be collected. */
export function mergeSpeed(): readonly MergeSpeed[] {
  const before = held();
  return [10, 40, 80].map((frames) => mergeOf(frames, before));
}
