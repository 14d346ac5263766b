import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { ringsOnALens, stopsLost, whichLensGainsMore } from '#tests/support/example-families.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { workingNumbers } from './working.ts';

const lens = { subject: 'bay leaf', 'focal-length': 50, 'focus-magnification': 0.15 };
const withRings = { ...lens, 'first-ring.extension': 12, 'second-ring.extension': 36 };

describe('workingNumbers', () => {
  it('gives each step its sentence and every number of its formula', () => {
    const [added, magnified, ...more] = workingNumbers(ringsOnALens, withRings);
    expect(more).toEqual([]);
    expect(added).toEqual({ note: '12\u202fmm and 36\u202fmm make 48\u202fmm.', numbers: { extension: 48 } });
    expect(magnified!.note).toBe('The lens’s own part is added once.');
    expect(magnified!.formula?.gives).toBe('magnification');
    expect(magnified!.numbers).toEqual({
      'focus-magnification': 0.15,
      extension: 48,
      'focal-length': 50,
      magnification: closeTo(1.11, { relative: 1e-15, because: '0.15 + 48/50, one rounding' }),
    });
  });

  it('hands the result of a step to the next', () => {
    const [first, second] = workingNumbers(stopsLost, { magnification: 1, 'f-number': 8, 'pupil-magnification': 1 });
    expect(first!.numbers['effective-f-number']).toBe(16);
    expect(second!.numbers).toEqual({ 'effective-f-number': 16, 'f-number': 8, 'light-loss': 2 });
  });

  it('may use one formula twice, each step with its own numbers', () => {
    const steps = workingNumbers(whichLensGainsMore, {
      extension: 36,
      'short.focal-length': 36,
      'long.focal-length': 72,
    });
    expect(steps.map(({ numbers }) => numbers['magnification'])).toEqual([1, 0.5]);
  });

  it('refuses a working that lacks a number, by its name', () => {
    expect(() => workingNumbers({ ...ringsOnALens, working: ringsOnALens.working.slice(1) }, withRings)).toThrow(
      OutOfRange,
    );
    expect(() => workingNumbers(ringsOnALens, lens)).toThrow('{first-ring.extension} is not known');
  });
});
