import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { refractionAngle } from './refraction-angle.formula.ts';

describe('refractionAngle', () => {
  it('is 30° for light that grazes an index of 2', () => {
    const angle = refractionAngle({ incidenceAngle: Math.PI / 2, refractiveIndex: 2 });
    expect(angle).toEqual(closeTo(Math.PI / 6, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('keeps sin θ = n sin θ′', () => {
    const angle = refractionAngle({ incidenceAngle: 0.7, refractiveIndex: 1.33 });
    expect(1.33 * Math.sin(angle)).toEqual(closeTo(Math.sin(0.7), { relative: 1e-14, because: 'a few roundings' }));
  });

  it('leaves light as it is where there is no change of index', () => {
    expect(refractionAngle({ incidenceAngle: 0.5, refractiveIndex: 1 })).toEqual(
      closeTo(0.5, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('refuses an index below 1 and an angle from behind', () => {
    expect(() => refractionAngle({ incidenceAngle: 0.5, refractiveIndex: 0.9 })).toThrow(/refractive-index is 0.9/);
    expect(() => refractionAngle({ incidenceAngle: 2, refractiveIndex: 1.33 })).toThrow(OutOfRange);
  });
});
