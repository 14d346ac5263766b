import { describe, expect, it } from 'vitest';
import { markAttempt, verdictOn } from '#core/practice/answer.ts';
import type { ProblemFamily } from '#core/practice/family.ts';
import { drawProblem, type Problem } from '#core/practice/problem.ts';
import { everyLessonFile } from '#tests/support/lessons.ts';

type Given = Readonly<Record<string, number>>;

const seeds = Array.from({ length: 60 }, (_, index) => index + 1);
const problemsOf = new Map(
  (await everyLessonFile('problems.ts')).map(({ slug, exports }) => [slug, exports['families']]),
);
const family = (slug: string, id: string) =>
  (problemsOf.get(slug) as readonly ProblemFamily[]).find((one) => one.id === id)!;
const drawn = (of: ProblemFamily) => seeds.map((seed) => drawProblem(of, seed));
const given = (problem: Problem) => problem.given as Given;

/** The share of a bell curve between two ends, summed in small steps: a rule of its own beside the core's. */
function shareBetween(from: number, to: number): number {
  const steps = 2000;
  const width = (to - from) / steps;
  let sum = 0;
  for (let step = 0; step < steps; step++) sum += Math.exp(-((from + (step + 0.5) * width) ** 2) / 2);
  return (sum * width) / Math.sqrt(2 * Math.PI);
}

/** Rules that are wrong and no listed slip, for their numbers come near the answer's with some givens. */
const rules: readonly [string, ProblemFamily, (given: Given) => number][] = [
  [
    'm twice, once as a factor of its own',
    family('holding-still', 'turning-streak'),
    (known) =>
      known['focal-length']! *
      (1 + known['magnification']!) ** 2 *
      known['magnification']! *
      known['shake-rate']! *
      known['exposure-time']!,
  ],
  [
    'four focal lengths at every size',
    family('holding-still', 'turning-streak'),
    (known) => 4 * known['focal-length']! * known['shake-rate']! * known['exposure-time']!,
  ],
  [
    'an offset added to the sway by squares',
    family('placing-focus', 'always-too-near'),
    (known) => {
      const spread = Math.hypot(known['sway']!, known['focus-offset']!);
      const half = known['depth-of-field']! / 2 / spread;
      return shareBetween(-half, half);
    },
  ],
];

describe('a wrong rule', () => {
  it.each(rules)('is never told to be right: %s', (_, of, rule) => {
    const told = drawn(of).map((problem) => verdictOn({ kind: 'ready', problem, value: rule(given(problem)) }).kind);
    expect(told).not.toContain('right');
  });
});

/** Where one can walk round the subject. */
const isFree = (problem: Problem) => String(problem.given['place']).includes('round');

describe('turning, closing, stacking or pressing', () => {
  const problems = drawn(family('placing-focus', 'turn-or-stop-down'));

  it('hears of a slip whichever way it is wrong', () => {
    for (const problem of problems)
      for (const text of ['turn', 'stop', 'stack', 'sharp'])
        expect(markAttempt({ problem, text }).kind).toBe(text === problem.answer ? 'right' : 'mistake');
  });

  it('is sent to the two depths by pressing too early, and to the order by closing what could be turned', () => {
    for (const problem of problems) {
      const slip = (text: string) => problem.mistakes.find(({ value }) => value === text)?.id;
      if (problem.answer !== 'sharp') expect(slip('sharp')).toBe('which-depth');
      if (problem.answer === 'turn') expect(slip('stop')).toBe('which-order');
      else expect(slip('turn')).toBe(problem.answer === 'sharp' && isFree(problem) ? 'marked-f-number' : 'which-order');
    }
  });
});
