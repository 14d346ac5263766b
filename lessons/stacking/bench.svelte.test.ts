import { describe, expect, it } from 'vitest';
import { valueOf } from '#site/state/answer.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { bench, mostOnRing, slabsOf, stacking, stepsBetween } from './bench.svelte.ts';

const would = (by: 'rail' | 'focus-ring', changes: Partial<typeof bench.starts> = {}) =>
  stacking({ ...bench.starts, ...changes }, { by });
const words = (answer: ReturnType<typeof would>['frame-count']) => (typeof answer === 'number' ? '' : answer.words);

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
    expect(would('focus-ring', far)['frame-count']).toBeLessThan(valueOf(would('rail', far)['frame-count'])!);
  });

  it('has the ring’s count whichever way is chosen, for the text beside the figure', () => {
    expect(would('rail')['focus-ring.frame-count']).toBe(would('focus-ring')['frame-count']);
  });

  it('says between what lengths the ring’s steps lie, and that the camera stands', () => {
    const given = { magnification: 0.5, 'subject-depth': 30 };
    const steps = stepsBetween(slabsOf({ ...bench.starts, ...given }, 'focus-ring'));
    expect(Math.max(...steps)).toBeGreaterThan(1.2 * Math.min(...steps));
    expect(words(would('focus-ring', given)['frame-step'])).toMatch(/^1.08\smm to 1.52\smm$/u);
    expect(valueOf(would('focus-ring', given)['stack-travel'])).toBe(0);
  });

  it('says so where the ring cannot reach, or where there are too many frames to count on it', () => {
    const many = would('focus-ring', { 'subject-depth': 500, magnification: 5 });
    expect(valueOf(would('rail', { 'subject-depth': 500, magnification: 5 })['frame-count'])).toBeGreaterThan(
      mostOnRing,
    );
    expect(words(many['frame-count'])).toBe('not counted: too many');
    const near = would('focus-ring', {
      magnification: 0.02,
      'focal-length': 800,
      'f-number': 64,
      'subject-depth': 500,
    });
    expect(valueOf(near['frame-count'])).toBe(1);
  });

  it('needs one frame where the depth of field has no end', () => {
    const answers = would('focus-ring', { 'f-number': 64, magnification: 0.02, 'focal-length': 4 });
    expect(answers['frame-count']).toBe(1);
    expect(words(answers['frame-step'])).toBe('none: one frame shows it all');
  });
});
