import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { studentTails } from './student-tails.ts';

describe('studentTails', () => {
  it.each([
    [12.7062, 1],
    [4.30265, 2],
    [2.776445, 4],
    [2.570582, 5],
    [2.228139, 10],
  ])('is one in twenty for t = %f with %i degrees of freedom', (t, freedom) => {
    expect(studentTails(t, freedom)).toEqual(closeTo(0.05, { relative: 1e-5, because: 'tables print six figures' }));
    expect(studentTails(-t, freedom)).toBe(studentTails(t, freedom));
  });

  it('is certain at 0, falls all the way, and is that of the bell curve for many', () => {
    expect(studentTails(0, 3)).toBe(1);
    expect(studentTails(3, 7)).toBeLessThan(studentTails(2, 7));
    expect(studentTails(1.959964, 100_000)).toEqual(closeTo(0.05, { relative: 1e-4, because: '1/ν' }));
  });

  it('refuses what is no t and no number of degrees', () => {
    expect(() => studentTails(NaN, 3)).toThrow(/t is NaN/);
    expect(() => studentTails(1, 0)).toThrow(/0 degrees/);
    expect(() => studentTails(1, 1.5)).toThrow(/1.5 degrees/);
    expect(() => studentTails(1, 1e30)).toThrow(/1e\+30 degrees/);
  });
});
