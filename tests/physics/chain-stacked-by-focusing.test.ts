import { describe, expect, it } from 'vitest';
import { assembleRig } from '#core/rig/assemble.ts';
import { conesByFocusing } from '#core/rig/cones-by-focusing.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import { solveRig } from '#core/rig/solve.ts';
import { focusRingPlan } from '#core/stack/focus-ring-plan.ts';
import { focusedPlan } from '#core/stack/focused-plan.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { camera, lens50, on, ring } from '#tests/support/rig-parts.ts';
import { rootBetween } from '#tests/support/root-between.ts';
import { spotOf } from '#tests/support/chain-rays.ts';

const macro: Lens = { ...lens50, focusing: { by: 'unit', closestMagnification: 1.4 } };
const inside: Lens = {
  ...lens50,
  focusing: { by: 'internal', closestMagnification: 0.5, closestFocusDistance: 190, keeps: 'f-number' },
};
const wanted = { circleOfConfusion: 0.025, overlap: 0.2 };

/** The blur that a place so far from the sensor has on it, by rays, the lens set to *at*. */
function blurAt(parts: readonly Part[], part: number, at: number, fromSensor: number): number {
  const rig = assembleRig(
    parts.map((one, place) => (place === part ? ({ ...one, focusMagnification: at } as Part) : one)),
  );
  const solved = solveRig(rig);
  if (solved.sharpPlane === 'nowhere') throw new Error('no picture');
  const stop = rig.elements.find((element) => element.part === solved.limitedBy)!;
  const { upper, lower } = spotOf(rig, stop, { ahead: fromSensor - rig.length, across: 0 });
  return Math.abs(upper - lower);
}

/** The setting between two at which the chain has the magnification. */
function settingWhere(
  parts: readonly Part[],
  part: number,
  magnification: number,
  [from, to]: readonly [number, number],
) {
  return rootBetween(from, to, (at) => {
    const solved = solveRig(
      assembleRig(parts.map((one, place) => (place === part ? ({ ...one, focusMagnification: at } as Part) : one))),
    );
    return ('magnification' in solved ? solved.magnification : 0) - magnification;
  });
}

describe('a chain focused by the ring of one of its lenses', () => {
  it.each([0.6, 1.2])('is taken in the frames of a lens alone where it is one, from m = %d on', (at) => {
    const { coneAfter, farthestStep } = conesByFocusing([camera, on(macro, { at })], 1);
    const subjectDepth = at < 1 ? 12 : 1;
    const ours = focusedPlan({ ...wanted, subjectDepth, coneAfter, farthestStep });
    const alone = { focalLength: 50, fNumber: 8, pupilMagnification: 1.2, magnification: at };
    const theirs = focusRingPlan({ ...wanted, ...alone, subjectDepth });
    const close = { absolute: 1e-8, because: 'settings found by halving, lengths that cancel' };
    expect(ours).toHaveLength(theirs.length);
    expect(ours.length).toBeGreaterThan(2);
    for (const [index, frame] of ours.entries()) {
      for (const key of ['magnification', 'plane', 'near', 'far'] as const) {
        expect(frame[key]).toEqual(closeTo(theirs[index]![key], close));
      }
    }
    // Below life size the ring goes to infinity; beyond it ends where the lens does.
    expect(farthestStep === Infinity).toBe(at < 1);
  });

  it.each<[string, readonly Part[], number]>([
    [
      'a close-up lens before one that focuses inside',
      [camera, on(inside, { at: 0.5 }), { part: 'close-up lens', closeUpPower: 4 }],
      1,
    ],
    [
      'a converter behind it',
      [
        camera,
        { part: 'converter', converterFactor: 1.4, converterLength: 20, registerDistance: 44 },
        ring(12),
        on(inside, { at: 0.4 }),
      ],
      3,
    ],
    [
      'another lens turned round on it',
      [camera, on(lens50, { at: 0, fNumber: 11 }), on({ ...lens50, focalLength: 35 }, { fNumber: 2, reversed: true })],
      1,
    ],
  ])('draws the circle of confusion at both limits of every frame, by rays: %s', (_, parts, part) => {
    const { coneAfter, farthestStep } = conesByFocusing(parts, part);
    const first = solveRig(assembleRig(parts));
    if (first.sharpPlane !== 'in front') throw new Error(first.sharpPlane);
    const subjectDepth = 0.4 * farthestStep < 1e3 ? 0.4 * farthestStep : 20;
    const frames = focusedPlan({ ...wanted, subjectDepth, coneAfter, farthestStep });
    expect(frames.length).toBeGreaterThan(2);
    const start = (parts[part] as Extract<Part, { part: 'lens' }>).focusMagnification;
    const circle = closeTo(0.025, { relative: 1e-5, because: 'a setting found by its magnification' });
    for (const [index, { magnification, near, far }] of frames.slice(0, 4).entries()) {
      const at = index === 0 ? start : settingWhere(parts, part, magnification, start > 0 ? [0, start] : [0, 0.15]);
      const fromSensor = first.focusDistance - frames[0]!.plane;
      expect(blurAt(parts, part, at, fromSensor + near)).toEqual(circle);
      expect(blurAt(parts, part, at, fromSensor + far)).toEqual(circle);
    }
  });

  it('refuses a subject deeper than the ring reaches, a step beyond it, and a part that is no lens', () => {
    const parts = [camera, ring(25), on(lens50, { at: 0.15 })];
    const { coneAfter, farthestStep } = conesByFocusing(parts, 2);
    expect(farthestStep).toBeGreaterThan(1);
    expect(farthestStep).toBeLessThan(100);
    expect(() => coneAfter(farthestStep * 1.01)).toThrow(/frame-step/);
    expect(() => coneAfter(-1)).toThrow(/frame-step is -1/);
    const deep = { ...wanted, coneAfter, farthestStep, subjectDepth: 2 * farthestStep + 10 };
    expect(() => focusedPlan(deep)).toThrow(/subject-depth is .* up to .* mm, which focusing reaches/);
    expect(() => conesByFocusing(parts, 1)).toThrow(/part 1 is ring; accepted: a lens/);
    expect(() => conesByFocusing([camera, on(lens50)], 1)).toThrow(/magnification is 0/);
  });

  it('takes the last frame as far out as the ring goes, where that will do', () => {
    const { coneAfter, farthestStep } = conesByFocusing([camera, ring(25), on(lens50, { at: 0.15 })], 2);
    const last = focusedPlan({ ...wanted, coneAfter, farthestStep, subjectDepth: farthestStep }).at(-1)!;
    expect(last.far).toBeGreaterThanOrEqual(farthestStep);
  });
});
