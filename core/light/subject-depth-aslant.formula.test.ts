import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { subjectDepthAslant } from './subject-depth-aslant.formula.ts';

describe('subjectDepthAslant', () => {
  it('is as deep as the field is wide at 45°', () => {
    expect(subjectDepthAslant({ fieldWidth: 72, incidenceAngle: Math.PI / 4 })).toEqual(
      closeTo(72, { relative: 1e-15, because: 'a few roundings' }),
    );
  });

  it('goes as the width', () => {
    const one = subjectDepthAslant({ fieldWidth: 10, incidenceAngle: 0.5 });
    expect(subjectDepthAslant({ fieldWidth: 30, incidenceAngle: 0.5 })).toEqual(
      closeTo(3 * one, { relative: 1e-15, because: 'a few roundings' }),
    );
  });

  it('is nothing where the subject is seen squarely', () => {
    expect(subjectDepthAslant({ fieldWidth: 72, incidenceAngle: 0 })).toBe(0);
  });

  it('refuses a subject seen edge-on by name', () => {
    expect(() => subjectDepthAslant({ fieldWidth: 72, incidenceAngle: Math.PI / 2 })).toThrow(OutOfRange);
    expect(() => subjectDepthAslant({ fieldWidth: 72, incidenceAngle: Math.PI / 2 })).toThrow(/less than a right/);
    expect(() => subjectDepthAslant({ fieldWidth: 0, incidenceAngle: 0.2 })).toThrow(/field-width is 0/);
  });
});
