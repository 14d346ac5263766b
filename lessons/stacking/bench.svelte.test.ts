import { describe, expect, it } from 'vitest';
import { valueOf, type Answer } from '#site/state/answer.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { camelCase, type Named } from '#core/quantity/formula.ts';
import { bench } from './bench.svelte.ts';
import { mostOnRing, ofRing, slabsOf, stepsBetween } from './figures/slabs.ts';

type Way = 'rail' | 'focus-ring';
type Changes = Partial<typeof bench.starts>;

/** The answers of the stack on the rail, or on the ring under the same names. */
function would(by: Way, changes: Changes = {}): Readonly<Record<string, Answer>> {
  const answers: Readonly<Record<string, Answer>> = bench.at(changes);
  if (by === 'rail') return answers;
  const ring = Object.entries(answers).filter(([name]) => name.startsWith('focus-ring.'));
  return {
    ...answers,
    ...Object.fromEntries(ring.map(([name, answer]) => [name.slice('focus-ring.'.length), answer])),
  };
}
/** The slabs that the figure draws. */
function slabs(by: Way, changes: Changes) {
  const names = [...ofRing, 'frame-count', 'near-limit', 'far-limit'] as const;
  const numbers = Object.fromEntries(names.map((name) => [camelCase(name), bench.would(name, changes)]));
  return slabsOf(numbers as Named<(typeof names)[number]>, bench.would('frame-step', changes), by === 'focus-ring');
}
const words = (answer: Answer | undefined) => (typeof answer === 'object' ? answer.words : '');
const number = (answer: Answer | undefined) => (answer === undefined ? NaN : (valueOf(answer) ?? NaN));

describe('the bench of stacking', () => {
  it('counts, times and cuts the stack that is taken', () => {
    const far = { magnification: 0.5, 'subject-depth': 30, 'time-limit': 10 };
    for (const by of ['rail', 'focus-ring'] as const) {
      const answers = would(by, far);
      const count = slabs(by, far).length;
      expect(answers['frame-count']).toBe(count);
      expect(answers['stack-time']).toEqual(
        closeTo(count * 0.5 + (count - 1) * 3, { absolute: 1e-9, because: 'a sum' }),
      );
      expect(words(answers['in-time.frame-count'])).toBe(`3 of ${count}`);
    }
    expect(number(would('focus-ring', far)['frame-count'])).toBeLessThan(number(would('rail', far)['frame-count']));
  });

  it('says between what lengths the ring’s steps lie, and that the camera stands', () => {
    const given = { magnification: 0.5, 'subject-depth': 30, 'circle-of-confusion': 0.02 };
    const steps = stepsBetween(slabs('focus-ring', given));
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
    const near = {
      magnification: 2,
      'subject-depth': 200,
      'focal-length': 4,
      'f-number': 64,
      'pupil-magnification': 5,
      'circle-of-confusion': 0.02,
    };
    expect(words(would('focus-ring', near)['stack-time'])).toBe('none: the ring cannot reach it');
    expect(slabs('focus-ring', near)).toEqual([]);
    expect(number(would('rail', near)['frame-count'])).toBeGreaterThan(1);
  });

  it('needs one frame where the depth of field has no end', () => {
    const answers = would('focus-ring', { 'f-number': 64, magnification: 0.02, 'focal-length': 4 });
    expect(answers['frame-count']).toBe(1);
    expect(words(answers['frame-step'])).toBe('none: one frame shows it all');
  });
});
