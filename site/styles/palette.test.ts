import { converter, wcagContrast } from 'culori';
import { describe, expect, test } from 'vitest';
import { dichromats, dichromatsEncoded, leastDistance, trichromat } from '#tests/support/eyes.ts';
import { dark, light, paletteCss, print, type Palette } from './palette.ts';

/** Least OKLab distance between two marks, or a mark and the ink, in any of the four eyes. Reached: 0.115 by day, 0.120 by night. */
const apart = 0.11;

/** The same with the simulation applied to encoded values. Reached: 0.077 by day, 0.093 by night. */
const apartEncoded = 0.07;

/** The accent is no quantity, but a handle in it lies among them. Reached: 0.054. */
const accentApart = 0.05;

const onEvery = ({ ground, paper, lit }: Palette) => [ground, paper, lit];

function leastContrast(colours: readonly string[], surfaces: readonly string[]): number {
  return Math.min(...colours.flatMap((colour) => surfaces.map((surface) => wcagContrast(colour, surface))));
}

describe.each([
  ['light', light],
  ['dark', dark],
  ['print', print],
])('the %s palette', (_, palette) => {
  const { ink, quiet, accent, onAccent, line, hatch, caution, good, marks, ground, paper } = palette;

  test('gives text 4.5:1 on ground, figure paper and highlight', () => {
    expect(leastContrast([ink, quiet, accent, caution, good], onEvery(palette))).toBeGreaterThanOrEqual(4.5);
    expect(wcagContrast(onAccent, accent)).toBeGreaterThanOrEqual(4.5);
  });

  test('gives letters printed in the colour of their quantity 4.5:1 too', () => {
    expect(leastContrast(marks, onEvery(palette))).toBeGreaterThanOrEqual(4.5);
  });

  test('gives lines and hatching 3:1 on ground and figure paper', () => {
    expect(leastContrast([line, hatch], [ground, paper])).toBeGreaterThanOrEqual(3);
  });
});

describe.each([
  ['light', light],
  ['dark', dark],
])('the marks of the %s palette', (_, { marks, ink, accent }) => {
  const eyes = Object.entries({ trichromat, ...dichromats });

  test.each(eyes)('stay apart, and apart from the ink, as a %s sees them', (_eye, eye) => {
    expect(leastDistance([...marks, ink], eye)).toBeGreaterThanOrEqual(apart);
  });

  test.each(Object.entries(dichromatsEncoded))('stay apart for a %s by the harsher reading too', (_eye, eye) => {
    expect(leastDistance([...marks, ink], eye)).toBeGreaterThanOrEqual(apartEncoded);
  });

  test.each(eyes)('leave room for the accent as a %s sees it', (_eye, eye) => {
    expect(leastDistance([...marks, accent], eye)).toBeGreaterThanOrEqual(accentApart);
  });
});

test('each mark keeps its hue from one theme to the other, within 20°', () => {
  const hue = converter('oklch');
  light.marks.forEach((hex, index) => {
    const turn = Math.abs((hue(hex)?.h ?? NaN) - (hue(dark.marks[index] ?? '')?.h ?? NaN));
    expect(Math.min(turn, 360 - turn), hex).toBeLessThanOrEqual(20);
  });
});

test('palette.css is what palette.ts writes', async () => {
  await expect(paletteCss()).toMatchFileSnapshot('./palette.css');
});
