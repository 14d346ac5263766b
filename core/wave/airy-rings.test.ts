import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { airyDiameter } from './airy-diameter.formula.ts';
import { airyIntensity } from './airy-pattern.ts';
import { airyRings } from './airy-rings.ts';

const green = { wavelength: 0.00055, effectiveFNumber: 16 };

describe('airyRings', () => {
  it('starts with the rim of the Airy disc', () => {
    const rim = airyDiameter(green) / 2;
    expect(airyRings(green, 1).dark).toEqual([closeTo(rim, { relative: 1e-15, because: 'rounding' })]);
  });

  it('finds darkness at every dark ring, and a maximum at every bright one', () => {
    const { dark, bright } = airyRings(green, 60);
    const at = (imageRadius: number) => airyIntensity({ ...green, imageRadius });
    for (const radius of dark) expect(at(radius)).toBeLessThan(1e-30);
    for (const radius of bright) {
      expect(at(radius)).toBeGreaterThan(at(radius * 0.9999));
      expect(at(radius)).toBeGreaterThan(at(radius * 1.0001));
    }
  });

  it('alternates dark and bright, none left out', () => {
    const { dark, bright } = airyRings(green, 200);
    const both = dark.flatMap((radius, k) => [radius, bright[k] as number]);
    expect(both).toEqual([...both].sort((a, b) => a - b));
  });

  it('spaces far rings λ N_w apart', () => {
    const [before, last] = airyRings(green, 1000).dark.slice(-2) as [number, number];
    expect(last - before).toEqual(
      closeTo(0.00055 * 16, { relative: 1e-7, because: 'the spacing departs as 1/(8 k²)' }),
    );
  });

  it('gives empty lists for no rings', () => {
    expect(airyRings(green, 0)).toEqual({ dark: [], bright: [] });
  });

  it('refuses a count that is no count, and an f-number of zero by name', () => {
    for (const count of [-1, 1.5, NaN, Infinity]) expect(() => airyRings(green, count)).toThrow(/number of rings/);
    expect(() => airyRings({ ...green, effectiveFNumber: 0 }, 1)).toThrow(OutOfRange);
  });
});
