import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { railPlan } from '#core/stack/rail-plan.ts';
import { estimateScale } from '#core/picture/merge/estimate-scale.ts';
import { Merge } from '#core/picture/merge/merge.ts';
import { scaleOf } from '#core/picture/merge/scale-of.ts';
import { stackViews } from '#core/picture/merge/stack-views.ts';
import type { Picture } from '#core/picture/picture.ts';
import { renderPicture } from '#core/picture/render.ts';
import { entrancePupilOf } from '#core/picture/view.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { slope, small } from '#tests/support/small-stacks.ts';

/** Stacks of one to five noisy frames of any small size. */
const stacks = fc
  .record({
    columns: fc.integer({ min: 1, max: 40 }),
    rows: fc.integer({ min: 1, max: 40 }),
    channels: fc.constantFrom(1 as const, 3 as const),
    seeds: fc.array(fc.nat({ max: 9999 }), { minLength: 1, maxLength: 5 }),
  })
  .map(({ seeds, ...shape }) => seeds.map((seed): Picture => ({ ...shape, light: noise(shape, seed) })));
const scales = fc.array(fc.double({ min: 0.8, max: 1.25, noNaN: true }), { minLength: 5, maxLength: 5 });

function noise({ columns, rows, channels }: Omit<Picture, 'light'>, seed: number): Float32Array {
  return Float32Array.from({ length: columns * rows * channels }, (_, k) => {
    const value = Math.sin(k * 12.9898 + seed) * 43758.5453;
    return value - Math.floor(value);
  });
}

function merged(frames: readonly (readonly [Picture, number])[]): Float32Array {
  const { columns, rows, channels } = frames[0]![0];
  const merge = new Merge(columns, rows, channels);
  for (const [frame, scale] of frames) merge.add(frame, scale);
  return merge.result().light;
}

const apart = (a: Float32Array, b: Float32Array) =>
  a.reduce((most, value, at) => Math.max(most, Math.abs(value - b[at]!)), 0);

describe('whatever the stack', () => {
  it('one frame merges to itself', () => {
    fc.assert(fc.property(stacks, ([frame]) => apart(merged([[frame!, 1]]), frame!.light) < 1e-5));
  });

  it('the order of frames matters to rounding alone', () => {
    fc.assert(
      fc.property(stacks, scales, (frames, factors) => {
        const scaled = frames.map((frame, k) => [frame, factors[k]!] as const);
        return apart(merged(scaled), merged([...scaled].reverse())) < 1e-4;
      }),
    );
  });

  it('even greys merge to their mean, the same everywhere', () => {
    const greys = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(stacks, greys, (frames, levels) => {
        const frame = frames[0]!;
        const all = merged(levels.map((value) => [{ ...frame, light: frame.light.map(() => value) }, 1]));
        const mean = levels.reduce((sum, value) => sum + value / levels.length, 0);
        return all.every((value) => Math.abs(value - mean) < 1e-5);
      }),
    );
  });

  it('light twice as bright merges to light twice as bright where something is to be seen', () => {
    fc.assert(
      fc.property(stacks, (frames) => {
        const bright = frames.map((frame) => ({ ...frame, light: frame.light.map((value) => 2 * value) }));
        const once = merged(frames.map((frame) => [frame, 1]));
        return (
          apart(
            merged(bright.map((frame) => [frame, 1])),
            once.map((value) => 2 * value),
          ) < 0.02
        );
      }),
    );
  });
});

describe('the scale found by comparing neighbouring frames', () => {
  const cone = { ...small, circleOfConfusion: 0.03, entrancePupil: entrancePupilOf(small) };
  const limits = { nearLimit: nearLimit(cone), farLimit: farLimit(cone) };

  it.each([0.5, 0.25, 0])('puts their rims right to an eighth of a pixel at an overlap of %d', (overlap) => {
    const { frameCount, frameStep } = railPlan({ ...limits, subjectDepth: 3, overlap });
    const views = stackViews(small, { frameCount, frameStep, firstHeight: 3, by: 'rail' });
    const frames = views.map((view) => renderPicture(slope, view));
    for (let k = 1; k < views.length; k++) {
      const between = views[k]!.focusHeight + frameStep / 2;
      const known = scaleOf(views[k]!, views[k - 1]!, between);
      expect((estimateScale(frames[k]!, frames[k - 1]!) * small.columns) / 2).toEqual(
        closeTo((known * small.columns) / 2, {
          absolute: 0.125,
          because: 'a blur that goes from one half to the other looks like a scale',
        }),
      );
    }
  });
});
