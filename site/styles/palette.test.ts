import {
  converter,
  differenceEuclidean,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  wcagContrast,
  type Color,
  type Rgb,
} from 'culori';
import { describe, expect, test } from 'vitest';
import { dark, light, paletteCss, print, type Palette } from './palette.ts';

/** Least OKLab distance between two marks, or a mark and the ink, in any of the four eyes. Reached: 0.102. */
const apart = 0.1;

/** The same when the simulation is applied to the encoded values instead of linear light, a common second reading. Reached: 0.072. */
const apartEncoded = 0.07;

/** The accent is no quantity, but a handle in it lies among them. Reached: 0.054. */
const accentApart = 0.05;

const linearLight = converter('lrgb');
const distance = differenceEuclidean('oklab');

type Eye = (hex: string) => Color;

const clipped = ({ r, g, b }: Pick<Rgb, 'r' | 'g' | 'b'>) => {
  const [red, green, blue] = [r, g, b].map((value) => Math.min(1, Math.max(0, value))) as [number, number, number];
  return { r: red, g: green, b: blue };
};

/** Machado, Oliveira & Fernandes (2009), severity 1; the matrices act on linear light, which culori leaves to its caller. */
const inLinearLight = (simulate: (color: Rgb) => Rgb): Eye => (hex) => {
  const { r, g, b } = linearLight(hex) as { r: number; g: number; b: number };
  return { mode: 'lrgb', ...clipped(simulate({ mode: 'rgb', r, g, b })) };
};

const asEncoded = (simulate: (color: Rgb) => Rgb): Eye => (hex) => ({
  mode: 'rgb',
  ...clipped(simulate(converter('rgb')(hex) as Rgb)),
});

const deficiencies = {
  protan: filterDeficiencyProt(1) as (color: Rgb) => Rgb,
  deutan: filterDeficiencyDeuter(1) as (color: Rgb) => Rgb,
  tritan: filterDeficiencyTrit(1) as (color: Rgb) => Rgb,
};

const normal: Eye = (hex) => linearLight(hex) as Color;

function leastDistance(colours: readonly string[], eye: Eye): number {
  const seen = colours.map(eye);
  return Math.min(...seen.flatMap((one, index) => seen.slice(0, index).map((other) => distance(one, other))));
}

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
  test('stay apart, and apart from the ink, for eyes with three kinds of cones', () => {
    expect(leastDistance([...marks, ink], normal)).toBeGreaterThanOrEqual(apart);
  });

  test.each(Object.entries(deficiencies))('stay apart for %s eyes', (_eye, simulate) => {
    expect(leastDistance([...marks, ink], inLinearLight(simulate))).toBeGreaterThanOrEqual(apart);
    expect(leastDistance([...marks, ink], asEncoded(simulate))).toBeGreaterThanOrEqual(apartEncoded);
  });

  test.each([['normal', normal] as const, ...Object.entries(deficiencies).map(([eye, simulate]) => [eye, inLinearLight(simulate)] as const)])(
    'leave room for the accent in %s eyes',
    (_eye, eye) => {
      expect(leastDistance([...marks, accent], eye)).toBeGreaterThanOrEqual(accentApart);
    },
  );
});

test('each mark keeps its hue from one theme to the other, within a twentieth of a turn', () => {
  const hue = converter('oklch');
  light.marks.forEach((hex, index) => {
    const turn = Math.abs((hue(hex)?.h ?? NaN) - (hue(dark.marks[index] ?? '')?.h ?? NaN));
    expect(Math.min(turn, 360 - turn), hex).toBeLessThanOrEqual(18);
  });
});

test('palette.css is what palette.ts writes', async () => {
  await expect(paletteCss()).toMatchFileSnapshot('./palette.css');
});
