import { expect, it } from 'vitest';
import { expanded, intersection, translated } from './box.ts';

const box = { left: 3, right: 9, top: 5, bottom: 7 };

it('a box is expanded on all sides, or shrunk', () => {
  expect(expanded(box, 2)).toEqual({ left: 1, right: 11, top: 3, bottom: 9 });
  expect(expanded(box, -1)).toEqual({ left: 4, right: 8, top: 6, bottom: 6 });
});

it('two boxes share what lies in both, whichever comes first', () => {
  const other = { left: 0, right: 6, top: 6, bottom: 20 };
  const both = { left: 3, right: 6, top: 6, bottom: 7 };
  expect(intersection(box, other)).toEqual(both);
  expect(intersection(other, box)).toEqual(both);
  const apart = intersection(box, { ...other, left: 10, right: 12 });
  expect(apart.right).toBeLessThanOrEqual(apart.left);
});

it('a box is translated to the right and down', () => {
  expect(translated(box, -3, 4)).toEqual({ left: 0, right: 6, top: 9, bottom: 11 });
});
