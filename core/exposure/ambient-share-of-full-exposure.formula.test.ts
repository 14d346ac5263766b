import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { ambientShareOfFullExposure } from './ambient-share-of-full-exposure.formula.ts';
import { ambientShare } from './ambient-share.formula.ts';

describe('ambientShareOfFullExposure', () => {
  it('is an eighth three stops short', () => {
    expect(ambientShareOfFullExposure({ ambientUnderexposure: 3 })).toBe(0.125);
  });

  it('is to ambientShare as the whole is to it with a full flash on top', () => {
    const short = { ambientUnderexposure: 1.3 };
    const full = ambientShareOfFullExposure(short);
    expect(ambientShare(short)).toEqual(closeTo(full / (1 + full), { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is the whole at no shortfall, and more above', () => {
    expect(ambientShareOfFullExposure({ ambientUnderexposure: 0 })).toBe(1);
    expect(ambientShareOfFullExposure({ ambientUnderexposure: -2 })).toBe(4);
  });

  it('refuses a shortfall that is none by name', () => {
    expect(() => ambientShareOfFullExposure({ ambientUnderexposure: NaN })).toThrow(OutOfRange);
    expect(() => ambientShareOfFullExposure({ ambientUnderexposure: -1e5 })).toThrow(
      /ambient-underexposure is -100000/,
    );
  });
});
