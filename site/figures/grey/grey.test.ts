import { describe, expect, it } from 'vitest';
import { greyLevel, paper } from './grey.ts';

/** Light that a level gives on a screen of the sRGB curve, by the curve's own definition (IEC 61966-2-1, from memory). */
const lightOf = (level: number) => {
  const coded = level / 255;
  return coded <= 0.04045 ? coded / 12.92 : ((coded + 0.055) / 1.055) ** 2.4;
};

describe('greyLevel', () => {
  it('gives half the light for every stop, to the nearest level', () => {
    for (let stops = 0; stops <= 7; stops++) {
      const level = greyLevel(paper, stops);
      const wanted = paper * 2 ** -stops;
      expect(wanted).toBeGreaterThan(lightOf(level - 0.5));
      expect(wanted).toBeLessThan(lightOf(level + 0.5));
    }
  });

  it('stays between black and white', () => {
    expect(greyLevel(paper, 30)).toBe(0);
    expect(greyLevel(paper, -1)).toBe(255);
  });
});
