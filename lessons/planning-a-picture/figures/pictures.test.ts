import { describe, expect, it } from 'vitest';
import { subjects as rendered } from '#site/state/subjects.ts';
import { isTooMany, jobOf, mostFrames, renderedFor, standsFor, type PlannedPicture } from './pictures.ts';
import { subjects, type Planned } from './subjects.ts';

const plan: PlannedPicture = {
  magnification: 3,
  effectiveFNumber: 25.4,
  pupilMagnification: 0.85,
  entrancePupilDistance: 109.46,
  nearLimit: 0.056,
  frameStep: 0.079,
  frameCount: 38,
  taken: 16,
  isAlone: false,
  motionBlur: 0,
  sourceAngle: 0.58,
};

describe('what is rendered for a plan', () => {
  it('is the subject itself where there is one, and says where it stands for another', () => {
    expect(standsFor(renderedFor('stamp', 30, 0.4)!, 'stamp')).toBe('Rendered: engraved stamp, 30\u00a0mm wide');
    expect(standsFor(renderedFor('jumping-spider', 6, 3)!, 'jumping-spider')).toBe(
      'The nearest thing that is rendered: hoverfly’s head, 3.2\u00a0mm wide',
    );
  });

  it('is something for every subject but the film, whose picture is in its lesson', () => {
    const none = (Object.keys(subjects) as Planned[]).filter((slug) => !renderedFor(slug, 10, 5));
    expect(none).toEqual(['soap-film']);
  });

  it.each([
    [30, 0.9, 'stamp'],
    [3, 2, 'hoverfly-head'],
    [12, 8, 'drawing-pin'],
    [40, 7, 'bay-leaf'],
    [300, 200, 'slanted-scale'],
  ])('for one’s own, %d wide and %d mm deep, is the nearest in size: %s', (width, depth, slug) => {
    expect(renderedFor('own', width, depth)).toBe(slug);
  });
});

describe('the job of a plan', () => {
  it('begins with the near limit on the nearest place, and lacks the frames that came too late', () => {
    const { view, stack } = jobOf('hoverfly-head', plan)!;
    expect(view.focusHeight + plan.nearLimit).toBeCloseTo(rendered['hoverfly-head'].top, 12);
    // 2.6 mm in steps of 0.079: 34 of the 38 planes, and none behind the deepest place but the last.
    expect(stack).toMatchObject({ frameCount: 34, taken: 16, lost: [] });
    expect(stack!.firstHeight - 33 * plan.frameStep!).toBeLessThan(0);
    expect(stack!.firstHeight - 32 * plan.frameStep!).toBeGreaterThan(0);
  });

  it('shows the first frame alone where that is asked', () => {
    expect(jobOf('hoverfly-head', { ...plan, isAlone: true })!.stack!.only).toBe(0);
    expect(jobOf('hoverfly-head', plan)!.stack!.only).toBeUndefined();
  });

  it('is a picture over half of whose width is the subject', () => {
    const { view } = jobOf('hoverfly-head', plan)!;
    const seen = (view.columns * view.pitch) / view.magnification;
    expect(rendered['hoverfly-head'].width / seen).toBeCloseTo(1 / 1.3, 12);
  });

  it('is lit by the flash as wide as it looks, or as usual in daylight', () => {
    expect(jobOf('hoverfly-head', plan)!.lamps![0]!.angularSize).toBe(0.58);
    expect(jobOf('stamp', plan)!.lighting!.angularSize).toBe(0.58);
    const inDaylight = jobOf('stamp', { ...plan, sourceAngle: undefined })!;
    expect([inDaylight.lighting, inDaylight.lamps]).toEqual([undefined, undefined]);
  });

  it('is none where no frame is done in time, or more are wanted than anybody waits for', () => {
    expect(jobOf('hoverfly-head', { ...plan, taken: 0 })).toBeUndefined();
    const fine = { ...plan, frameStep: 2.6 / mostFrames, frameCount: 300, taken: 300 };
    expect(isTooMany('hoverfly-head', fine)).toBe(true);
    expect(jobOf('hoverfly-head', fine)).toBeUndefined();
  });

  it('is one frame, on what a photographer would focus on, where one holds all', () => {
    const job = jobOf('stamp', { ...plan, frameStep: undefined, frameCount: 1, taken: 1 })!;
    expect(job.stack).toBeUndefined();
    expect(job.view.focusHeight).toBe(rendered.stamp.focusHeight);
  });
});
