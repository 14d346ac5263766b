import { expect, it } from 'vitest';
import { fastLength } from '#core/fourier/fast-length.ts';
import { planeFor } from './blur-slice.ts';

const picture = { left: 30, right: 130, top: 20, bottom: 100 };

// What is wanted: the box and its blur, as far as they are in the picture.
it.each([
  [{ left: 50, right: 60, top: 40, bottom: 70 }, 5, { left: 45, top: 35, across: 20, down: 40 }],
  [{ left: 10, right: 60, top: 5, bottom: 70 }, 20, { left: 10, top: 5, across: 90, down: 105 }],
  [{ left: 100, right: 150, top: 40, bottom: 118 }, 20, { left: 80, top: 20, across: 90, down: 118 }],
])('a slice in %o, blurred by %d, is blurred on a plane no larger than that takes', (box, radius, plane) => {
  const { left, top, columns, rows } = planeFor(box, radius, picture);
  expect([left, top]).toEqual([plane.left, plane.top]);
  expect([columns, rows]).toEqual([fastLength(plane.across), fastLength(plane.down)]);
});

it('what runs out of a plane comes in again beside what is wanted, on either side', () => {
  for (let first = 0; first < 140; first += 7)
    for (const [length, radius] of [
      [3, 2],
      [20, 9],
      [60, 40],
    ] as const) {
      const box = { left: first, right: first + length, top: first, bottom: first + length };
      const wanted = { left: Math.max(30, first - radius), right: Math.min(130, first + length + radius) };
      if (wanted.right <= wanted.left) continue;
      const { columns } = planeFor(box, radius, picture);
      expect(box.right + radius - columns).toBeLessThanOrEqual(wanted.left);
      expect(box.left - radius + columns).toBeGreaterThanOrEqual(wanted.right);
    }
});
