import { describe, expect, test } from 'vitest';
import { renderJob } from './render-job.ts';
import type { Fineness, PictureJob } from './job.ts';
import type { Rendered } from './messages.ts';

const rough: Fineness = { coarseness: 4, slices: 8 };
const job: PictureJob = {
  subject: 'slanted-scale',
  seed: 1,
  view: {
    magnification: 1,
    effectiveFNumber: 8,
    pupilMagnification: 1,
    entrancePupilDistance: 100,
    focusHeight: 8,
    pitch: 0.03,
    columns: 384,
    rows: 256,
    colour: true,
  },
};

function rendered(wanted: PictureJob, fineness = rough): { readonly result: Rendered; readonly shares: number[] } {
  const shares: number[] = [];
  const steps = renderJob(wanted, fineness);
  for (;;) {
    const step = steps.next();
    if (step.done) return { result: step.value, shares };
    shares.push(step.value);
  }
}

describe('developing', () => {
  test('gives a picture on fewer pixels where it is rough, and tells how far it is', () => {
    const { result, shares } = rendered(job);
    expect(result.picture).toMatchObject({ columns: 96, rows: 64 });
    expect(result).not.toHaveProperty('sharp');
    expect(shares.length).toBeGreaterThan(3);
    expect(shares.every((share, index) => share > 0 && share <= 1 && share >= (shares[index - 1] ?? 0))).toBe(true);
  });

  test('compares with the sharp frame: a small aperture is nearer to it', () => {
    const open = rendered({ ...job, compare: true }).result;
    const closed = rendered({ ...job, compare: true, view: { ...job.view, effectiveFNumber: 45 } }).result;
    expect(closed.likeness!).toBeGreaterThan(open.likeness! + 3);
    expect(open.difference).toMatchObject({ columns: 96, rows: 64 });
  });

  const stack = {
    frameStep: 1,
    frameCount: 16,
    firstHeight: 15.5,
    by: 'rail',
    focalLength: 50,
    scale: 'known',
    lost: [],
  } as const;

  test('sketches a stack at once, lost frames and all, as sharp as it will be', () => {
    const likenessOf = (lost: readonly number[], atOnce: boolean) =>
      rendered({ ...job, compare: true, stack: { ...stack, lost } }, { ...rough, atOnce }).result.likeness!;
    const half = [8, 9, 10, 11, 12, 13, 14, 15];
    // A sketch has nothing of the other frames' softness, which a merge has traces of.
    expect(likenessOf([], true)).toBeGreaterThan(likenessOf([], false));
    expect(Math.abs(likenessOf(half, true) - likenessOf(half, false))).toBeLessThan(2);
    expect(likenessOf(half, true)).toBeLessThan(likenessOf([], false) - 5);
  });

  test('leaves out what is not taken, as if it were lost', () => {
    const pictureOf = (missing: object) => rendered({ ...job, stack: { ...stack, ...missing } }).result.picture;
    expect(pictureOf({ taken: 12 })).toEqual(pictureOf({ lost: [12, 13, 14, 15] }));
    expect(pictureOf({ taken: 12 })).not.toEqual(pictureOf({}));
  });

  test('merges a stack to what no frame of it is', () => {
    const one = rendered({ ...job, compare: true, stack: { ...stack, only: 8 } }).result;
    const merged = rendered({ ...job, compare: true, stack }).result;
    expect(merged.likeness!).toBeGreaterThan(one.likeness! + 3);
  });

  test('shows what scale left as it is does, and finds it from the frames alone', () => {
    const likeness = (scale: 'known' | 'estimated' | 'uncorrected') =>
      rendered({ ...job, compare: true, stack: { ...stack, scale } }).result.likeness!;
    const [known, uncorrected] = [likeness('known'), likeness('uncorrected')];
    expect(uncorrected).toBeLessThan(known - 3);
    // Pixels as large as these leave the estimate some hundredths of one.
    expect(likeness('estimated')).toBeGreaterThan((known + uncorrected) / 2);
  });

  test('says in words why there is no picture', () => {
    const inside = { ...job, view: { ...job.view, entrancePupilDistance: -1 } };
    expect(() => rendered(inside)).toThrow(/in front of the entrance pupil/);
    expect(() => rendered({ ...job, stack: { ...stack, frameCount: 5000 } })).toThrow(/1 to 2000/);
    expect(() => rendered({ ...job, stack: { ...stack, frameCount: 2, lost: [0, 1] } })).toThrow(/nothing to merge/);
    expect(() => rendered({ ...job, subject: 'unicorn' })).toThrow(/no subject is called/);
  });
});
