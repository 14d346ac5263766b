import { describe, expect, it } from 'vitest';
import { scaleBetweenFocusSettings } from '#core/stack/scale-between-focus-settings.ts';
import { scaleChangeOnRail } from '#core/stack/scale-change-on-rail.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lifeSize } from '#tests/support/in-view.ts';
import { entrancePupilOf, type View } from '../view.ts';
import { narrowestOf, scaleOf } from './scale-of.ts';
import { type StackPlan, stackViews } from './stack-views.ts';

const lens = { focalLength: 60, pupilMagnification: 0.8, magnification: 0.5, fNumber: 5.6 };
const view: View = {
  ...lifeSize,
  ...lens,
  effectiveFNumber: effectiveFNumber(lens),
  entrancePupilDistance: entrancePupilDistance(lens),
};
const plan: StackPlan = { frameCount: 5, frameStep: 0.5, firstHeight: 2, by: 'rail' };
const exact = { relative: 1e-9, because: 'the same geometry by other formulas' };

describe('a stack on a rail', () => {
  const views = stackViews(view, plan);

  it('is the first frame with its sharp plane deeper and deeper', () => {
    expect(views.map(({ focusHeight }) => focusHeight)).toEqual([2, 1.5, 1, 0.5, 0]);
    for (const frame of views) expect({ ...frame, focusHeight: 2 }).toEqual({ ...view, focusHeight: 2 });
  });

  it('enlarges details from frame to frame as the formula of the rail says', () => {
    const change = scaleChangeOnRail({ frameStep: 0.5, entrancePupilDistance: view.entrancePupilDistance });
    expect(scaleOf(views[1]!, views[0]!, 2)).toEqual(closeTo(1 + change, exact));
    expect(scaleOf(views[1]!, views[0]!)).toEqual(closeTo(1 + 0.5 / view.entrancePupilDistance, exact));
  });

  it('shows least of the subject in its last frame', () => {
    expect(narrowestOf(views)).toBe(views[4]);
  });
});

describe('a stack on a focus ring', () => {
  const views = stackViews(view, { ...plan, by: 'focus-ring' });

  it('gives every frame the magnification, pupil and cone that the lens has there', () => {
    const last = views[4]!;
    const { magnification, effectiveFNumber: cone, entrancePupilDistance: pupil } = last;
    expect(magnification + 1 / magnification).toEqual(closeTo(2.5 + 2 / 60, exact));
    expect(pupil).toEqual(closeTo(entrancePupilDistance({ ...lens, magnification }), exact));
    expect(cone).toEqual(closeTo(effectiveFNumber({ ...lens, magnification }), exact));
    expect(entrancePupilOf(last)).toEqual(closeTo(entrancePupilOf(view), exact));
  });

  it('leaves the sensor where it is', () => {
    const sensor = ({ magnification: m, focusHeight }: View) => focusHeight + 60 * (2 + m + 1 / m);
    for (const frame of views) expect(sensor(frame)).toEqual(closeTo(sensor(views[0]!), exact));
  });

  it('changes the scale of a detail as the exact formula of two settings says', () => {
    const second = views[3]!.magnification;
    expect(scaleOf(views[3]!, views[0]!, 2)).toEqual(
      closeTo(scaleBetweenFocusSettings({ ...lens, first: 0.5, second }), exact),
    );
    expect(narrowestOf(views)).toBe(views[0]);
  });

  it('goes by steps of its own where they are given, on the rail too', () => {
    const steps = [0.3, 0.5, 0.4, 0.8];
    for (const by of ['rail', 'focus-ring'] as const) {
      const uneven = stackViews(view, { ...plan, frameStep: steps, by });
      expect(uneven.map(({ focusHeight }) => Number(focusHeight.toFixed(9)))).toEqual([2, 1.7, 1.2, 0.8, 0]);
      expect(uneven[4]!.magnification).toBeCloseTo(stackViews(view, { ...plan, by })[4]!.magnification, 12);
    }
    expect(() => stackViews(view, { ...plan, frameStep: [1, 1] })).toThrow('from each of the 5 frames to the next');
    expect(() => stackViews(view, { ...plan, frameStep: [1, 1, 0, 1] })).toThrow(OutOfRange);
  });

  it('takes the focal length from the view where none is given', () => {
    expect(stackViews(view, { ...plan, by: 'focus-ring', focalLength: 60 })[4]!.magnification).toEqual(
      closeTo(views[4]!.magnification, exact),
    );
  });
});

describe('stacks of unusual length', () => {
  it('of one frame is that frame, whatever the step', () => {
    for (const by of ['rail', 'focus-ring'] as const)
      expect(stackViews(view, { frameCount: 1, frameStep: NaN, firstHeight: 3, by })).toEqual([
        { ...view, focusHeight: 3 },
      ]);
  });

  it('of 2000 frames is taken, of 2001 refused in words that say what works', () => {
    const many = (frameCount: number) => () => stackViews(view, { ...plan, frameStep: 0.001, frameCount });
    expect(many(2000)()).toHaveLength(2000);
    expect(many(2001)).toThrow('fewer frames with a larger step still work');
    for (const count of [0, 1.5, NaN, Infinity]) expect(many(count)).toThrow(OutOfRange);
  });

  it('that would reach the lens is refused, with the number of frames that still work', () => {
    expect(() => stackViews(view, { ...plan, frameStep: 60 })).toThrow('4 frames of it still work');
    expect(stackViews(view, { ...plan, frameStep: 60, frameCount: 4 })).toHaveLength(4);
    const bellows = {
      ...view,
      magnification: 4,
      entrancePupilDistance: entrancePupilDistance({ ...lens, magnification: 4 }),
    };
    expect(() => stackViews(bellows, { ...plan, frameStep: 100, by: 'focus-ring' })).toThrow(
      'a smaller one still works',
    );
    expect(() => stackViews(view, { ...plan, frameStep: -1 })).toThrow(OutOfRange);
    expect(() => stackViews(view, { ...plan, frameStep: 500 })).toThrow('a smaller one still works');
  });

  it('goes any way on a rail where the pupil is no obstacle, and is not focused by a ring', () => {
    for (const entrancePupilDistance of [Infinity, -40]) {
      const rig = { ...view, entrancePupilDistance };
      expect(stackViews(rig, { ...plan, frameStep: 500 }).at(-1)).toMatchObject({ entrancePupilDistance });
      expect(() => stackViews(rig, { ...plan, by: 'focus-ring', focalLength: 60 })).toThrow(/entrance-pupil-distance/);
    }
  });

  it('each have noise of their own', () => {
    const noisy = stackViews({ ...view, electronsAtWhite: 1000, seed: 7 }, plan);
    expect(noisy.map(({ seed }) => seed)).toEqual([7, 8, 9, 10, 11]);
  });
});

describe('a detail behind the lens', () => {
  it('has no scale', () => {
    expect(() => scaleOf(view, view, 1000)).toThrow(OutOfRange);
    expect(() => narrowestOf([])).toThrow('at least one');
  });
});
