import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { surfaceReflectanceP } from './surface-reflectance-p.formula.ts';

describe('surfaceReflectanceP', () => {
  it('is 4 % for glass of index 1.5, squarely', () => {
    const share = surfaceReflectanceP({ incidenceAngle: 0, refractiveIndex: 1.5 });
    expect(share).toEqual(closeTo(0.04, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is nothing where the reflected and the refracted ray stand square to each other', () => {
    const brewster = Math.atan(1.33);
    expect(surfaceReflectanceP({ incidenceAngle: brewster, refractiveIndex: 1.33 })).toBeLessThan(1e-30);
  });

  it('is all of the light at grazing incidence, and none of it without a change of index', () => {
    const grazing = surfaceReflectanceP({ incidenceAngle: Math.PI / 2, refractiveIndex: 1.33 });
    expect(grazing).toEqual(closeTo(1, { relative: 1e-14, because: 'a few roundings' }));
    expect(surfaceReflectanceP({ incidenceAngle: 0.6, refractiveIndex: 1 })).toBe(0);
  });

  it('refuses an angle from behind and an index below 1', () => {
    expect(() => surfaceReflectanceP({ incidenceAngle: 1.6, refractiveIndex: 1.33 })).toThrow(/incidence-angle is 1.6/);
    expect(() => surfaceReflectanceP({ incidenceAngle: 0, refractiveIndex: 0.5 })).toThrow(OutOfRange);
  });
});
