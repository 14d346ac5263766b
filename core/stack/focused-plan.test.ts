import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { focusedPlan, type FocusedStack } from './focused-plan.ts';
import { railPlan } from './rail-plan.ts';

/** A chain that keeps its cone while it is focused, as one that is telecentric on both sides would. */
const steady = (inverseEntrancePupilDistance: number): FocusedStack => ({
  coneAfter: () => ({ magnification: 1, effectiveFNumber: 20, inverseEntrancePupilDistance }),
  circleOfConfusion: 0.02,
  subjectDepth: 3,
  overlap: 0.25,
});

describe('focusedPlan', () => {
  it('lays frames 0.6 mm apart where each holds 0.8 mm and a quarter is shared', () => {
    const frames = focusedPlan(steady(0));
    expect(frames.map(({ plane }) => plane)).toEqual([0.4, 1, 1.6, 2.2, 2.8].map((at) => expect.closeTo(at, 12)));
    expect(frames[0]).toMatchObject({ magnification: 1, near: 0, far: 0.8 });
  });

  it('takes as many frames as a rail where the cone stays what it is, whichever side the pupil is on', () => {
    for (const inverse of [-0.5, 0, 0.5]) {
      const frames = focusedPlan(steady(inverse));
      const [{ near, far, plane }] = frames as [(typeof frames)[number]];
      const limits = { nearLimit: plane - near, farLimit: far - plane };
      expect(frames).toHaveLength(railPlan({ ...limits, subjectDepth: 3, overlap: 0.25 }).frameCount);
    }
  });

  it('refuses a first frame without an end on either side, and a subject without depth', () => {
    expect(() => focusedPlan(steady(3))).toThrow(/one frame shows all there is/);
    expect(() => focusedPlan(steady(-3))).toThrow(/one frame shows all there is/);
    expect(() => focusedPlan({ ...steady(0), subjectDepth: 0 })).toThrow(OutOfRange);
    expect(() => focusedPlan({ ...steady(0), overlap: 1 })).toThrow(OutOfRange);
    expect(() => focusedPlan({ ...steady(0), subjectDepth: 1e5 })).toThrow(/at most 10000 frames/);
  });
});
