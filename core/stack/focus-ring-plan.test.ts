import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { depthOfField } from '#core/depth/depth-of-field.formula.ts';
import { focusRingPlan } from './focus-ring-plan.ts';
import { frameCount } from './frame-count.formula.ts';

const stack = {
  focalLength: 100,
  fNumber: 8,
  pupilMagnification: 0.7,
  circleOfConfusion: 0.02,
  magnification: 0.5,
  subjectDepth: 50,
  overlap: 0.2,
};
const seams = { absolute: 1e-9, because: 'places are closed in on to the last bit of lengths near 50 mm' };

describe('focusRingPlan', () => {
  it('begins at the near end and leaves nothing out to the far one', () => {
    const frames = focusRingPlan(stack);
    expect(frames[0]).toMatchObject({ magnification: 0.5, near: closeTo(0, seams) });
    expect(frames.at(-1)!.far).toBeGreaterThanOrEqual(50);
    expect(frames.at(-2)!.far).toBeLessThan(50);
  });

  it('lets each frame share the overlap with the one before it', () => {
    const frames = focusRingPlan(stack);
    for (const [index, frame] of frames.slice(1).entries()) {
      const before = frames[index]!;
      expect(before.far - frame.near).toEqual(closeTo(0.2 * (before.far - before.near), seams));
    }
  });

  it('needs fewer frames than a rail, since frames grow deeper on the way out', () => {
    const lens = { ...stack, entrancePupil: entrancePupil(stack), entrancePupilDistance: entrancePupilDistance(stack) };
    const onRail = frameCount({ ...stack, depthOfField: depthOfField(lens) });
    expect(focusRingPlan(stack).length).toBeLessThan(onRail);
  });

  it('needs more than a rail beyond life size, where racking out enlarges', () => {
    const beyond = { ...stack, magnification: 2 };
    const lens = {
      ...beyond,
      entrancePupil: entrancePupil(beyond),
      entrancePupilDistance: entrancePupilDistance(beyond),
    };
    const onRail = frameCount({ ...beyond, depthOfField: depthOfField(lens) });
    expect(focusRingPlan(beyond).length).toBeGreaterThan(onRail);
  });

  it('counts as a rail does where the subject is shallow', () => {
    const shallow = { ...stack, subjectDepth: 0.01, circleOfConfusion: 0.00001 };
    const lens = {
      ...shallow,
      entrancePupil: entrancePupil(shallow),
      entrancePupilDistance: entrancePupilDistance(shallow),
    };
    expect(focusRingPlan(shallow).length).toBe(frameCount({ ...shallow, depthOfField: depthOfField(lens) }));
  });

  it('takes one frame of what it covers', () => {
    expect(focusRingPlan({ ...stack, subjectDepth: 0.1 })).toHaveLength(1);
  });

  it('starts at life size and racks in', () => {
    const frames = focusRingPlan({ ...stack, magnification: 1, subjectDepth: 5 });
    expect(frames[1]!.magnification).toBeLessThan(1);
  });

  it('ends with a frame that has no end, where there is one on the way', () => {
    const landscape = { ...stack, fNumber: 22, magnification: 0.1, subjectDepth: 1e7 };
    const frames = focusRingPlan(landscape);
    expect(frames.at(-1)!.far).toBe(Infinity);
    expect(frames.slice(0, -1).every(({ far }) => far < landscape.subjectDepth)).toBe(true);
    expect(frames.at(-1)!.near).toBeLessThan(frames.at(-2)!.far);
  });

  it('refuses an overlap of 1, an endless subject, infinite depth and stacks without end, by name', () => {
    expect(() => focusRingPlan({ ...stack, overlap: 1 })).toThrow(/overlap is 1/);
    expect(() => focusRingPlan({ ...stack, subjectDepth: Infinity })).toThrow(OutOfRange);
    expect(() => focusRingPlan({ ...stack, fNumber: 64, circleOfConfusion: 0.2, magnification: 0.02 })).toThrow(
      /depth-of-field is Infinity/,
    );
    expect(() => focusRingPlan({ ...stack, subjectDepth: 1000, overlap: 0.9999 })).toThrow(/at most 10000 frames/);
  });
});
