import { describe, expect, it } from 'vitest';
import { chanceAt, chanceFrom, mixedBits, seedFromText } from './chance.ts';

describe('seedFromText', () => {
  it.each([
    ['', 0x811c9dc5],
    ['a', 0xe40c292c],
    ['foobar', 0xbf9cf968],
  ])('gives for “%s” the value in the test vectors of FNV-1a (draft-eastlake-fnv)', (text, hash) => {
    expect(seedFromText(text)).toBe(hash);
  });
});

describe('mixedBits', () => {
  it.each([
    [0, 0],
    [1, 0x514e28b7],
    [0xffffffff, 0x81f16f39],
  ])(
    'gives for %i what MurmurHash3_x86_32 gives for no bytes with that seed (published test vectors)',
    (bits, hash) => {
      expect(mixedBits(bits)).toBe(hash);
    },
  );
});

describe('chanceFrom', () => {
  it('is the mixed count of steps of 2³² over the golden ratio', () => {
    const chance = chanceFrom(1);
    const step = Math.floor(2 ** 32 / ((1 + Math.sqrt(5)) / 2));
    expect(chance()).toBe(mixedBits(1 + step) / 2 ** 32);
    expect(chance()).toBe(mixedBits((1 + 2 * step) % 2 ** 32) / 2 ** 32);
  });

  it('spreads the first number of neighbouring seeds evenly', () => {
    const tenths = Array.from({ length: 10 }, () => 0);
    for (let seed = 1; seed <= 10_000; seed++) tenths[Math.floor(10 * chanceFrom(seed)())]!++;
    // Five standard deviations of a count of 1000 out of 10 000.
    for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });
});

describe('chanceAt', () => {
  const places = Array.from({ length: 10_000 }, (_, place) => [place % 100, Math.floor(place / 100)] as const);

  it('is the same for the same place and seed, and another for every other', () => {
    const all = new Set(places.map(([column, row]) => chanceAt(column, row, 5)));
    expect(chanceAt(37, -4, 5)).toBe(chanceAt(37, -4, 5));
    // Among 10 000 of 2³² numbers 0.01 pairs are alike by chance.
    expect(all.size).toBeGreaterThanOrEqual(9999);
    expect(chanceAt(37, -4, 6)).not.toBe(chanceAt(37, -4, 5));
    expect(chanceAt(-4, 37, 5)).not.toBe(chanceAt(37, -4, 5));
  });

  it('spreads evenly, and neighbours have nothing to do with each other', () => {
    const tenths = Array.from({ length: 10 }, () => 0);
    let [across, down] = [0, 0];
    for (const [column, row] of places) {
      const here = chanceAt(column, row, 1) - 0.5;
      tenths[Math.floor(10 * (here + 0.5))]!++;
      across += here * (chanceAt(column + 1, row, 1) - 0.5);
      down += here * (chanceAt(column, row + 1, 1) - 0.5);
    }
    // Five standard deviations of a count of 1000 out of 10 000.
    for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(150);
    // Of the sum of 10 000 products of independent numbers, each of variance 1/12: five times 100/12.
    expect(Math.abs(across)).toBeLessThan(42);
    expect(Math.abs(down)).toBeLessThan(42);
  });
});
