import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  families,
  framesOnARail,
  ringsOnALens,
  stopsLost,
  whichLensGainsMore,
} from '#tests/support/example-families.ts';
import { markAttempt, verdictOn, type Verdict } from './answer.ts';
import { numberFamily, type NumberFamily } from './family.ts';
import { drawProblem, type NumberProblem } from './problem.ts';

const rings = drawProblem(ringsOnALens, 16) as NumberProblem;
const frames = drawProblem(framesOnARail, 12) as NumberProblem;
const choice = drawProblem(whichLensGainsMore, 12);

/** A length to be found, 12 mm. */
const length = drawProblem(
  numberFamily({
    id: 'a-length',
    asks: 'extension',
    question: 'How long?',
    givens: () => ({}),
    answer: () => 12,
    tolerance: { relative: 0.02, because: 'a ruler shows half millimetres' },
    mistakes: [{ id: 'listed', value: () => 120, because: 'That is the listed one.' }],
    hint: 'Look.',
    working: [],
  }),
  1,
);

const marked = (text: string, problem = length) => markAttempt({ problem, text });
const verdict = (value: number, problem: NumberProblem) => verdictOn({ kind: 'ready', problem, value }) as Verdict;

describe('markAttempt', () => {
  it.each(['12 mm', '12', '1.2 cm', '0,012 m', '12000 µm', '0.4724 in', '12.24', '11.76'])(
    'passes %s for 12 mm',
    (text) => {
      expect(marked(text).kind).toBe('right');
    },
  );

  it.each(['12.26', '11.74'])('does not pass %s where 2 % of 12 mm are allowed', (text) => {
    expect(marked(text).kind).toBe('wrong');
  });

  it.each([
    ['0 mm', 0],
    ['-3 mm', -3],
  ])('takes %s for the mistake that leads there, though no page allows such a length', (text, led) => {
    const family: NumberFamily = {
      ...(length.family as NumberFamily),
      mistakes: [{ id: 'gone', value: () => led, because: 'Nothing is left.' }],
    };
    const problem = drawProblem(family, 1) as NumberProblem;
    expect(markAttempt({ problem, text })).toMatchObject({ kind: 'mistake', words: 'Nothing is left.' });
    expect(markAttempt({ problem, text: '-7 mm' })).toMatchObject({ kind: 'not-ready', why: 'out-of-range' });
  });

  it('says what the answer is once it is right', () => {
    expect(marked('12').words).toBe('Right: 12\u202fmm.');
    expect(markAttempt({ problem: choice, text: 'short' })).toEqual({ kind: 'right', words: 'Right.' });
  });

  it.each(['', '  ', '\t'])('never marks a blank', (text) => {
    expect(marked(text)).toEqual({ kind: 'not-ready', why: 'blank', words: '' });
  });

  it('never marks a choice not made, or one not offered', () => {
    expect(markAttempt({ problem: choice, text: '' })).toMatchObject({ kind: 'not-ready', why: 'blank' });
    expect(markAttempt({ problem: choice, text: 'constructor' })).toMatchObject({
      kind: 'not-ready',
      why: 'unreadable',
    });
  });

  it.each([
    ['twelve', 'unreadable', 'not a number'],
    ['12 s', 'unreadable', 'is a time'],
    ['12 q', 'unreadable', 'not a unit'],
    ['-12', 'out-of-range', 'less than the page allows'],
    ['1000 m', 'out-of-range', 'more than the page allows'],
  ])('does not mark %s, and says why', (text, why, words) => {
    const answer = marked(text);
    expect(answer).toMatchObject({ kind: 'not-ready', why });
    expect(answer.words).toContain(words);
    expect(answer.words).not.toMatch(/∞|NaN|undefined/);
  });

  it('makes of any text a verdict or words, never an error', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...families),
        fc.integer({ min: 1, max: 50 }),
        fc.string({ unit: 'binary' }),
        (family, seed, text) => {
          const answer = markAttempt({ problem: drawProblem(family, seed), text });
          if (answer.kind === 'not-ready') expect(answer.words === '').toBe(answer.why === 'blank');
          else expect(answer.words).not.toMatch(/NaN|undefined|\{/);
        },
      ),
      { seed: 1, numRuns: 500 },
    );
  });
});

describe('verdictOn', () => {
  it('passes every number within the tolerance and no other', () => {
    const shares = fc.double({ min: -5, max: 5, noNaN: true }).filter((share) => Math.abs(Math.abs(share) - 1) > 1e-6);
    fc.assert(
      fc.property(shares, (share) => {
        const value = rings.answer * (1 + 0.02 * share);
        expect(verdict(value, rings).kind === 'right').toBe(Math.abs(share) < 1);
      }),
      { seed: 1 },
    );
  });

  it('names the mistake that gives this number, and why it came out', () => {
    const [first, second] = rings.mistakes;
    expect(verdict(first!.value, rings)).toEqual({ kind: 'mistake', mistake: first, words: first!.because });
    expect(verdict(1.015 * second!.value, rings)).toMatchObject({
      kind: 'mistake',
      mistake: { id: 'ratio-to-the-whole' },
    });
    expect(first!.because).toContain('The lens already gave 0.2×');
  });

  it('prefers a listed mistake to a slip of unit', () => {
    expect(marked('120')).toMatchObject({ kind: 'mistake', words: 'That is the listed one.' });
  });

  it.each([
    ['1.2', 0.1, 'The figures are right, but 10 times too small: the difference between mm and cm.'],
    ['12000', 1000, 'The figures are right, but 1000 times too large: the difference between mm and m, or µm and mm.'],
    ['0.12', 0.01, 'The figures are right, but 100 times too small: the difference between cm and m.'],
    ['12 in', 25.4, 'The figures are right, but 25.4 times too large: the difference between mm and inches.'],
  ])('takes %s for a slip of unit where 12 mm are right', (text, factor, words) => {
    expect(marked(text)).toEqual({ kind: 'unit-slip', factor, words });
  });

  it('takes a shifted point in a number without a length’s units for just that', () => {
    expect(verdict(10 * rings.answer, rings).words).toContain('Look for a unit or a decimal point.');
    expect(verdict(25.4 * rings.answer, rings).kind).toBe('wrong');
  });

  it('marks a slip that leads far out of the sensible range', () => {
    expect(markAttempt({ problem: rings, text: '0.000765' })).toMatchObject({ kind: 'unit-slip', factor: 0.001 });
    expect(markAttempt({ problem: rings, text: '765' })).toMatchObject({ kind: 'unit-slip', factor: 1000 });
  });

  it('sees no slip where so much is allowed that the figures say little', () => {
    const little = drawProblem({ ...stopsLost, answer: () => 0.5, mistakes: [] }, 1) as NumberProblem;
    expect(verdict(4.5, little).kind).toBe('wrong');
  });

  it.each([
    ['48', 'too-large', 'Not yet: too large, by a factor of more than 2.'],
    ['0.9', 'too-small', 'Not yet: too small, by a factor of more than 10.'],
    ['15', 'too-large', 'Not yet: too large.'],
    [
      '12.48',
      'too-large',
      'Close: a little too large. Up to 2\u202f% counts as right, because a ruler shows half millimetres.',
    ],
    ['0', 'too-small', 'Not yet: too small.'],
  ])('says which way %s is off from 12 mm, but not so that the answer follows', (text, direction, words) => {
    expect(marked(text)).toEqual({ kind: 'wrong', direction, words });
  });

  it('says what is allowed in stops where a fixed difference is', () => {
    const stops = drawProblem(stopsLost, 1) as NumberProblem;
    expect(verdict(stops.answer + 0.2, stops).words).toBe(
      'Close: a little too large. Up to 0.1\u202fstops counts as right, because cameras are set in thirds of a stop.',
    );
  });

  it('counts whole numbers exactly', () => {
    expect(verdict(frames.answer, frames).kind).toBe('right');
    expect(verdict(frames.answer - 1, frames)).toMatchObject({ kind: 'mistake', mistake: { id: 'fence-posts' } });
    expect(verdict(frames.answer + 2, frames).words).toBe('Not yet: too large.');
  });

  it('explains the option a mistake leads to', () => {
    expect(markAttempt({ problem: choice, text: 'long' })).toMatchObject({
      kind: 'mistake',
      mistake: { id: 'long-is-strong' },
    });
  });

  it('calls an option that no mistake explains wrong', () => {
    const bare = drawProblem({ ...whichLensGainsMore, mistakes: [] }, 1);
    expect(markAttempt({ problem: bare, text: 'long' })).toEqual({
      kind: 'wrong',
      words: 'Not this one. The hint may help.',
    });
  });
});
