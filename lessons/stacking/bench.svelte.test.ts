import { describe, expect, it } from 'vitest';
import { valueOf, type Answer } from '#site/state/answer.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { bench, mostOnRing, slabsOf, stacking, stepsBetween } from './bench.svelte.ts';

type Way = 'rail' | 'focus-ring';
type Changes = Partial<typeof bench.starts>;

/** The answers of the stack on the rail, or on the ring under the same names. */
function would(by: Way, changes: Changes = {}): Readonly<Record<string, Answer>> {
  const answers = stacking({ ...bench.starts, ...changes });
  if (by === 'rail') return answers;
  const ring = Object.entries(answers).filter(([name]) => name.startsWith('focus-ring.'));
  return {
    ...answers,
    ...Object.fromEntries(ring.map(([name, answer]) => [name.slice('focus-ring.'.length), answer])),
  };
}
const words = (answer: Answer | undefined) => (typeof answer === 'object' ? answer.words : '');
const number = (answer: Answer | undefined) => (answer === undefined ? NaN : (valueOf(answer) ?? NaN));

describe('the bench of stacking', () => {
  it('counts, times and cuts the stack that is taken', () => {
    const far = { magnification: 0.5, 'subject-depth': 30, 'time-limit': 10 };
    for (const by of ['rail', 'focus-ring'] as const) {
      const answers = would(by, far);
      const count = slabsOf({ ...bench.starts, ...far }, by).length;
      expect(answers['frame-count']).toBe(count);
      expect(answers['stack-time']).toEqual(
        closeTo(count * 0.5 + (count - 1) * 3, { absolute: 1e-9, because: 'a sum' }),
      );
      expect(words(answers['in-time.frame-count'])).toBe(`3 of ${count}`);
    }
    expect(number(would('focus-ring', far)['frame-count'])).toBeLessThan(number(would('rail', far)['frame-count']));
  });

  it('says between what lengths the ring’s steps lie, and that the camera stands', () => {
    const given = { magnification: 0.5, 'subject-depth': 30 };
    const steps = stepsBetween(slabsOf({ ...bench.starts, ...given }, 'focus-ring'));
    expect(Math.max(...steps)).toBeGreaterThan(1.2 * Math.min(...steps));
    expect(words(would('focus-ring', given)['frame-step'])).toMatch(/^1.08\smm to 1.52\smm$/u);
    expect(number(would('focus-ring', given)['stack-travel'])).toBe(0);
  });

  it('says so where the ring cannot reach, or where there are too many frames to count on it', () => {
    const many = would('focus-ring', { 'subject-depth': 500, magnification: 5 });
    expect(number(would('rail', { 'subject-depth': 500, magnification: 5 })['frame-count'])).toBeGreaterThan(
      mostOnRing,
    );
    expect(words(many['frame-count'])).toBe('not counted: too many');
    const near = would('focus-ring', {
      magnification: 0.02,
      'focal-length': 800,
      'f-number': 64,
      'subject-depth': 500,
    });
    expect(number(near['frame-count'])).toBe(1);
  });

  it('needs one frame where the depth of field has no end', () => {
    const answers = would('focus-ring', { 'f-number': 64, magnification: 0.02, 'focal-length': 4 });
    expect(answers['frame-count']).toBe(1);
    expect(words(answers['frame-step'])).toBe('none: one frame shows it all');
  });
});
