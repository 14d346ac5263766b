import { describe, expect, it } from 'vitest';
import { pathPoints } from '#tests/support/path-points.ts';
import { clippedPath, clipLine, rayOnSheet } from './rays-on-sheet.ts';
import type { SheetPlace } from './sheet-place.ts';

const window = { left: 0, right: 100, top: 0, bottom: 50 };

describe('lines on a sheet', () => {
  it('are whole inside, cut at its edges, and gone outside', () => {
    expect(clipLine([10, 10], [20, 20], window)).toEqual([
      [10, 10],
      [20, 20],
    ]);
    expect(clipLine([-100, 25], [200, 25], window)).toEqual([
      [0, 25],
      [100, 25],
    ]);
    expect(clipLine([-10, 60], [110, 80], window)).toBeNull();
  });

  it('hang together where they stay inside and start anew where they come back', () => {
    expect(
      clippedPath(
        [
          [10, 10],
          [20, 20],
          [30, 10],
        ],
        window,
      ),
    ).toBe('M10 10L20 20L30 10');
    expect(
      clippedPath(
        [
          [10, 40],
          [20, 60],
          [30, 40],
        ],
        window,
      ),
    ).toBe('M10 40L15 50M25 50L30 40');
  });
});

describe('a ray on a sheet', () => {
  const place: SheetPlace = {
    pixelsPerMillimetre: 2,
    sensorX: 400,
    axisY: 100,
    top: 0,
    bottom: 200,
    width: 420,
    subjectX: 30,
    breakX: 100,
    x: (z) => 400 - 2 * z,
    y: (y) => 100 - 2 * y,
    half: (height) => ({ half: 2 * height, cut: false }),
  };
  const ray = {
    points: [
      { z: 0, y: 0 },
      { z: 50, y: 10 },
      { z: 1050, y: 0 },
    ],
    slope: -0.01,
  };

  it('keeps its own slope on both sides of a break, and none of it stands in the break', () => {
    const points = pathPoints(rayOnSheet(ray, place, 1050));
    expect(points[0]).toEqual({ x: 400, y: 100 });
    const lens = points[1]!;
    const atBreak = points[2]!;
    expect(lens).toEqual({ x: 300, y: 80 });
    expect(atBreak.x).toBe(109);
    expect(atBreak.y).toBeCloseTo(80 + 0.01 * 191, 1);
    const subject = points.at(-2)!;
    expect(subject).toEqual({ x: 30, y: 100 });
    expect(points.at(-1)!.x).toBe(91);
    expect(points.at(-1)!.y).toBeCloseTo(100 - 0.01 * 61, 1);
  });

  it('runs on to the edge of the sheet where it comes from infinity', () => {
    const parallel = {
      points: [
        { z: 0, y: 0 },
        { z: 50, y: 10 },
      ],
      slope: 0,
    };
    expect(pathPoints(rayOnSheet(parallel, place, null)).at(-1)).toEqual({ x: 4, y: 80 });
  });
});
