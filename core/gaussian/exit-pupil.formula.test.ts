import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { entrancePupil } from './entrance-pupil.formula.ts';
import { exitPupil } from './exit-pupil.formula.ts';

describe('exitPupil', () => {
  it('is 6 mm wide for a 28 mm lens at f/7 whose pupils are as 1.5 to 1', () => {
    expect(exitPupil({ pupilMagnification: 1.5, focalLength: 28, fNumber: 7 })).toBe(6);
  });

  it('is the entrance pupil of the same lens turned round', () => {
    const lens = { focalLength: 50, fNumber: 8 };
    const turned = exitPupil({ ...lens, pupilMagnification: 1.1 }) / 1.1;
    expect(turned).toEqual(closeTo(entrancePupil(lens), { relative: 1e-15, because: 'two roundings' }));
  });

  it('is as wide as the entrance pupil of a symmetrical lens', () => {
    expect(exitPupil({ pupilMagnification: 1, focalLength: 50, fNumber: 2 })).toBe(25);
  });

  it('refuses pupils of which one is nothing, by name', () => {
    const refused = () => exitPupil({ pupilMagnification: 0, focalLength: 50, fNumber: 8 });
    expect(refused).toThrow(OutOfRange);
    expect(refused).toThrow(/pupil-magnification is 0/);
  });
});
