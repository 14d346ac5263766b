import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { lightingRatio } from './lighting-ratio.formula.ts';

describe('lightingRatio', () => {
  it('is 3 for 300 lx on the one side and 100 lx on the other', () => {
    expect(lightingRatio({ litSideIlluminance: 300, shadowSideIlluminance: 100 })).toBe(3);
  });

  it('stays the same when all lights are twice as bright', () => {
    const given = { litSideIlluminance: 710, shadowSideIlluminance: 90 };
    const twice = { litSideIlluminance: 1420, shadowSideIlluminance: 180 };
    expect(lightingRatio(twice)).toBe(lightingRatio(given));
  });

  it('is without limit where the shadow side gets no light', () => {
    expect(lightingRatio({ litSideIlluminance: 300, shadowSideIlluminance: 0 })).toBe(Infinity);
  });

  it('refuses a lit side that is dark', () => {
    expect(() => lightingRatio({ litSideIlluminance: 0, shadowSideIlluminance: 0 })).toThrow(OutOfRange);
    expect(() => lightingRatio({ litSideIlluminance: 0, shadowSideIlluminance: 0 })).toThrow(
      /lit-side.illuminance is 0/,
    );
  });
});
