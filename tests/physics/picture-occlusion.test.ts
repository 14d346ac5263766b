import { describe, expect, it } from 'vitest';
import type { Picture } from '#core/picture/picture.ts';
import { renderPicture } from '#core/picture/render.ts';
import { sharpPicture } from '#core/picture/sharp-picture.ts';
import { blurAt, scaleAt, type View } from '#core/picture/view.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lifeSize } from '#tests/support/in-view.ts';
import { smallScene, type At } from '#tests/support/small-scenes.ts';

const grid = { columns: 400, rows: 60, pitch: 0.004 };
const wide: View = { ...lifeSize, effectiveFNumber: 8, pitch: 0.004, columns: 321, rows: 41 };
const edgeAt = 20.5;

/** Left of the edge a white sheet 3 mm above a dark one, which lies there under it too; they meet nowhere. */
const leftOf: At = (x) => (x < edgeAt ? 1 : 0);
const sheets = (near: number, far: number) =>
  smallScene(grid, { light: () => near, height: 3, coverage: leftOf }, { light: () => far, height: 0 });

const middleRow = ({ columns, light }: Picture) => Array.from(light.subarray(20 * columns, 21 * columns));

/** Share of a disc of diameter 1 that lies left of a chord at *x* from its middle. */
function discLeftOf(x: number): number {
  const c = Math.max(-1, Math.min(1, 2 * x));
  return 1 - (Math.acos(c) - c * Math.sqrt(1 - c * c)) / Math.PI;
}

/** Where the near edge is seen, in columns of the picture. */
const edgeColumn = (view: View) => 160 + (edgeAt * grid.pitch * scaleAt(view, 3)) / view.pitch;

describe('a near edge', () => {
  it('out of focus lets through the share of the aperture that a ray sees past it, the far sheet sharp', () => {
    const view = { ...wide, focusHeight: 0 };
    const row = middleRow(renderPicture(sheets(1, 0.2), view));
    const blur = Math.abs(blurAt(view, 3)) / view.pitch;
    expect(blur).toBeGreaterThan(90);
    for (let column = 60; column < 270; column++) {
      const closed = discLeftOf((edgeColumn(view) - column) / blur);
      expect(row[column], `column ${column}`).toEqual(
        closeTo(0.2 + 0.8 * closed, {
          absolute: 0.01,
          because: 'geometry knows no diffraction at the rim of its disc',
        }),
      );
    }
  });

  it('in focus takes no light from what lies far out of focus behind it', () => {
    const view = { ...wide, focusHeight: 3 };
    const dark = middleRow(renderPicture(sheets(0, 1), view));
    const alone = middleRow(renderPicture(sheets(0, 0), view));
    const bright = middleRow(renderPicture(sheets(1, 0), view));
    const edge = Math.floor(edgeColumn(view));
    for (let column = 20; column < edge - 12; column++) {
      expect(alone[column]).toBeCloseTo(0, 5);
      // What light there is comes round the edge by diffraction: as much as the edge's own light falls short there.
      expect(dark[column], `column ${column}`).toEqual(
        closeTo(1 - bright[column]!, { absolute: 0.003, because: 'light and dark changed places' }),
      );
      expect(dark[column]).toBeLessThan(0.03);
    }
  });

  it('in one surface with what is behind it occludes as well', () => {
    const view = { ...wide, focusHeight: 3 };
    const heights = smallScene(grid, { light: (x) => (x < edgeAt ? 0 : 1), height: (x) => (x < edgeAt ? 3 : 0) });
    const row = middleRow(renderPicture(heights, view));
    const edge = Math.floor(edgeColumn(view));
    expect(Math.max(...row.slice(20, edge - 14))).toBeLessThan(0.03);
    expect(Math.min(...row.slice(edge + 14, 300))).toBeGreaterThan(0.95);
  });

  it('shows through its blur what is hidden behind it', () => {
    const striped = smallScene(
      grid,
      { light: () => 0, height: 3, coverage: leftOf },
      { light: (x) => (x > 0 && x < edgeAt ? 1 : 0), height: 0 },
    );
    const view = { ...wide, focusHeight: 0 };
    // Twenty hidden columns, all behind the near sheet seen from the middle of the pupil, past which part of the pupil sees.
    const hidden = 160 + 10;
    expect(middleRow(sharpPicture(striped, view))[hidden]).toBeCloseTo(0, 3);
    expect(middleRow(renderPicture(striped, view))[hidden]).toBeGreaterThan(0.3);
  });
});

describe('a slope', () => {
  it('lets nothing of a black surface below it through where its slices meet', () => {
    const slope = smallScene(
      { columns: 400, rows: 300, pitch: 0.004 },
      { light: () => 0.5, height: (x) => 3 + x / 250 },
      { light: () => 0, height: 0 },
    );
    const { light } = renderPicture(slope, { ...wide, columns: 257, rows: 129, focusHeight: 2.4 }, { slices: 12 });
    for (const value of light)
      expect(value).toEqual(
        closeTo(0.5, {
          absolute: 0.005,
          because: 'twelve slices share a slope among them by a hundredth',
        }),
      );
  });
});
