import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { magnificationFromExtension } from './magnification-from-extension.formula.ts';

const lens = { focusMagnification: 0.15, focalLength: 50 };

describe('magnificationFromExtension', () => {
  it('is 0.87 with a 36 mm ring on a 50 mm lens that gives 0.15 by itself', () => {
    expect(magnificationFromExtension({ ...lens, extension: 36 })).toBe(0.87);
  });

  it('adds up over rings: 12 and 24 mm give what 36 mm give', () => {
    const bare = magnificationFromExtension({ ...lens, extension: 0 });
    const gains = [12, 24].map((extension) => magnificationFromExtension({ ...lens, extension }) - bare);
    expect(bare + gains[0]! + gains[1]!).toEqual(
      closeTo(magnificationFromExtension({ ...lens, extension: 36 }), { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is what the lens gives by itself without a ring, and nothing at infinity', () => {
    expect(magnificationFromExtension({ ...lens, extension: 0 })).toBe(0.15);
    expect(magnificationFromExtension({ focusMagnification: 0, extension: 0, focalLength: 50 })).toBe(0);
  });

  it('refuses a negative extension by name', () => {
    expect(() => magnificationFromExtension({ ...lens, extension: -1 })).toThrow(OutOfRange);
    expect(() => magnificationFromExtension({ ...lens, extension: -1 })).toThrow(/extension is -1/);
  });
});
