import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { rulerLying } from './ruler.ts';

const grid = { columns: 400, rows: 40, pitch: 0.05, seed: 1 };

/** Light along its middle row, as a share of the lightest. */
function along(tilt: number) {
  const { surfaces } = rulerLying({ spacing: 1, tilt, reach: 10 }).scene(grid);
  const row = 20 * grid.columns;
  return { light: surfaces[0]!.albedo.subarray(row, row + 400), height: surfaces[0]!.height.subarray(row, row + 400) };
}

/** Places of the darkest samples, mm from the middle. */
function marksIn(light: Float32Array): number[] {
  return [...light].flatMap((value, at) =>
    at > 0 && at < 399 && value < 0.35 && value <= light[at - 1]! && value < light[at + 1]!
      ? [(at + 0.5 - 200) * 0.05]
      : [],
  );
}

describe('rulerLying', () => {
  it('has a mark at every whole millimetre', () => {
    const marks = marksIn(along(0).light);
    expect(marks.length).toBeGreaterThan(17);
    for (const mark of marks)
      expect(mark).toEqual(closeTo(Math.round(mark), { absolute: 0.051, because: 'one sample' }));
  });

  it('is shorter by the cosine as it leans, and rises by the sine', () => {
    const tilt = Math.PI / 3.5;
    const { light, height } = along(tilt);
    for (const mark of marksIn(light)) {
      const whole = Math.round(mark / Math.cos(tilt));
      expect(mark).toEqual(closeTo(whole * Math.cos(tilt), { absolute: 0.051, because: 'one sample' }));
    }
    // Its right end is the deeper one: by x tan τ.
    expect(height[150]! - height[250]!).toEqual(
      closeTo(5 * Math.tan(tilt), { relative: 1e-5, because: 'single precision' }),
    );
  });

  it('refuses to lean until it is seen along itself, and marks without distance', () => {
    expect(() => rulerLying({ spacing: 1, tilt: 1.2, reach: 10 })).toThrow(OutOfRange);
    expect(() => rulerLying({ spacing: 0, tilt: 0, reach: 10 })).toThrow(OutOfRange);
  });
});
