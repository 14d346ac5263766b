import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { imageBeyondFocus, magnificationBeyondFocus } from './newton.ts';

const lens = { focalLength: 50, subjectBeyondFocus: 100 };

describe('imageBeyondFocus', () => {
  it('is 25 mm for a subject 100 mm beyond the focus of a 50 mm lens', () => {
    expect(imageBeyondFocus(lens)).toBe(25);
  });

  it('gives the subject its distance back when light runs the other way', () => {
    expect(imageBeyondFocus({ ...lens, subjectBeyondFocus: imageBeyondFocus(lens) })).toBe(100);
  });

  it('tends to nothing, the infinity setting, as the subject goes away', () => {
    expect(imageBeyondFocus({ ...lens, subjectBeyondFocus: 1e12 })).toBe(2.5e-9);
  });

  it('refuses a subject at the focus by name', () => {
    expect(() => imageBeyondFocus({ ...lens, subjectBeyondFocus: 0 })).toThrow(OutOfRange);
    expect(() => imageBeyondFocus({ ...lens, subjectBeyondFocus: 0 })).toThrow(/subject-distance is 0/);
  });
});

describe('magnificationBeyondFocus', () => {
  it("is f/x and x'/f alike", () => {
    expect(magnificationBeyondFocus(lens)).toBe(0.5);
    expect(imageBeyondFocus(lens) / lens.focalLength).toBe(0.5);
  });

  it('is life size one focal length beyond the focus', () => {
    expect(magnificationBeyondFocus({ ...lens, subjectBeyondFocus: 50 })).toBe(1);
  });

  it('refuses a negative focal length by name', () => {
    expect(() => magnificationBeyondFocus({ ...lens, focalLength: -50 })).toThrow(/focal-length is -50/);
  });
});
