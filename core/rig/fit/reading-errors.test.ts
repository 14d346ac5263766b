import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { FaultyPhotograph } from './photograph.ts';
import { leastShare, magnificationErrors, unitError } from './reading-errors.ts';

const photograph = { fieldWidth: 72, fieldWidthError: 0.072, sensorWidth: 36, extension: 0 };

describe('magnificationErrors', () => {
  it('puts the error of the reading and the least share together as squares', () => {
    expect(magnificationErrors([photograph])![0]).toEqual(
      closeTo(0.5 * Math.sqrt(1e-6 + leastShare ** 2), { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('says nothing where one photograph does not say how well it was read', () => {
    expect(magnificationErrors([photograph, { fieldWidth: 72, sensorWidth: 36, extension: 0 }])).toBeNull();
  });

  it.each([{ fieldWidth: 0 }, { fieldWidthError: NaN }, { sensorWidth: Infinity }])('refuses %o', (wrong) => {
    expect(() => magnificationErrors([{ ...photograph, ...wrong }])).toThrow(FaultyPhotograph);
  });
});

describe('unitError', () => {
  it('is the scatter, but no less than 1 where errors are told', () => {
    expect([unitError(0.3, false), unitError(0.3, true), unitError(2, true)]).toEqual([0.3, 1, 2]);
    expect([unitError(null, false), unitError(null, true)]).toEqual([null, 1]);
  });

  it('refuses a scatter that is no number', () => {
    expect(() => unitError(NaN, true)).toThrow(/the scatter is NaN/);
  });
});
