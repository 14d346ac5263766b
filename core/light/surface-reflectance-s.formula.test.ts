import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { surfaceReflectanceS } from './surface-reflectance-s.formula.ts';

describe('surfaceReflectanceS', () => {
  it('is 4 % for glass of index 1.5, squarely', () => {
    const share = surfaceReflectanceS({ incidenceAngle: 0, refractiveIndex: 1.5 });
    expect(share).toEqual(closeTo(0.04, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('only grows with the angle', () => {
    const steps = Array.from({ length: 90 }, (_, index) => (index * Math.PI) / 180);
    const shares = steps.map((incidenceAngle) => surfaceReflectanceS({ incidenceAngle, refractiveIndex: 1.33 }));
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  });

  it('is all of the light at grazing incidence, and none of it without a change of index', () => {
    const grazing = surfaceReflectanceS({ incidenceAngle: Math.PI / 2, refractiveIndex: 1.33 });
    expect(grazing).toEqual(closeTo(1, { relative: 1e-14, because: 'a few roundings' }));
    expect(surfaceReflectanceS({ incidenceAngle: 0.6, refractiveIndex: 1 })).toBe(0);
  });

  it('refuses an angle from behind and an index below 1', () => {
    expect(() => surfaceReflectanceS({ incidenceAngle: 1.6, refractiveIndex: 1.33 })).toThrow(/incidence-angle is 1.6/);
    expect(() => surfaceReflectanceS({ incidenceAngle: 0, refractiveIndex: 0.5 })).toThrow(OutOfRange);
  });
});
