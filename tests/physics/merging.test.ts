import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { hiddenBand } from '#core/stack/hidden-band.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { railPlan } from '#core/stack/rail-plan.ts';
import { errorMap } from '#core/picture/error-map.ts';
import { Merge } from '#core/picture/merge/merge.ts';
import { resampled } from '#core/picture/merge/resampled.ts';
import { scaleOf } from '#core/picture/merge/scale-of.ts';
import { stackViews } from '#core/picture/merge/stack-views.ts';
import type { Picture } from '#core/picture/picture.ts';
import { psnr } from '#core/picture/psnr.ts';
import { renderPicture } from '#core/picture/render.ts';
import { sharpPicture } from '#core/picture/sharp-picture.ts';
import { entrancePupilOf, type View } from '#core/picture/view.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { detailOfStrips, edge, edgeHeight, level, mergedStack, slope, small } from '#tests/support/small-stacks.ts';

const cone = { ...small, circleOfConfusion: 0.03, entrancePupil: entrancePupilOf(small) };
const limits = { nearLimit: nearLimit(cone), farLimit: farLimit(cone) };
const depth = 3;

function planned(overlap: number, by: 'rail' | 'focus-ring' = 'rail', view = small) {
  const plan = railPlan({ ...limits, subjectDepth: depth, overlap });
  const { frameCount, frameStep, firstPlane } = plan;
  return { ...plan, views: stackViews(view, { frameCount, frameStep, firstHeight: depth - firstPlane, by }) };
}

/** The share of fine detail that each strip of a picture has kept of a perfectly sharp one. */
function kept(picture: Picture, sharp: Picture): readonly number[] {
  const whole = detailOfStrips(sharp, 8);
  return detailOfStrips(picture, 8).map((detail, strip) => detail / whole[strip]!);
}

/** What a blur of the circle of confusion leaves of a rough plane's fine detail. */
function keptAtLimit(): number {
  const view = { ...small, focusHeight: 1.5 + limits.farLimit };
  const all = kept(renderPicture(level, view), sharpPicture(level, view));
  return all.reduce((sum, share) => sum + share, 0) / all.length;
}

describe('a stack of a slope', () => {
  it('of frames that are sharp everywhere merges to the sharp picture, 55 dB near', () => {
    const { picture, view } = mergedStack(slope, planned(0.25).views, 'known', sharpPicture);
    expect(psnr(picture, sharpPicture(slope, view))).toBeGreaterThan(55);
  });

  it.each([0.5, 0.25, 0])('with an overlap of %d is sharp end to end, as planned', (overlap) => {
    const { views, gap } = planned(overlap);
    const { picture, view } = mergedStack(slope, views);
    expect(gap).toBe(0);
    expect(Math.min(...kept(picture, sharpPicture(slope, view)))).toBeGreaterThan(keptAtLimit());
  });

  it.each([-0.5, -1, -2])('with gaps, at an overlap of %d, is soft in bands between the sharp planes', (overlap) => {
    const { views, gap } = planned(overlap);
    const { picture, view } = mergedStack(slope, views);
    const shares = kept(picture, sharpPicture(slope, view));
    expect(gap).toBeGreaterThan(0);
    expect(Math.min(...shares)).toBeLessThan(0.7 * keptAtLimit());
    expect(Math.max(...shares)).toBeGreaterThan(1.5 * keptAtLimit());
  });

  it.each([0.25, -1])(
    'with an overlap of %d is what one picture shows that is as sharp everywhere as the nearest frame',
    (overlap) => {
      const { views } = planned(overlap);
      const { picture, view } = mergedStack(slope, views);
      const atOnce = renderPicture(slope, view, { slices: 40, sharpAt: views.map(({ focusHeight }) => focusHeight) });
      // Each alone is some 30 dB from sharp; a merge adds a little of every frame's softness.
      expect(psnr(picture, atOnce)).toBeGreaterThan(33);
      const sharp = sharpPicture(slope, view);
      const [merged, drawn] = [kept(picture, sharp), kept(atOnce, sharp)];
      merged.forEach((share, strip) => {
        expect(drawn[strip], `strip ${strip}`).toEqual(closeTo(share, { absolute: 0.12, because: 'the same frames' }));
      });
    },
  );

  it('is as sharp in each strip as the frame that is sharpest there', () => {
    const { views } = planned(0);
    const { picture, view } = mergedStack(slope, views);
    const whole = detailOfStrips(sharpPicture(slope, view), 8);
    const alone = views.map((frame) => detailOfStrips(resampled(renderPicture(slope, frame), scaleOf(frame, view)), 8));
    detailOfStrips(picture, 8).forEach((detail, strip) => {
      const best = Math.max(...alone.map((frame) => frame[strip]!));
      expect(detail / whole[strip]!, `strip ${strip}`).toEqual(
        closeTo(best / whole[strip]!, {
          absolute: 0.06,
          because:
            'within a strip the sharpest frame is one here and another there, and all others still count a little',
        }),
      );
    });
  });

  it('is soft where a frame is lost, and only there', () => {
    const { views } = planned(0.25);
    const all = mergedStack(slope, views).picture;
    const { picture, view } = mergedStack(
      slope,
      views.filter((_, index) => index !== 3),
    );
    const sharp = sharpPicture(slope, view);
    const [before, after] = [kept(all, sharp), kept(picture, sharp)];
    const lost = before.map((share, strip) => share - after[strip]!);
    expect(Math.max(...lost)).toBeGreaterThan(0.25);
    // The sharp plane of the fourth of six frames lies in the left half; at the right all is as it was.
    for (const difference of lost.slice(10)) expect(Math.abs(difference)).toBeLessThan(0.02);
  });
});

describe('the scale of frames', () => {
  it.each(['rail', 'focus-ring'] as const)(
    'left as it is on a %s blurs what a known one keeps; an estimated one comes near',
    (by) => {
      const view: View = by === 'rail' ? small : { ...small, magnification: 0.8 };
      const { views } = planned(0.25, by, view);
      const likeness = (how: 'known' | 'estimated' | 'uncorrected') => {
        const { picture, view: reference } = mergedStack(slope, views, how);
        return psnr(picture, sharpPicture(slope, reference));
      };
      const known = likeness('known');
      expect(known).toBeGreaterThan(36);
      expect(likeness('uncorrected')).toBeLessThan(known - 5);
      expect(likeness('estimated')).toBeGreaterThan(known - 1.5);
    },
  );
});

describe('a near edge over something deeper', () => {
  const views = (frameCount: number) =>
    stackViews(small, { frameCount, frameStep: 2.2 / (frameCount - 1), firstHeight: 2.1, by: 'rail' });

  /** The first column outside the edge, which lies on the axis. */
  const middle = small.columns / 2;

  /** Mean square error in the columns outside the edge, from one distance to another. */
  function errorOf(frameCount: number, from: number, to: number): number {
    const { picture, view } = mergedStack(edge, views(frameCount));
    const { light } = errorMap(picture, sharpPicture(edge, view));
    let sum = 0;
    for (let row = 16; row < 80; row++)
      for (let x = middle + from; x < middle + to; x++) sum += light[row * view.columns + x]! ** 2 / (64 * (to - from));
    return sum;
  }

  const half = hiddenBand({ ...cone, entrancePupilDistance: small.entrancePupilDistance, edgeHeight }) / 2;
  const pixels = Math.round((half * small.magnification) / small.pitch);

  it('has its halo in the band that the edge hides from part of the pupil', () => {
    expect(pixels).toBe(9);
    expect(errorOf(9, 1, pixels)).toBeGreaterThan(10 * errorOf(9, 2 * pixels, 4 * pixels));
  });

  it('keeps it however many frames there are', () => {
    expect(errorOf(17, 1, pixels)).toEqual(
      closeTo(errorOf(9, 1, pixels), { relative: 0.1, because: 'no frame sees what the edge hides' }),
    );
  });
});

describe('memory', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('for a merge is that of a few pictures, and each further frame takes as much as the one before', () => {
    let bytes = 0;
    class Counted extends Float32Array {
      constructor(first: never, ...rest: never[]) {
        super(...([first, ...rest] as unknown as [number]));
        if (typeof first === 'number') bytes += 4 * first;
      }
    }
    vi.stubGlobal('Float32Array', Counted);
    const taken = (work: () => void) => {
      const before = bytes;
      work();
      return (bytes - before) / (4 * 96 * 64 * 3);
    };
    const light = Array.from({ length: 96 * 64 * 3 }, (_, k) => k % 7);
    const picture: Picture = { columns: 96, rows: 64, channels: 3, light: new Float32Array(light) };
    let merge: Merge;
    expect(taken(() => (merge = new Merge(96, 64, 3)))).toBeLessThan(5);
    const frames = Array.from({ length: 5 }, () => taken(() => merge.add(picture, 1.01)));
    expect(frames[0]).toBeLessThan(4);
    expect(new Set(frames).size).toBe(1);
  });

  it('for frames is given back: none is kept', async () => {
    setFlagsFromString('--expose-gc');
    const collect = runInNewContext('gc') as () => void;
    const merge = new Merge(48, 32, 1);
    const frames = [1, 2, 3].map((value) => {
      const light = new Float32Array(48 * 32).fill(value);
      merge.add({ columns: 48, rows: 32, channels: 1, light }, 1 + value / 100);
      return new WeakRef(light);
    });
    await new Promise((done) => setTimeout(done));
    collect();
    expect(frames.map((frame) => frame.deref())).toEqual([undefined, undefined, undefined]);
    expect(merge.result().columns).toBe(48);
  });
});
