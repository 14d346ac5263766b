import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { airyIntensity } from './airy-pattern.ts';
import { airyTable } from './airy-table.ts';

describe('airyTable', () => {
  it('ends at its last dark ring, and has the middle and 83.8 % within the first ring', () => {
    const { dark, intensities, energies } = airyTable(1, 64);
    expect(dark).toEqual([closeTo(1.21966989, { absolute: 1e-7, because: 'rounded to seven decimals' })]);
    expect([intensities[0], intensities[64], energies[0]]).toEqual([1, 0, 0]);
    expect(energies[64]).toEqual(closeTo(0.838, { absolute: 5e-4, because: 'the book prints three figures' }));
  });

  it('never lets the energy fall, nor any intensity below nothing', () => {
    const { intensities, energies } = airyTable(8, 132);
    energies.forEach((energy, k) => expect(energy).toBeGreaterThanOrEqual(energies[k - 1] ?? 0));
    expect(Math.min(...intensities)).toBe(0);
  });

  it('keeps straight lines between intensities within 0.3 % of the middle’s', () => {
    const { dark, intensities } = airyTable(8, 132);
    const step = dark[7]! / 132;
    intensities.slice(1).forEach((after, k) => {
      const between = airyIntensity({ imageRadius: (k + 0.5) * step, wavelength: 1, effectiveFNumber: 1 });
      const because = 'a sixteenth of λ N_w from one to the next';
      expect((after + intensities[k]!) / 2).toEqual(closeTo(between, { absolute: 3e-3, because }));
    });
  });

  it('refuses a number of rings or of steps that is none', () => {
    expect(() => airyTable(0, 10)).toThrow(/rings is 0/);
    expect(() => airyTable(1, 1.5)).toThrow(/steps is 1.5/);
  });
});
