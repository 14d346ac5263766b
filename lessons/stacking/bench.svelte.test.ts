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

  it('says so where there are too many frames to count on the ring', () => {
    const many = { 'subject-depth': 500, magnification: 5 };
    expect(number(would('rail', many)['frame-count'])).toBeGreaterThan(mostOnRing);
    for (const name of ['frame-count', 'frame-step', 'stack-travel', 'scale-change', 'stack-time']) {
      expect(words(would('focus-ring', many)[name]), name).toBe('too many to count');
    }
    expect(slabs('focus-ring', many)).toEqual([]);
  });

  it('reaches with the ring from the nearest part of the subject to its far end, without a gap', () => {
    for (const magnification of [0.3, 1, 2]) {
      const taken = slabs('focus-ring', { magnification, 'subject-depth': 12 });
      expect(taken.length).toBeGreaterThan(2);
      expect(taken[0]!.near).toEqual(closeTo(0, { absolute: 1e-12, because: 'rounding' }));
      taken.slice(1).forEach(({ near }, before) => expect(near).toBeLessThan(taken[before]!.far));
      expect(taken.at(-1)!.far).toBe(12);
    }
  });

  it('needs one frame where the first reaches the far end of the subject', () => {
    const near = { magnification: 0.02, 'focal-length': 800, 'f-number': 64, 'subject-depth': 500 };
    for (const by of ['rail', 'focus-ring'] as const) expect(would(by, near)['frame-count']).toBe(1);
    expect(number(would('rail', near)['depth-of-field'])).toBeGreaterThan(500);
    expect(words(would('focus-ring', near)['frame-step'])).toBe('none: one frame is enough');
  });

  it('needs one frame where the depth of field has no end', () => {
    const answers = would('focus-ring', { 'f-number': 64, magnification: 0.02, 'focal-length': 4 });
    expect(answers['frame-count']).toBe(1);
    expect(words(answers['frame-step'])).toBe('none: one frame is enough');
  });
});
