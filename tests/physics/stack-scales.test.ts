import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { focusRingPlan } from '#core/stack/focus-ring-plan.ts';
import { magnificationAfterStep } from '#core/stack/magnification-after-step.ts';
import { scaleBetweenFocusSettings } from '#core/stack/scale-between-focus-settings.ts';
import { scaleChangeFocusing } from '#core/stack/scale-change-focusing.formula.ts';
import { scaleChangeOnRail } from '#core/stack/scale-change-on-rail.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { imageDistance } from '#core/gaussian/image-distance.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import type { Lens } from '#core/rig/lens.ts';
import { solveRig } from '#core/rig/solve.ts';
import { imageAcross } from '#tests/support/chief-ray.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lenses, type LensAtWork } from '#tests/support/lenses.ts';
import { camera, on, ring, unitLenses } from '#tests/support/rig-parts.ts';
import { rimRay } from '#tests/support/trace.ts';

const across = 0.01;
const cancelling = { relative: 1e-9, because: 'ray heights that cancel to a small image' };
const share = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });

/** The image of a detail in the sharp plane of *lens*, in a camera that has come nearer by *step*. */
const onRail = (lens: LensAtWork, step: number) =>
  imageAcross(lens, { across, ahead: subjectDistance(lens) - step }, imageDistance(lens));

/** The same detail in a camera that stands still while its lens is focused from *lens* to another magnification. */
function onRing(lens: LensAtWork, magnification: number): number {
  const toSensor = imageDistance({ ...lens, magnification });
  const fromSensor = subjectDistance(lens) + imageDistance(lens);
  return imageAcross(lens, { across, ahead: fromSensor - toSensor }, toSensor);
}

describe('a fixed detail traced through two cameras', () => {
  it('grows on a rail as the formula says', () => {
    fc.assert(
      fc.property(lenses, share(1e-6, 0.5), (lens, part) => {
        const frameStep = part * lens.entrancePupilDistance;
        const traced = onRail(lens, frameStep) / onRail(lens, 0);
        expect(1 + scaleChangeOnRail({ ...lens, frameStep })).toEqual(closeTo(traced, cancelling));
      }),
      { seed: 51, numRuns: 1000 },
    );
  });

  it('changes with the focus setting as the exact form says', () => {
    fc.assert(
      fc.property(lenses, share(-0.3, 0.3), (lens, part) => {
        const second = lens.magnification * (1 + part);
        // Racked out so far that the pupil is near the detail, both forms are refused or wild.
        if (lens.focalLength * (second - lens.magnification) > 0.8 * lens.entrancePupilDistance) return;
        const traced = onRing(lens, second) / onRing(lens, lens.magnification);
        const ours = scaleBetweenFocusSettings({ ...lens, first: lens.magnification, second });
        expect(ours).toEqual(closeTo(traced, cancelling));
      }),
      { seed: 52, numRuns: 1000 },
    );
  });

  it('changes by the small-step form for a step of a millionth of the focal length', () => {
    fc.assert(
      fc.property(lenses, (lens) => {
        if (Math.abs(lens.magnification - 1) < 0.05) return;
        const frameStep = 1e-6 * lens.focalLength;
        const second = magnificationAfterStep({ ...lens, step: frameStep });
        const traced = onRing(lens, second) / onRing(lens, lens.magnification) - 1;
        const ours = scaleChangeFocusing({ ...lens, frameStep });
        // Racked in: the detail shrinks below life size, and grows beyond it.
        expect(Math.sign(traced)).toBe(Math.sign(lens.magnification - 1));
        expect(Math.abs(traced)).toEqual(
          closeTo(ours, { relative: 2e-3, because: 'of first order, and a difference of images alike to 1e-9' }),
        );
      }),
      { seed: 53, numRuns: 1000 },
    );
  });
});

describe('a fixed detail before two rigs that the engine solves', () => {
  /** A rig with a lens focused as a whole, set to *at* behind a ring: what it says of its own sharp plane. */
  function solved(lens: Lens, extension: number, at: number) {
    const rig = solveRig(assembleRig([camera, ring(extension), on(lens, { at })]));
    if (rig.sharpPlane !== 'in front' || !rig.pupil) return null;
    return { ...rig, fromPupil: rig.pupil.entrancePupilDistance };
  }

  it('changes with the focus setting as the exact form says, sensor and detail staying where they are', () => {
    let compared = 0;
    fc.assert(
      fc.property(unitLenses, share(5, 80), share(0, 1), share(0, 1), (lens, extension, one, other) => {
        const { focusing } = lens;
        if (focusing.by !== 'unit') throw new Error('focused as a whole');
        const first = solved(lens, extension, one * focusing.closestMagnification);
        const second = solved(lens, extension, other * focusing.closestMagnification);
        if (!first || !second) return;
        const toDetail = second.fromPupil + first.focusDistance - second.focusDistance;
        if (!(toDetail > 0)) return;
        compared++;
        // The pupil's middle is where all rays to the detail cross: its image grows as it comes nearer to that.
        const inSecond = (second.magnification * second.fromPupil) / toDetail;
        const { focalLength, pupilMagnification } = lens;
        const between = { focalLength, pupilMagnification, first: first.magnification, second: second.magnification };
        expect(scaleBetweenFocusSettings(between)).toEqual(
          closeTo(inSecond / first.magnification, { relative: 1e-8, because: 'distances that cancel' }),
        );
      }),
      { seed: 56, numRuns: 500 },
    );
    expect(compared).toBeGreaterThan(200);
  });
});

describe('the frames of a focusing ring', () => {
  const stack = fc.record({
    focalLength: share(20, 200),
    fNumber: share(2, 16),
    pupilMagnification: share(0.4, 2),
    circleOfConfusion: share(0.005, 0.03),
    magnification: share(0.2, 3),
    overlap: share(-0.5, 0.6),
    slices: share(1, 12),
  });

  it('blur by the circle of confusion at every limit, by rays through the rim of the pupil', () => {
    fc.assert(
      fc.property(stack, ({ slices, ...given }) => {
        const lens = { ...given, entrancePupil: entrancePupil(given) };
        const subjectDepth = (slices * 2 * given.circleOfConfusion * given.fNumber) / given.magnification ** 2;
        const circle = closeTo(given.circleOfConfusion, {
          relative: 1e-6,
          because: 'ray heights a million times the circle cancel',
        });
        for (const { magnification, plane, near, far } of focusRingPlan({ ...given, subjectDepth })) {
          const at = { ...lens, subjectDistance: subjectDistance({ ...lens, magnification }) };
          expect(2 * Math.abs(rimRay(at, near - plane).heightAtSensor)).toEqual(circle);
          expect(2 * Math.abs(rimRay(at, far - plane).heightAtSensor)).toEqual(circle);
        }
      }),
      { seed: 54, numRuns: 200 },
    );
  });

  it('stand where their focus distances say, cover the subject without more than the wanted gaps, and need each of them', () => {
    fc.assert(
      fc.property(stack, ({ slices, ...given }) => {
        const subjectDepth = (slices * 2 * given.circleOfConfusion * given.fNumber) / given.magnification ** 2;
        const frames = focusRingPlan({ ...given, subjectDepth });
        const first = frames[0]!;
        const from = (magnification: number) => focusDistance({ ...given, magnification, principalSeparation: 0 });
        for (const [index, frame] of frames.entries()) {
          const moved = from(frame.magnification) - from(first.magnification);
          const places = { absolute: 1e-9, because: 'differences of lengths up to a metre' };
          expect(frame.plane - first.plane).toEqual(closeTo(moved, places));
          const before = frames[index - 1];
          if (before) {
            expect(frame.near).toEqual(closeTo(before.far - given.overlap * (before.far - before.near), places));
            expect(before.far).toBeLessThan(subjectDepth);
          }
        }
        expect(frames.at(-1)!.far).toBeGreaterThanOrEqual(subjectDepth * (1 - 1e-9));
      }),
      { seed: 55, numRuns: 200 },
    );
  });
});
