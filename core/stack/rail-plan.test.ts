import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { railPlan } from './rail-plan.ts';

const beetle = { nearLimit: 0.2, farLimit: 0.3, subjectDepth: 5, overlap: 0.25 };
const rounding = { absolute: 1e-12, because: 'a few roundings of lengths in millimetres' };

describe('railPlan', () => {
  it('takes 13 frames 0.375 mm apart through 5 mm, from the near limit on', () => {
    const plan = railPlan(beetle);
    expect(plan).toEqual({
      frameStep: closeTo(0.375, rounding),
      frameCount: 13,
      travel: closeTo(4.5, rounding),
      firstPlane: 0.2,
      gap: 0,
      spare: closeTo(0, rounding),
    });
  });

  it('says how wide the gaps are that a negative overlap leaves', () => {
    expect(railPlan({ ...beetle, overlap: -0.5 }).gap).toEqual(closeTo(0.25, rounding));
  });

  it('takes one frame of what it covers, with the rest to spare', () => {
    expect(railPlan({ ...beetle, subjectDepth: 0.4 })).toMatchObject({
      frameCount: 1,
      travel: 0,
      spare: closeTo(0.1, rounding),
    });
  });

  it('refuses an infinite far limit by name', () => {
    expect(() => railPlan({ ...beetle, farLimit: Infinity })).toThrow(OutOfRange);
    expect(() => railPlan({ ...beetle, farLimit: Infinity })).toThrow(/far-limit is Infinity/);
  });
});
