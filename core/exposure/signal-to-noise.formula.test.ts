import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { signalToNoise } from './signal-to-noise.formula.ts';

/** A bright pixel. */
const bright = { electrons: 10000, readNoise: 3 };

describe('signalToNoise', () => {
  it('is 100 for 10000 electrons and no read noise', () => {
    expect(signalToNoise({ electrons: 10000, readNoise: 0 })).toBe(100);
  });

  it('doubles with four times the light where photons rule', () => {
    expect(signalToNoise({ electrons: 40000, readNoise: 3 })).toEqual(
      closeTo(2 * signalToNoise(bright), { relative: 1e-3, because: 'the read noise is a thousandth of the variance' }),
    );
  });

  it('goes as the light itself where read noise rules', () => {
    expect(signalToNoise({ electrons: 1e-3, readNoise: 3 })).toEqual(
      closeTo(1e-3 / 3, { relative: 1e-4, because: 'photon noise is a ten-thousandth of the variance' }),
    );
  });

  it('refuses a read noise below zero by name', () => {
    expect(() => signalToNoise({ ...bright, readNoise: -1 })).toThrow(OutOfRange);
    expect(() => signalToNoise({ ...bright, readNoise: -1 })).toThrow(/read-noise is -1/);
  });
});
