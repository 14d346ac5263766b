import { expect, it } from 'vitest';
import { bumps, planesOf, slices, slopeAndBall, view } from './picture-speed.ts';

it('bumps have slices as large as the picture, as many as are allowed', () => {
  const planes = planesOf(bumps(4), view, slices);
  expect(planes).toHaveLength(slices);
  for (const [columns, rows] of planes) {
    expect(columns).toBeGreaterThanOrEqual(view.columns);
    expect(rows).toBeGreaterThanOrEqual(view.rows);
  }
});

it('a slope has slices that are bands, and the ball before it some of its own', () => {
  const planes = planesOf(slopeAndBall(4), view, slices);
  expect(planes.length).toBeGreaterThan(slices);
  expect(planes.filter(([, rows]) => rows < view.rows / 2).length).toBeGreaterThan(20);
});
