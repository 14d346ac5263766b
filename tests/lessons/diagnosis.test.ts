import { describe, expect, it } from 'vitest';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { diagnose, mostChance, type Diagnosis, type Enquiry } from '#core/diagnosis/diagnose.ts';
import { routesFrom } from '#core/diagnosis/route.ts';
import { setUps } from '#core/diagnosis/usual.ts';
import type { NumberFamily } from '#core/practice/family.ts';
import { drawProblem } from '#core/practice/problem.ts';
import { isQuantityId, type QuantityName } from '#core/quantity/vocabulary.ts';
import { grounds } from '#site/check/engine.ts';

/** The set-ups that a family of problems speaks of in its question. */
const setUpsOf = ({ working }: NumberFamily): readonly string[] =>
  grounds.formulas.flatMap(({ formula, setUp }) =>
    setUp !== undefined && working.some((step) => step.formula?.tex === formula.tex) ? [setUp] : [],
  );

/** An answer as somebody writes it, with so many figures. */
function written(value: number, figures = 3): Enquiry['answer'] {
  const text = value.toPrecision(figures);
  const place = Math.floor(Math.log10(Math.abs(value))) - figures + 1;
  return { value: Number(text), halfFigure: 0.5 * 10 ** place };
}

const ringAndLens = { 'focal-length': 50, extension: 36, 'f-number': 8 } as const;
const diagnosed = (
  asks: QuantityName,
  answer: number,
  given: Enquiry['given'] = ringAndLens,
  more: Partial<Enquiry> = {},
): Diagnosis => diagnose({ asks, given, answer: written(answer), ...more }, grounds);

describe('set-ups', () => {
  it('are of formulas that there are', () => {
    const ids = new Set(grounds.formulas.map(({ id }) => id));
    expect(Object.keys(setUps).filter((id) => !ids.has(id))).toEqual([]);
  });
});

describe('an answer', () => {
  // By hand: m = 36/50; s = 50 (1 + 1/0.72); N_w = 8 × 1.72; T = 2 × 0.02 × 13.76/0.72²; Airy 2.44 × 0.00055 × 13.76.
  it.each<[QuantityName, number]>([
    ['magnification', 0.72],
    ['working-distance', 119],
    ['effective-f-number', 13.8],
    ['depth-of-field', 1.06],
    ['depth-of-field-close-up', 1.06],
    ['field-width', 50],
    ['airy-diameter', 0.0185],
    ['light-loss', 1.56],
    ['entrance-pupil', 6.25],
  ])('is right: %s %d, of 50 mm on 36 mm of rings at f/8', (asks, answer) => {
    expect(diagnosed(asks, answer).verdict).toBe('right');
  });

  // By hand: 2 log2 8 + log2 125; 2 log2 16 + log2 100; 16² × 12.5/(4096 × 100);
  // √(36² + 24²)/√(23.5² + 15.67²); 2.44 × 0.00055 × 44.
  it.each<[QuantityName, number, Enquiry['given']]>([
    ['exposure-value', 13, { 'f-number': 8, 'exposure-time': 1 / 125 }],
    ['light-value', 14.6, { 'f-number': 16, 'exposure-time': 0.01, iso: 100 }],
    ['exposure-time', 1 / 128, { 'f-number': 16, luminance: 4096, 'reflected-light-constant': 12.5, iso: 100 }],
    ['crop-factor', 1.53, { 'sensor-width': 23.5 }],
    ['airy-diameter', 0.059, { magnification: 1, 'f-number': 22, 'pixel-pitch': 0.004 }],
    // 10/(2 × 0.25); 2 log2 (16/4): 1:1 of the lens becomes 2:1, and 4 × (2 + 2).
    ['effective-f-number', 20, { 'numerical-aperture': 0.25, 'objective-magnification': 10 }],
    ['effective-f-number', 16, { 'converter-factor': 2, 'f-number': 4, 'focus-magnification': 1 }],
    ['light-loss', 4, { 'converter-factor': 2, 'f-number': 4, 'focus-magnification': 1 }],
    // 10 × 105/200, the tube length that is taken and said.
    ['magnification', 5.25, { 'objective-magnification': 10, 'focal-length': 105 }],
  ])('is right by what everybody takes: %s %d', (asks, answer, given) => {
    expect(diagnosed(asks, answer, given)).toMatchObject({ verdict: 'right' });
    expect(diagnosed(asks, answer, given)).not.toHaveProperty('otherWay');
  });

  it('is right for a sensor of four to three whose height nobody has given', () => {
    expect(diagnosed('crop-factor', 2, { 'sensor-width': 17.3 }).verdict).toBe('right');
  });

  // What one would set for a detail of c is not what the lens is set to, and how near the subject is nobody has said.
  it.each<[QuantityName, number, Enquiry['given']]>([
    ['effective-f-number', 8, { 'converter-factor': 2, 'f-number': 4 }],
    ['cutoff-frequency', 114, { 'f-number': 16, wavelength: 0.00055 }],
    ['effective-f-number', 16, { 'f-number': 8 }],
  ])('is not called wrong for a number that was not given: %s %d', (asks, answer, given) => {
    expect(diagnosed(asks, answer, given).verdict).toBe('cannot');
  });

  it('names what it took for granted', () => {
    const found = diagnosed('working-distance', 119);
    if (found.verdict !== 'right') throw new Error(found.verdict);
    expect(found.working.assumed.map(({ quantity }) => quantity)).toEqual(
      expect.arrayContaining(['focus-magnification', 'front-principal-depth']),
    );
  });

  it('takes nothing for granted that was given', () => {
    const found = diagnosed('magnification', 0.87, { ...ringAndLens, 'focus-magnification': 0.15 });
    if (found.verdict !== 'right') throw new Error(found.verdict);
    expect(found.working.assumed).toEqual([]);
    expect(found.working.uses).toContain('focus-magnification');
  });

  it.each<[string, QuantityName, number]>([
    ['the ring and the lens upside down', 'magnification', 50 / 36],
    ['that carried on into the effective f-number', 'effective-f-number', 8 * (1 + 50 / 36)],
    ['the mark for the effective f-number', 'airy-diameter', 2.44 * 0.00055 * 8],
    ['centimetres for millimetres', 'working-distance', 11.944],
    ['another sensor', 'field-width', 23.5 / 0.72],
  ])('shows a slip: %s', (_, asks, answer) => {
    const found = diagnosed(asks, answer, { ...ringAndLens, 'sensor-width': 36 });
    expect(found.verdict).toBe('slip');
    if (found.verdict === 'slip') expect(found.because).toMatch(/^[A-Z].*[.?]$/);
  });

  it('follows from an earlier one that was wrong', () => {
    const found = diagnosed('effective-f-number', 8 * 2.1, ringAndLens, { foundBefore: { magnification: 1.1 } });
    expect(found).toMatchObject({ verdict: 'right', from: 'magnification' });
  });

  it('is off by so much', () => {
    expect(diagnosed('magnification', 0.86)).toMatchObject({ verdict: 'off' });
    expect((diagnosed('magnification', 0.9) as { off: number }).off).toBeCloseTo(0.25, 6);
  });

  it('cannot be told without what it needs, and says what', () => {
    const found = diagnosed('working-distance', 100, { 'f-number': 8 });
    expect(found.verdict).toBe('cannot');
    if (found.verdict === 'cannot') expect(found.missing.length).toBeGreaterThan(0);
    expect(diagnosed('magnification', 1, {}).verdict).toBe('cannot');
  });

  it('about a lens turned round cannot be told without where its H stands', () => {
    // The lens of the reversed lesson: 44 + 4 + 34 are 2.93 times 28 mm.
    const turned = { 'focal-length': 28, 'register-distance': 44, extension: 4 } as const;
    const spoken = { setUps: ['reversed lens'] };
    expect(diagnosed('magnification', 1.93, turned, spoken)).toMatchObject({
      verdict: 'cannot',
      missing: ['front-principal-depth'],
    });
    const known = { ...turned, 'front-principal-depth': 34 };
    expect(diagnosed('magnification', 1.93, known, spoken).verdict).toBe('right');
    // Room is counted from the flange, and whose register is not given.
    expect(diagnosed('working-distance', 42.5, known, spoken).verdict).toBe('cannot');
  });

  it('of room cannot be called wrong while nobody says where H stands, if that can make it right', () => {
    const room = (answer: number, given: Enquiry['given']) => diagnosed('working-distance', answer, given);
    const macro = { 'focal-length': 100, magnification: 1 };
    expect(room(200, macro).verdict).toBe('right');
    expect(room(155, macro)).toMatchObject({ verdict: 'cannot', missing: ['front-principal-depth'], mayBeRight: true });
    expect(room(155, { ...macro, 'front-principal-depth': 45 }).verdict).toBe('right');
    expect(room(155, { ...macro, 'front-principal-depth': 20 }).verdict).toBe('off');
    expect(room(250, macro).verdict).toBe('off');
    expect(room(110, macro).verdict).not.toBe('cannot');
  });

  it.each([
    [0.96, undefined, 'cannot'],
    [0.96, 0.03, 'right'],
    [0.96, 0.02, 'off'],
    [0.64, undefined, 'right'],
    [0.32, undefined, 'slip'],
  ] as const)(
    'of depth depends on a circle that is everybody’s own: %d mm with %s is %s',
    (answer, circle, verdict) => {
      const given = { magnification: 1, 'f-number': 8, 'sensor-width': 36 };
      const all = circle === undefined ? given : { ...given, 'circle-of-confusion': circle };
      expect(diagnosed('depth-of-field', answer, all).verdict).toBe(verdict);
    },
  );

  it('for a flash far away is named as that where light is lost', () => {
    // 18/11, and half of that: at 1:1 two stops are lost.
    const flash = { 'guide-number': 18, 'f-number': 11, magnification: 1 };
    expect(diagnosed('flash-distance', 18000 / 22, flash).verdict).toBe('right');
    const far = diagnosed('flash-distance', 18000 / 11, flash);
    expect(far).toMatchObject({ verdict: 'slip', slip: { id: 'loss-left-out' } });
    const rung = { 'guide-number': 20, 'f-number': 8, 'focal-length': 50, extension: 50 };
    expect(diagnosed('flash-distance', 2500, rung)).toMatchObject({ slip: { id: 'loss-left-out' } });
  });

  it('says that an f-number must be known where none is given', () => {
    expect(diagnosed('effective-f-number', 16, { magnification: 1 })).toMatchObject({
      verdict: 'cannot',
      missing: ['f-number'],
    });
  });

  it('that loses half as many stops counts a doubling of the f-number as one', () => {
    const one = { value: 1, halfFigure: 0.5 };
    const given = { magnification: 1, 'f-number': 8 };
    expect(diagnose({ asks: 'light-loss', given, answer: one }, grounds)).toMatchObject({
      verdict: 'slip',
      slip: { id: 'effective-aperture/stops/f-numbers-as-stops' },
    });
  });

  it('of a number that was given is that number', () => {
    expect(diagnosed('magnification', 0.5, { magnification: 0.5, 'focal-length': 50 }).verdict).toBe('cannot');
  });

  it('written with one figure is not any number', () => {
    expect(
      diagnose({ asks: 'magnification', given: ringAndLens, answer: { value: 1, halfFigure: 0.5 } }, grounds).verdict,
    ).not.toBe('right');
  });
});

/** Families of numbers whose question gives quantities alone. */
const asked = grounds.families.filter(
  (one): one is { lesson: string; family: NumberFamily } =>
    one.family.kind === 'number' &&
    Object.keys(drawProblem(one.family, 1).given).every((name) => isQuantityId(name.slice(name.lastIndexOf('.') + 1))),
);

function enquiryOf(family: NumberFamily, seed: number) {
  const problem = drawProblem(family, seed);
  if (problem.kind !== 'number') throw new Error('no number');
  const given = problem.given as Enquiry['given'];
  return { problem, given, setUps: setUpsOf(family) };
}

describe('the problems of the lessons, asked in numbers alone', () => {
  const counts = { problems: 0, right: 0, slips: 0, named: 0, told: 0 };

  // One is enough for each: what a family's mistakes give is proved for 200 of its problems elsewhere.
  it('are answered alike, and their mistakes recognised', () => {
    for (const { family } of asked) {
      const { problem, given, setUps: spoken } = enquiryOf(family, 3);
      const first = routesFrom(given, grounds, spoken).get(family.asks)?.[0];
      counts.problems += 1;
      if (!first || !(Math.abs(first.value - problem.answer) <= 1e-3 * Math.abs(first.value))) continue;
      counts.right += 1;
      for (const mistake of problem.mistakes) {
        if (!(Math.abs(mistake.value) > 0)) continue;
        counts.slips += 1;
        const found = diagnose(
          { asks: family.asks, given, answer: written(mistake.value, 4), setUps: spoken },
          grounds,
        );
        if (found.verdict === 'slip') counts.named += 1;
        if (found.verdict === 'slip' && found.because === mistake.because) counts.told += 1;
      }
    }
    expect(counts.problems).toBeGreaterThan(80);
    // The rest ask for parts of chains by name, or for what the core searches.
    expect(counts.right / counts.problems).toBeGreaterThan(0.75);
    expect(counts.named / counts.slips).toBeGreaterThan(0.85);
    expect(counts.told / counts.slips).toBeGreaterThan(0.8);
  });
});

describe('a number at random', () => {
  it('is called a slip no oftener than is promised', () => {
    const chance = chanceFrom(11);
    const cases: [QuantityName, number][] = [
      ['magnification', 0.72],
      ['working-distance', 119.4],
      ['effective-f-number', 13.76],
      ['depth-of-field', 1.0617],
      ['field-width', 50],
    ];
    for (const [asks, right] of cases) {
      let named = 0;
      const tries = 25;
      for (let index = 0; index < tries; index++) {
        const value = right * 1000 ** (2 * chance() - 1);
        if (diagnosed(asks, value).verdict === 'slip') named += 1;
      }
      // The promise and three standard deviations of such a count.
      expect(named / tries, asks).toBeLessThan(mostChance + 3 * Math.sqrt((mostChance * (1 - mostChance)) / tries));
    }
  });
});
