import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frameCount } from '#core/stack/frame-count.formula.ts';
import { framesInTime, framesLost } from '#core/stack/frames-in-time.ts';
import { railPlan } from '#core/stack/rail-plan.ts';
import { stackTime } from '#core/stack/stack-time.formula.ts';

const share = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const stacks = fc.record({
  depthOfField: share(0.01, 2),
  subjectDepth: share(0.01, 20),
  overlap: share(-1, 0.9),
});

/** What is left uncovered of a subject from 0 to *depth* behind so many slices laid one behind the other; gaps between them do not count. */
function leftOver(depth: number, slice: number, step: number, count: number): number {
  let end = 0;
  for (let index = 0; index < count; index++) end = Math.max(end, index * step + slice);
  return depth - end;
}

describe('slices laid one behind the other', () => {
  it('cover the subject with the frames counted, and not with one fewer', () => {
    fc.assert(
      fc.property(stacks, (stack) => {
        const frames = frameCount(stack);
        const step = stack.depthOfField * (1 - stack.overlap);
        const covered = 1e-8 * step;
        expect(leftOver(stack.subjectDepth, stack.depthOfField, step, frames)).toBeLessThanOrEqual(covered);
        if (frames > 1) {
          expect(leftOver(stack.subjectDepth, stack.depthOfField, step, frames - 1)).toBeGreaterThan(-covered);
        }
      }),
      { seed: 61, numRuns: 2000 },
    );
  });

  it('leave no gap with an overlap of 0 or more, and the gap of the plan with less', () => {
    fc.assert(
      fc.property(stacks, share(0.1, 0.9), (stack, part) => {
        const nearLimit = part * stack.depthOfField;
        const plan = railPlan({ ...stack, nearLimit, farLimit: stack.depthOfField - nearLimit });
        const [first, second] = [plan.firstPlane, plan.firstPlane + plan.frameStep];
        const between = second - nearLimit - (first + stack.depthOfField - nearLimit);
        expect(Math.max(0, between)).toBeCloseTo(plan.gap, 9);
        expect(plan.gap > 1e-9).toBe(stack.overlap < -1e-9 / stack.depthOfField);
        expect(plan.spare).toBeGreaterThan(-1e-8);
      }),
      { seed: 62, numRuns: 1000 },
    );
  });
});

describe('a stack run against the clock', () => {
  it('has taken as many frames when time is up as it is said to', () => {
    // In whole milliseconds, which a clock adds up without rounding.
    const milliseconds = (least: number, most: number) => fc.integer({ min: least, max: most });
    const paces = fc.record({
      exposure: milliseconds(1, 5000),
      settling: milliseconds(0, 5000),
      recycling: milliseconds(0, 5000),
      limit: milliseconds(0, 200_000),
      frameCount: fc.integer({ min: 1, max: 100 }),
    });
    fc.assert(
      fc.property(paces, ({ exposure, settling, recycling, limit, frameCount: frames }) => {
        let clock = exposure;
        let done = 0;
        while (done < frames && clock <= limit) {
          done++;
          clock += Math.max(settling, recycling) + exposure;
        }
        const pace = { exposureTime: exposure / 1000, settlingTime: settling / 1000, recyclingTime: recycling / 1000 };
        expect(frames - framesLost(pace, { frameCount: frames, timeLimit: limit / 1000 })).toBe(done);
        expect(framesInTime(pace, limit / 1000)).toBeGreaterThanOrEqual(done);
        const timeLimit = stackTime({ ...pace, frameCount: frames });
        expect(framesLost(pace, { frameCount: frames, timeLimit })).toBe(0);
        expect(framesLost(pace, { frameCount: frames, timeLimit: 0.999 * timeLimit })).toBeGreaterThan(0);
      }),
      { seed: 63, numRuns: 1000 },
    );
  });
});
