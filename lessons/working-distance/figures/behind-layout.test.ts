import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isWithin, meet } from '#site/figures/sheet/boxes.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { behindLayout, type BehindPlan, type Seen } from './behind-layout.ts';

const boxes = [
  { width: 760, height: 450, text: 14.5, small: 12.3 },
  { width: 390, height: 326, text: 12.5, small: 10.6 },
  { width: 1229, height: 512, text: 28.8, small: 28.8 },
];

const lensAt = (u: number, fieldWidth: number, backgroundDistance: number, index: number): Seen => ({
  key: String(index),
  words: [`${u} mm: sees something`, `${u} mm`],
  isHeld: index === 0,
  entrancePupil: u / 12,
  entrancePupilDistance: u,
  backgroundWidth: (fieldWidth * (u + backgroundDistance)) / u,
});

const planOf = (distances: readonly number[], fieldWidth: number, backgroundDistance: number): BehindPlan => ({
  seen: distances.map((u, index) => lensAt(u, fieldWidth, backgroundDistance, index)),
  fieldWidth,
  fieldInWords: `${fieldWidth} mm wide`,
  backgroundDistance,
  backgroundInWords: `B ${backgroundDistance} mm`,
  spacing: 50,
});

const plans = fc
  .tuple(
    fc.array(fc.double({ min: 20, max: 5000, noNaN: true }), { minLength: 3, maxLength: 3 }),
    fc.double({ min: 1, max: 1800, noNaN: true }),
    fc.oneof(fc.constant(0), fc.double({ min: 1, max: 100_000, noNaN: true })),
  )
  .map((all) => planOf(...all));

describe('what lies behind, from above', () => {
  it('has pupils, subject and posts to one scale, and each line of sight through an end of the field', () => {
    const plan = planOf([145, 255, 513], 72, 500);
    const { scale, subjectX, postsX, views, fieldHalf } = behindLayout(plan, boxes[0]!);
    const pixels = scale.pixelsPerMillimetre;
    const rounding = { absolute: 1e-9, because: 'rounding' };
    expect(subjectX - postsX).toEqual(closeTo(500 * pixels, rounding));
    expect(views[2]!.x - subjectX).toEqual(closeTo(513 * pixels, rounding));
    expect(2 * fieldHalf).toEqual(closeTo(72 * pixels, rounding));
    const [, x, y] = /^M([\d.-]+) ([\d.-]+)L/.exec(views[0]!.rays)!.map(Number) as [number, number, number];
    const axisY = behindLayout(plan, boxes[0]!).axisY;
    const atField = ((axisY - y) * (views[0]!.x - subjectX)) / (views[0]!.x - x);
    expect(atField).toEqual(closeTo(fieldHalf, { absolute: 0.1, because: 'paths are printed to a tenth of a pixel' }));
  });

  it('keeps all on the sheet, and no words on each other, at any size', () => {
    fc.assert(
      fc.property(plans, fc.constantFrom(...boxes), (plan, box) => {
        const at = behindLayout(plan, box);
        const sheet = { left: 0, top: 0, right: box.width, bottom: box.height };
        for (const [index, label] of at.labels.entries()) {
          expect(isWithin(label.box, sheet)).toBe(true);
          for (const other of at.labels.slice(index + 1)) expect(meet(label.box, other.box)).toBe(false);
        }
        for (const view of at.views) expect(view.x).toBeLessThanOrEqual(box.width);
        expect(at.postsX).toBeGreaterThan(0);
        expect(at.bottom).toBeLessThan(at.titleY - box.small);
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  it('leaves the subject where it is while a hand moves the posts', () => {
    const before = behindLayout(planOf([145, 255, 513], 72, 500), boxes[0]!);
    const during = behindLayout(planOf([145, 255, 513], 72, 400), boxes[0]!, before);
    expect(during.subjectX).toBe(before.subjectX);
    expect(during.scale).toBe(before.scale);
  });
});
