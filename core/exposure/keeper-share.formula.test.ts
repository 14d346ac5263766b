import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { erf } from './erf.ts';
import { keeperShare } from './keeper-share.formula.ts';

const camera = { nearLimit: 0.4, farLimit: 0.6, sway: 0.5, focusOffset: 0 };

describe('keeperShare', () => {
  it('is 0.683 for limits of one standard deviation', () => {
    expect(keeperShare({ nearLimit: 1, farLimit: 1, sway: 1, focusOffset: 0 })).toEqual(
      closeTo(0.682689492137, { absolute: 1e-12, because: 'known to twelve decimals' }),
    );
  });

  it('is erf(T/(2√2 σ)) for equal limits', () => {
    expect(keeperShare({ nearLimit: 0.5, farLimit: 0.5, sway: 0.7, focusOffset: 0 })).toEqual(
      closeTo(erf(1 / (2 * Math.SQRT2 * 0.7)), { relative: 1e-15, because: 'one rounding' }),
    );
  });

  it('grows with either limit and falls as the sway grows', () => {
    expect(keeperShare({ ...camera, nearLimit: 0.5 })).toBeGreaterThan(keeperShare(camera));
    expect(keeperShare({ ...camera, farLimit: 0.7 })).toBeGreaterThan(keeperShare(camera));
    expect(keeperShare({ ...camera, sway: 0.6 })).toBeLessThan(keeperShare(camera));
  });

  it('tends to depth over √(2π) σ where the camera sways far', () => {
    expect(keeperShare({ ...camera, sway: 1e4 })).toEqual(
      closeTo(1 / Math.sqrt(2 * Math.PI) / 1e4, { relative: 1e-8, because: 'the bell is flat over the depth' }),
    );
  });

  it('misses nothing on a side without a limit', () => {
    const half = { relative: 1e-15, because: 'one rounding' };
    expect(keeperShare({ ...camera, farLimit: Infinity })).toEqual(
      closeTo((erf(0.4 / (Math.SQRT2 * 0.5)) + 1) / 2, half),
    );
    expect(keeperShare({ ...camera, nearLimit: Infinity, farLimit: Infinity, focusOffset: 7 })).toBe(1);
  });

  it('refuses a limit or a sway of nothing by name', () => {
    expect(() => keeperShare({ ...camera, farLimit: 0 })).toThrow(OutOfRange);
    expect(() => keeperShare({ ...camera, farLimit: 0 })).toThrow(/far-limit is 0/);
    expect(() => keeperShare({ ...camera, nearLimit: NaN })).toThrow(/near-limit is NaN/);
    expect(() => keeperShare({ ...camera, sway: 0 })).toThrow(/sway is 0/);
  });

  it('is what the normal table has between the limits as seen from the mean', () => {
    // Φ(2) − Φ(0) and Φ(3) − Φ(1), as printed tables have them.
    const printed = { absolute: 5e-5, because: 'four figures of a printed table' };
    expect(keeperShare({ nearLimit: 1, farLimit: 1, sway: 1, focusOffset: 1 })).toEqual(closeTo(0.4772, printed));
    expect(keeperShare({ nearLimit: 1, farLimit: 1, sway: 1, focusOffset: -2 })).toEqual(closeTo(0.1573, printed));
  });

  it('is largest with the subject in the middle of the depth, and nothing far from it', () => {
    const at = (focusOffset: number) => keeperShare({ nearLimit: 0.4, farLimit: 0.6, sway: 1, focusOffset });
    expect(at(0.1)).toBeGreaterThan(at(0));
    expect(at(0.1)).toBeGreaterThan(at(0.2));
    expect(at(0.1 + 0.7)).toEqual(closeTo(at(0.1 - 0.7), { relative: 1e-14, because: 'a few roundings' }));
    for (const offset of [20, -20, 1e6]) expect(at(offset)).toBe(0);
  });

  it('refuses an offset that is none', () => {
    expect(() => keeperShare({ nearLimit: 1, farLimit: 1, sway: 1, focusOffset: NaN })).toThrow(OutOfRange);
  });
});
