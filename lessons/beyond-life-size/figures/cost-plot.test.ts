import { expect, it } from 'vitest';
import { costPlotLayout, type CostPoint } from './cost-plot.ts';

const road = (key: string, magnification: number, workingDistance: number): CostPoint => ({
  key,
  name: key,
  short: `${key} + rings`,
  magnification,
  workingDistance,
  effectiveFNumber: 20,
});
const roads = [road('one', 2, 100), road('two', 5, 30), road('three', 5.1, 29), road('four', 18, 60)];
const walls = [
  { width: 1229, height: 557, text: 28.8, small: 28.8 },
  { width: 374, height: 420, text: 12.5, small: 10.6 },
];

it.each(walls)('names every road, and what it works at comes last, to be withheld by itself: $width wide', (box) => {
  const { points, labels } = costPlotLayout(roads, undefined, box);
  expect(labels.map(({ key }) => key).sort()).toEqual(points.map(({ key }) => key).sort());
  for (const { key, text, name, cone } of labels) {
    expect(name).toBe(`${key} + rings`);
    expect(['', ', f/20']).toContain(cone);
    expect(name + cone).toBe(text);
  }
  expect(labels.some(({ cone }) => cone !== '')).toBe(true);
});
