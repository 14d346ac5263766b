import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { magnificationOfInfinityObjective } from './magnification-of-infinity-objective.formula.ts';

const example = { objectiveMagnification: 10, focalLength: 100, tubeFocalLength: 200 };

describe('magnificationOfInfinityObjective', () => {
  it('is fivefold for a tenfold objective on half the tube lens it was made for', () => {
    expect(magnificationOfInfinityObjective(example)).toBe(5);
  });

  it('doubles with the lens behind it', () => {
    expect(magnificationOfInfinityObjective({ ...example, focalLength: 200 })).toBe(10);
  });

  it('is what is engraved on the tube lens that it was made for', () => {
    expect(magnificationOfInfinityObjective({ ...example, focalLength: 200, tubeFocalLength: 200 })).toBe(10);
  });

  it('refuses a tube lens of zero by name', () => {
    expect(() => magnificationOfInfinityObjective({ ...example, tubeFocalLength: 0 })).toThrow(OutOfRange);
    expect(() => magnificationOfInfinityObjective({ ...example, tubeFocalLength: 0 })).toThrow(
      /tube-focal-length is 0/,
    );
  });
});
