import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pathPoints } from '#tests/support/path-points.ts';
import { shortPath } from './short-path.ts';

test('a path is written from point to point', () => {
  expect(shortPath('M10.5 20L11.5 20.5L12 20.5 12 0.25L12.75 0.5Z')).toBe('m10.5 20 1 .5h.5v-20.25l.75.25z');
  expect(shortPath('M1 2h3v-5')).toBe('m1 2h3v-5');
});

test('what follows a closed outline begins where that began', () => {
  expect(shortPath('M10 10H20V20ZL15 5M0 0V1')).toBe('m10 10h10v10zl5-5m-15-5v1');
});

test('arcs keep their shape', () => {
  expect(shortPath('M76.24 170.09a0.41 1.28 0 0 1 0 2.56A10 10 0 0 0 80 170')).toBe(
    'm76.24 170.09a.41 1.28 0 0 1 0 2.56 10 10 0 0 0 3.76-2.65',
  );
});

test('what is no path stays as it is', () => {
  for (const data of ['none', 'M1', 'M1 2L', 'M1 2Z3', '12']) expect(shortPath(data)).toBe(data);
});

test('goes through the same points', () => {
  const at = fc.integer({ min: -99999, max: 99999 }).map((hundredths) => hundredths / 100);
  const step = fc.oneof(
    fc.tuple(fc.constantFrom('M', 'L', 'm', 'l'), at, at),
    fc.tuple(fc.constantFrom('H', 'V', 'h', 'v'), at),
  );
  fc.assert(
    fc.property(fc.array(step, { minLength: 1 }), (steps) => {
      const data = `M0 0${steps.map(([command, ...numbers]) => command + numbers.join(' ')).join('')}`;
      const points = (path: string) =>
        pathPoints(path).map(({ x, y }) => [x.toFixed(2), y.toFixed(2)].join().replaceAll('-0.00', '0.00'));
      expect(points(shortPath(data))).toEqual(points(data));
    }),
  );
});
