import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { families, framesOnARail, ringsOnALens, whichLensGainsMore } from '#tests/support/example-families.ts';
import { numberFamily, type NumberFamily } from './family.ts';
import { drawProblem, type NumberProblem } from './problem.ts';
import { mostSeed } from './seed.ts';
import type { Known } from './text.ts';
import { marginAt } from './tolerance.ts';

const seeds = fc.integer({ min: 1, max: mostSeed });

/** A made-up family, with one part of it replaced. */
function variant(change: Partial<NumberFamily>): NumberFamily {
  const plain = numberFamily({
    id: 'made-up',
    asks: 'extension',
    question: 'How long is {a focal-length} ring?',
    givens: (draw) => ({ 'focal-length': draw.between(1, 10, 1) }),
    answer: (given) => given['focal-length'],
    tolerance: { relative: 0.1, because: 'it is a test' },
    mistakes: [],
    hint: 'Read it.',
    working: [],
  });
  return { ...plain, ...change };
}

const given = (known: Known) => known['focal-length'] as number;

describe('drawProblem', () => {
  it('gives the problem that links and printed sheets already name', () => {
    const problem = drawProblem(ringsOnALens, 16);
    expect(problem.given).toEqual({
      subject: 'bay leaf',
      'focal-length': 85,
      'focus-magnification': 0.2,
      'first-ring.extension': 12,
      'second-ring.extension': 36,
    });
    expect(problem.question.replaceAll('\u202f', ' ')).toBe(
      'A bay leaf is in front of an 85 mm lens, which reaches 0.2× by itself. Rings of 12 mm and 36 mm go on. What is the magnification now?',
    );
    expect(problem.answer).toEqual(closeTo(0.764706, { relative: 1e-6, because: '0.2 + 48/85 to six figures' }));
  });

  it('gives the same problem for the same number', () => {
    fc.assert(
      fc.property(fc.constantFrom(...families), seeds, (family, seed) => {
        expect(drawProblem(family, seed)).toEqual(drawProblem(family, seed));
      }),
      { seed: 1 },
    );
  });

  it('gives other numbers to another family with the same seed', () => {
    const one = Array.from({ length: 20 }, (_, index) => drawProblem(variant({}), index + 1).answer);
    const other = Array.from({ length: 20 }, (_, index) => drawProblem(variant({ id: 'other' }), index + 1).answer);
    expect(one).not.toEqual(other);
  });

  it('keeps what passes for the answer apart from every mistake, and the mistakes from each other', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { family, answer, mistakes } = drawProblem(ringsOnALens, seed) as NumberProblem;
        const values = [answer, ...mistakes.map(({ value }) => value)].sort((a, b) => a - b);
        for (let at = 1; at < values.length; at++) {
          const [low, high] = [values[at - 1]!, values[at]!];
          expect(high - marginAt(high, family.tolerance)).toBeGreaterThan(low + marginAt(low, family.tolerance));
        }
      }),
      { seed: 1 },
    );
  });

  it('draws anew where a mistake happens to give the answer', () => {
    const sometimes = variant({ mistakes: [{ id: 'five', value: () => 5, because: 'Five.' }] });
    for (let seed = 1; seed <= 100; seed++) expect(drawProblem(sometimes, seed).answer).not.toBe(5);
  });

  it('has none of a mistake that with its numbers leads nowhere wrong, and does not draw anew for it', () => {
    const value = (known: Known) => (given(known) === 5 ? undefined : 50);
    const sometimes = variant({ mistakes: [{ id: 'fifty', value, because: 'Fifty.' }] });
    for (let seed = 1; seed <= 100; seed++) {
      const { answer, mistakes } = drawProblem(sometimes, seed);
      expect(answer).toBe(drawProblem(variant({}), seed).answer);
      expect(mistakes).toEqual(answer === 5 ? [] : [{ id: 'fifty', value: 50, because: 'Fifty.' }]);
    }
  });

  it('draws anew where the core refuses the numbers', () => {
    const picky = variant({
      answer(known) {
        if (given(known) < 9) throw new OutOfRange('focal-length', given(known), 'at least 9');
        return given(known);
      },
    });
    for (let seed = 1; seed <= 20; seed++) expect(drawProblem(picky, seed).answer).toBeGreaterThanOrEqual(9);
  });

  it.each([
    [
      'a mistake always gives the answer',
      { mistakes: [{ id: 'twin', value: given, because: 'x' }] },
      /the answer is \d+, the twin \d+: too near/,
    ],
    [
      'two mistakes give the same',
      { mistakes: ['a', 'b'].map((id) => ({ id, value: () => 50, because: 'x' })) },
      /the a is 50, the b 50: too near/,
    ],
    [
      'what passes for a mistake also passes for the answer',
      { mistakes: [{ id: 'near', value: (known: Known) => 1.15 * given(known), because: 'x' }] },
      /too near to tell apart/,
    ],
    ['the answer is infinite', { answer: () => Infinity }, /the answer is Infinity/],
    ['the answer is beyond the vocabulary', { answer: () => 401 }, /the answer is 401/],
    ['a share is allowed of an answer of 0', { answer: () => 0 }, /the answer is 0/],
    ['a mistake gives no number', { mistakes: [{ id: 'none', value: () => NaN, because: 'x' }] }, /the none is NaN/],
  ])('gives up in words where %s', (_, change, words) => {
    expect(() => drawProblem(variant(change), 3)).toThrow(
      /^made-up, number 3: no fair problem in 200 draws; the last: /,
    );
    expect(() => drawProblem(variant(change), 3)).toThrow(words);
  });

  it('does not hide an error of the author', () => {
    const broken = variant({ question: 'How long is {extension}?' });
    expect(() => drawProblem(broken, 1)).toThrow('{extension} is not known');
  });

  it.each([0, -1, 1.5, NaN, Infinity, mostSeed + 1])('refuses the number %d', (seed) => {
    expect(() => drawProblem(framesOnARail, seed)).toThrow(`a problem's number is ${seed}; accepted`);
  });

  it('refuses an option that is not among those named', () => {
    const lost = { ...whichLensGainsMore, answer: () => 'neither' };
    expect(() => drawProblem(lost, 1)).toThrow('the answer is neither');
  });
});
