import type { Picture } from './picture.ts';
import { requireShape } from './same-shape.ts';

/**
 * Where two pictures differ, and by how much: black where they agree.
 *
 * @returns in one channel the root mean square over the channels of the differences of light. Shown through the tone curve a hundredth of
 *   white is well visible.
 * @throws RangeError for pictures of different shapes
 */
export function errorMap(a: Picture, b: Picture): Picture {
  requireShape(b, a);
  const { columns, rows, channels } = a;
  const size = columns * rows;
  const light = new Float32Array(size);
  for (let at = 0; at < size; at++) {
    let sum = 0;
    for (let place = at; place < channels * size; place += size) sum += (a.light[place]! - b.light[place]!) ** 2;
    light[at] = Math.sqrt(sum / channels);
  }
  return { columns, rows, channels: 1, light };
}
