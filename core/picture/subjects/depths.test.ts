import { describe, expect, it } from 'vitest';
import { heightOfLeaf } from './bay-leaf.ts';
import { heightOfDish } from './drawing-pin.ts';
import { seenThroughDrop } from './drop-on-wire.ts';
import { heightOfPlane } from './frost-crystal.ts';
import { heightOfHead } from './hoverfly-head.ts';
import { heightOfScale } from './slanted-scale.ts';
import { heightOfPaper } from './stamp.ts';
import { subjectOf } from './subjects.ts';

const [columns, rows] = [90, 60];

/** The height of one of a subject's surfaces at every sample that it covers. */
function heights(slug: string, surface: number) {
  const subject = subjectOf(slug);
  const pitch = subject.width / columns;
  const { height, coverage } = subject.scene({ columns, rows, pitch, seed: 3 }).surfaces[surface]!;
  return Array.from(height, (value, at) => ({
    value,
    x: ((at % columns) + 0.5 - columns / 2) * pitch,
    y: (Math.floor(at / columns) + 0.5 - rows / 2) * pitch,
  })).filter((_, at) => coverage[at]! > 0.99);
}

describe('depths are known in closed form', () => {
  it('the slanted scale leans by 45°', () => {
    for (const { value, y } of heights('slanted-scale', 0)) expect(value).toBeCloseTo(heightOfScale(y), 5);
    expect(heightOfScale(1) - heightOfScale(0)).toBe(1);
  });

  it('the pin’s head is a dish', () => {
    for (const { value, x, y } of heights('drawing-pin', 1))
      expect(value).toBeCloseTo(heightOfDish(Math.hypot(x, y)), 5);
  });

  it('the stamp’s paper curls up at its sides', () => {
    for (const { value, x } of heights('stamp', 0)) expect(value).toBeCloseTo(heightOfPaper(x), 5);
  });

  it('the leaf is mirrored and arched, its veins a tenth of a millimetre higher at most', () => {
    const above = heights('bay-leaf', 1).map(({ value, x, y }) => value - heightOfLeaf(x, y));
    expect(Math.min(...above)).toBeCloseTo(0, 5);
    expect(Math.max(...above)).toBeCloseTo(0.1, 2);
  });

  it('the hoverfly’s head is made of ellipsoids, the nearest of them seen', () => {
    for (const { value, x, y } of heights('hoverfly-head', 1)) expect(value).toBeCloseTo(heightOfHead(x, y), 5);
  });

  it('the drop is a sphere', () => {
    const drop = heights('drop-on-wire', 1);
    expect(drop.length).toBeGreaterThan(500);
    for (const { value, x, y } of drop) expect(Math.hypot(x, y - 0.95, value - 10.7)).toBeCloseTo(1.25, 4);
  });

  it('the wire rises from left to right, and is as round as it is thick', () => {
    const above = heights('drop-on-wire', 0).map(({ value, x }) => value - (9.6 + (1.8 * (x + 20)) / 40));
    expect(Math.min(...above)).toBeGreaterThan(-0.03);
    expect(Math.max(...above)).toBeLessThan(0.25);
  });

  it('the crystal’s rods lie in one plane, but for their own thickness', () => {
    for (const { value, x, y } of heights('frost-crystal', 0)) {
      expect(value - heightOfPlane(x, y)).toBeGreaterThan(-0.1);
      expect(value - heightOfPlane(x, y)).toBeLessThan(0.3);
    }
  });
});

describe('the drop', () => {
  it('shows the far background upside down', () => {
    expect(seenThroughDrop(0, 0.4)!.y).toBeLessThan(0);
    expect(seenThroughDrop(0.4, 0)!.x).toBeLessThan(0);
  });

  it('bends rays near its axis as the ball lens of the textbooks: f = n r / (2 (n − 1)) from its middle', () => {
    // Parallel rays meet the axis at f; beyond it they part in proportion. The background lies 10.7 mm behind the middle.
    const focus = (1.333 * 1.25) / (2 * 0.333);
    const height = 1e-4;
    const expected = height * (1 - 10.7 / focus);
    expect(seenThroughDrop(height, 0)!.x / expected).toBeCloseTo(1, 4);
  });
});

it('the catchlight in a round eye moves with the light', () => {
  const subject = subjectOf('hoverfly-head');
  const brightest = (azimuth: number) => {
    const lighting = { azimuth, elevation: 0.8, angularSize: 0.6 };
    const size = columns * rows;
    const { albedo } = subject.scene({ columns, rows, pitch: subject.width / columns, seed: 1, lighting }).surfaces[1]!;
    let [sum, across] = [0, 0];
    for (let at = 0; at < size; at++) {
      // Only the left eye, and only what is as bright as a light.
      if (at % columns >= columns / 2 || albedo[2 * size + at]! < 0.8) continue;
      sum++;
      across += at % columns;
    }
    expect(sum).toBeGreaterThan(0);
    return across / sum;
  };
  expect(brightest(0)).toBeGreaterThan(brightest(Math.PI) + 2);
});
