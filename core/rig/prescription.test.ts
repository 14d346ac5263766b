import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { prescriptions } from '#tests/support/prescriptions.ts';
import { sag } from './prescription.ts';
import { surfacesAt } from './surfaces-at.ts';

describe('sag', () => {
  it('is the depth of a circle: 1 mm for radius 13 at height 5', () => {
    expect(sag(13, 5)).toBe(1);
    expect(sag(-13, 5)).toBe(-1);
  });

  it('is nothing for a flat surface', () => {
    expect(sag(Infinity, 20)).toBe(0);
  });

  it('tends to y²/(2r) near the axis, without losing digits', () => {
    expect(sag(50, 1e-6)).toEqual(closeTo(1e-14, { relative: 1e-12, because: 'the next term is (y/r)²/4' }));
  });

  it('is the whole radius at its end', () => {
    expect(sag(20, 20)).toBe(20);
  });
});

describe('surfacesAt', () => {
  const macro = prescriptions['macro-60-us-5751485'];

  it('is what is listed at a listed setting', () => {
    const thickness = (at: number) => surfacesAt(macro, at)[11]!.thickness;
    expect(thickness(0)).toBe(1.23344);
    expect(thickness(0.5)).toBe(21.7738);
    expect(thickness(1)).toBe(44.1392);
  });

  it('moves smoothly in between and leaves what is fixed alone', () => {
    const between = surfacesAt(macro, 0.25);
    // The parabola through 1.23344, 21.7738 and 44.1392 at a quarter: 3/8, 3/4 and −1/8 of them.
    const quarter = 0.375 * 1.23344 + 0.75 * 21.7738 - 0.125 * 44.1392;
    expect(between[11]!.thickness).toEqual(closeTo(quarter, { relative: 1e-14, because: 'rounding' }));
    expect(between[0]).toBe(macro.surfaces[0]);
  });

  it('is the list itself for a lens that has no settings', () => {
    expect(surfacesAt(prescriptions['triplet-50'], 0)).toEqual(prescriptions['triplet-50'].surfaces);
  });

  it('refuses what is beyond its settings, below infinity and no number, by name', () => {
    for (const at of [1.001, -0.001, NaN, Infinity]) {
      expect(() => surfacesAt(macro, at), `${at}`).toThrow(OutOfRange);
      expect(() => surfacesAt(macro, at), `${at}`).toThrow(`focus-magnification is ${at}; accepted: from 0 to 1,`);
    }
    expect(() => surfacesAt(prescriptions['triplet-50'], NaN)).toThrow(/focus-magnification is NaN/);
  });
});
