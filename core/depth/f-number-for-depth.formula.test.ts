import { describe, expect, it } from 'vitest';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { depthOfFieldCloseUp } from './depth-of-field-close-up.formula.ts';
import { fNumberForDepth } from './f-number-for-depth.formula.ts';

/** Life size with pupils alike, 0.8 mm to be sharp. */
const petal = { magnification: 1, subjectDepth: 0.8, circleOfConfusion: 0.02, pupilMagnification: 1 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('fNumberForDepth', () => {
  it('is f/10 for 0.8 mm at life size', () => {
    expect(fNumberForDepth(petal)).toEqual(closeTo(10, rounding));
  });

  it('gives back the depth of field that it was asked for', () => {
    for (const magnification of [0.1, 0.5, 2, 5]) {
      const given = { ...petal, magnification, pupilMagnification: 0.85 };
      const fNumber = fNumberForDepth(given);
      const depth = depthOfFieldCloseUp({ ...given, effectiveFNumber: effectiveFNumber({ ...given, fNumber }) });
      expect(depth).toEqual(closeTo(0.8, rounding));
    }
  });

  it('is 0 for a subject without depth: any will do', () => {
    expect(fNumberForDepth({ ...petal, subjectDepth: 0 })).toBe(0);
  });

  it('refuses a depth below zero by name', () => {
    expect(() => fNumberForDepth({ ...petal, subjectDepth: -1 })).toThrow(OutOfRange);
    expect(() => fNumberForDepth({ ...petal, subjectDepth: -1 })).toThrow(/subject-depth is -1/);
  });
});
