import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { OutOfRange, requirePositive } from './errors.ts';
import { nearestRoot, onlyRoot, reachOfFormula, solveFor, type Solvable } from './solve.ts';
import { NoRoot, NotGiven, NotInFormula, SeveralRoots } from './solve-refusals.ts';

const halving = { relative: 1e-14, because: 'halved down to the last digits' };

/** Sensor to subject, for a lens of 50 mm whose principal planes are 10 mm apart: turns at life size, at 210 mm. */
const distance = {
  gives: 'focus-distance',
  from: ['magnification', 'principal-separation'],
  evaluate: (given: { magnification: number; principalSeparation: number }) =>
    50 * (2 + requirePositive('magnification', given.magnification) + 1 / given.magnification) +
    given.principalSeparation,
} as const satisfies Solvable;

const frames = {
  gives: 'frame-count',
  from: ['subject-depth', 'frame-step'],
  evaluate: (given: { subjectDepth: number; frameStep: number }) => Math.ceil(given.subjectDepth / given.frameStep),
} as const satisfies Solvable;

function of(evaluate: (given: { extension: number }) => number) {
  return { gives: 'working-distance', from: ['extension'], evaluate } as const satisfies Solvable;
}

function valuesOf(formula: Solvable, wanted: number): number[] {
  const { roots } = solveFor(formula, { ask: 'extension', given: { 'working-distance': wanted } });
  return roots.map(({ value }) => value);
}

function thrown(work: () => unknown): unknown {
  try {
    work();
  } catch (error) {
    return error;
  }
  return undefined;
}

/** The sentence with common spaces for narrow ones. */
function plain(error: unknown): string {
  return (error as NoRoot).words.replaceAll('\u202f', ' ');
}

const at = (focusDistance: number) => ({ 'focus-distance': focusDistance, 'principal-separation': 10 });

describe('solveFor', () => {
  it('gives every value in order, each with the branch that it is on', () => {
    const { roots, spans } = solveFor(distance, { ask: 'magnification', given: at(235) });
    expect(roots.map(({ value }) => value)).toEqual([0.5, 2]);
    expect(roots.map(({ branch }) => branch.sense)).toEqual(['falling', 'rising']);
    expect(roots[0]!.branch.from).toBe(0.02);
    expect(roots[0]!.branch.to).toEqual(
      closeTo(1, { relative: 1e-7, because: 'a flat bottom is found to half the digits' }),
    );
    expect(roots[1]!.branch.to).toBe(20);
    expect(spans).toEqual([]);
  });

  it('finds the double root where the left side just turns', () => {
    const { roots } = solveFor(distance, { ask: 'magnification', given: at(210) });
    expect(roots).toEqual([{ value: 1, branch: { sense: 'turning', from: 1, to: 1 } }]);
  });

  it('refuses what the left side never is, and says what it can be in digits that tell', () => {
    const error = thrown(() => solveFor(distance, { ask: 'magnification', given: at(180) }));
    expect(error).toBeInstanceOf(NoRoot);
    expect(error).toBeInstanceOf(OutOfRange);
    expect(plain(error)).toBe('focus distance cannot be 180 mm: with these numbers it is from 210 mm to 2.61 m');
    expect((error as NoRoot).reach[0]!.least).toEqual(closeTo(210, halving));
    const near = thrown(() => solveFor(distance, { ask: 'magnification', given: at(209.9999) }));
    expect(plain(near)).toContain('cannot be 209.9999 mm: with these numbers it is from 210 mm');
    const beyond = of(({ extension }) => 12 + extension * 1000);
    const below = thrown(() => valuesOf(beyond, 3));
    expect(plain(below)).toBe('working distance cannot be 3 mm: with these numbers it is from 12 mm up');
  });

  it('looks only where it is told to', () => {
    const range = { least: 1, most: 20 };
    expect(solveFor(distance, { ask: 'magnification', given: at(235), range }).roots).toHaveLength(1);
    expect(() => solveFor(distance, { ask: 'magnification', given: at(235), range: { least: 3, most: 20 } })).toThrow(
      NoRoot,
    );
    for (const odd of [
      { least: 2, most: 1 },
      { least: 1, most: 1 },
      { least: NaN, most: 1 },
      { least: 0, most: Infinity },
    ]) {
      expect(() => solveFor(distance, { ask: 'magnification', given: at(235), range: odd })).toThrow(OutOfRange);
    }
  });

  it('computes the left side when that is what is asked', () => {
    const { roots, reach } = solveFor(distance, {
      ask: 'focus-distance',
      given: { magnification: 1, 'principal-separation': 0 },
    });
    expect(roots.map(({ value }) => value)).toEqual([200]);
    expect(reach).toEqual([{ least: 200, most: 200 }]);
  });

  it('gives the whole stretch of values that a count came from', () => {
    const { roots, spans } = solveFor(frames, { ask: 'frame-step', given: { 'frame-count': 4, 'subject-depth': 12 } });
    expect(roots).toEqual([]);
    expect(spans).toHaveLength(1);
    expect(spans[0]!.from).toEqual(closeTo(3, halving));
    expect(spans[0]!.to).toEqual(closeTo(4, halving));
  });

  it('refuses what a count jumps over', () => {
    const error = thrown(() =>
      solveFor(frames, { ask: 'frame-step', given: { 'frame-count': 4.5, 'subject-depth': 12 } }),
    );
    expect((error as NoRoot).reach).toEqual([
      expect.objectContaining({ most: 4 }),
      expect.objectContaining({ least: 5 }),
    ]);
  });

  it('gives the stretch over which the letter does not matter', () => {
    const wait = of(({ extension }) => Math.max(40, extension));
    const { spans } = solveFor(wait, { ask: 'extension', given: { 'working-distance': 40 } });
    expect(spans).toEqual([{ from: 0, to: 40 }]);
    expect(valuesOf(wait, 50)).toEqual([50]);
  });

  it('meets both ends of the range, zero and places about it', () => {
    const line = of(({ extension }) => extension / 3);
    expect(valuesOf(line, 0)).toEqual([0]);
    expect(valuesOf(line, 400 / 3)).toEqual([400]);
    expect(valuesOf(line, 1e-9)).toEqual([closeTo(3e-9, halving)]);
    const through = {
      gives: 'extension',
      from: ['working-distance'],
      evaluate: (given: { workingDistance: number }) => 7 + given.workingDistance,
    } as const;
    expect(onlyRoot(through, { ask: 'working-distance', given: { extension: 7 } })).toBe(0);
  });

  it('takes no pole for a root, and finds the roots on both sides of one', () => {
    const pole = of(({ extension }) => 100 / (extension - 50.5));
    expect(valuesOf(pole, 100)).toEqual([51.5]);
    expect(valuesOf(pole, -4)).toEqual([25.5]);
    const tower = of(({ extension }) => 100 / Math.abs(extension - 50.5));
    expect(valuesOf(tower, 4)).toEqual([25.5, 75.5]);
    expect(thrown(() => valuesOf(pole, 0.0001))).toBeInstanceOf(NoRoot);
  });

  it('keeps to where the formula answers, up to the very edge of it', () => {
    const edged = of(({ extension }) => Math.sqrt(requirePositive('extension', extension - 30)));
    expect(valuesOf(edged, 3)).toEqual([39]);
    const inner = of(({ extension }) => {
      if (extension > 20 && extension < 90) throw new OutOfRange('extension', extension, 'not there');
      return (extension - 55) ** 2;
    });
    expect(valuesOf(inner, 40 ** 2)).toEqual([15, 95]);
    expect((thrown(() => valuesOf(inner, 100)) as NoRoot).reach[0]!.least).toEqual(closeTo(35 ** 2, halving));
  });

  it('finds as many as there are where the formula says where it turns', () => {
    const wave = {
      ...of(({ extension }) => Math.cos(extension)),
      turns: { extension: () => Array.from({ length: 128 }, (_, k) => k * Math.PI) },
    };
    expect(valuesOf(wave, 0.5)).toHaveLength(127);
    expect(valuesOf(wave, 1)).toHaveLength(64);
    expect(valuesOf(wave, 1)[1]).toEqual(closeTo(2 * Math.PI, { relative: 1e-7, because: 'a flat top' }));
  });

  it('passes infinity on where that is an answer', () => {
    const far = of(({ extension }) => (extension > 25 ? 100 / (extension - 25) : Infinity));
    const { spans } = solveFor(far, { ask: 'extension', given: { 'working-distance': Infinity } });
    expect(spans).toEqual([{ from: 0, to: 25 }]);
    expect(valuesOf(far, 10)).toEqual([35]);
  });

  it('refuses by name a letter that is none, one left out, and a left side that is no number', () => {
    const given = { 'focus-distance': 300, 'principal-separation': 10 };
    expect(() => solveFor(distance as Solvable, { ask: 'iso', given })).toThrow(NotInFormula);
    expect(() => solveFor(distance as Solvable, { ask: 'magnification', given: { ...given, iso: 100 } })).toThrow(
      NotInFormula,
    );
    expect(() => solveFor(distance, { ask: 'magnification', given: { 'focus-distance': 300 } })).toThrow(NotGiven);
    expect(() => solveFor(distance, { ask: 'magnification', given: at(NaN) })).toThrow(OutOfRange);
  });

  it('hands on the formula’s own refusal of another letter, and what is no refusal', () => {
    const picky = {
      ...frames,
      evaluate: (given: { subjectDepth: number; frameStep: number }) =>
        requirePositive('subject-depth', given.subjectDepth) / given.frameStep,
    };
    const asked = () => solveFor(picky, { ask: 'frame-step', given: { 'frame-count': 4, 'subject-depth': -1 } });
    expect(thrown(asked)).toMatchObject({ name: 'OutOfRange', quantity: 'subject-depth', value: -1 });
    expect(() =>
      valuesOf(
        of(() => {
          throw new TypeError('a fault');
        }),
        1,
      ),
    ).toThrow(TypeError);
  });
});

describe('onlyRoot', () => {
  it('refuses where more than one value gives the left side, and lists them', () => {
    const error = thrown(() => onlyRoot(distance, { ask: 'magnification', given: at(235) }));
    expect(error).toBeInstanceOf(SeveralRoots);
    expect((error as SeveralRoots).values).toEqual([0.5, 2]);
    expect((error as SeveralRoots).message).toContain('0.5× and 2×');
    expect(() => onlyRoot(frames, { ask: 'frame-step', given: { 'frame-count': 4, 'subject-depth': 12 } })).toThrow(
      SeveralRoots,
    );
  });
});

describe('nearestRoot', () => {
  it('keeps a hand on the side where it is, and within a stretch where it stands', () => {
    const both = solveFor(distance, { ask: 'magnification', given: at(235) });
    expect([0.1, 0.9, 1.4, 15].map((now) => nearestRoot(both, now))).toEqual([0.5, 0.5, 2, 2]);
    const stretch = { roots: [], spans: [{ from: 3, to: 4 }], reach: [] };
    expect([2, 3.5, 9].map((now) => nearestRoot(stretch, now))).toEqual([3, 3.5, 4]);
  });
});

describe('reachOfFormula', () => {
  it('says between which values the left side can be', () => {
    const reach = reachOfFormula(distance, { ask: 'magnification', given: { 'principal-separation': 10 } });
    expect(reach).toEqual([{ least: closeTo(210, halving), most: closeTo(50 * 52.02 + 10, halving) }]);
  });
});
