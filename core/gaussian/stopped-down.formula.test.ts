import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { entrancePupil } from './entrance-pupil.formula.ts';
import { stoppedDown } from './stopped-down.formula.ts';

describe('stoppedDown', () => {
  it('is four stops from f/2 to f/8', () => {
    expect(stoppedDown({ fNumber: 8, maxAperture: 2 })).toBe(4);
  });

  it('halves the area of the opening with each stop', () => {
    const [open, set] = [1.8, 6.3];
    const area = (fNumber: number) => entrancePupil({ focalLength: 50, fNumber }) ** 2;
    const stops = stoppedDown({ fNumber: set, maxAperture: open });
    expect(area(set) / area(open)).toEqual(closeTo(2 ** -stops, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is nothing wide open', () => {
    expect(stoppedDown({ fNumber: 1.8, maxAperture: 1.8 })).toBe(0);
  });

  it('refuses a maximum aperture of zero by name', () => {
    const refused = () => stoppedDown({ fNumber: 8, maxAperture: 0 });
    expect(refused).toThrow(OutOfRange);
    expect(refused).toThrow(/max-aperture is 0/);
  });
});
