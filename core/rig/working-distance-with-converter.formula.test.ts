import { describe, expect, it } from 'vitest';
import { workingDistance } from '#core/gaussian/working-distance.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { workingDistanceWithConverter } from './working-distance-with-converter.formula.ts';

const example = { focalLength: 72.5, converterFactor: 2, magnification: 2, frontPrincipalDepth: 24 };

describe('workingDistanceWithConverter', () => {
  it('is 121 mm for a lens of 72.5 mm at life size on a 2 times converter', () => {
    expect(workingDistanceWithConverter(example)).toBe(121);
  });

  it('is that of the lens alone, whatever the converter', () => {
    for (const converterFactor of [1.4, 2, 3]) {
      const magnification = 0.7 * converterFactor;
      const alone = workingDistance({
        subjectDistance: 72.5 * (1 + 1 / 0.7),
        frontPrincipalDepth: example.frontPrincipalDepth,
      });
      expect(workingDistanceWithConverter({ ...example, converterFactor, magnification })).toBeCloseTo(alone, 10);
    }
  });

  it('comes down to one focal length from H as the magnification grows', () => {
    expect(workingDistanceWithConverter({ ...example, magnification: 1e12 })).toBeCloseTo(48.5, 9);
  });

  it('refuses a factor of one by name', () => {
    expect(() => workingDistanceWithConverter({ ...example, converterFactor: 1 })).toThrow(OutOfRange);
    expect(() => workingDistanceWithConverter({ ...example, converterFactor: 1 })).toThrow(/converter-factor is 1/);
  });
});
