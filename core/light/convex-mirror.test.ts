import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { convexMirrorImage } from './convex-mirror.ts';

describe('convexMirrorImage', () => {
  it('lies 3.33 deep and is two thirds as large for something 5 before a ball of radius 20', () => {
    const because = 'a few roundings';
    const image = convexMirrorImage({ subjectDistance: 5, ballRadius: 20 });
    expect(image.depth).toEqual(closeTo(10 / 3, { relative: 1e-14, because }));
    expect(image.magnification).toEqual(closeTo(2 / 3, { relative: 1e-14, because }));
  });

  it('keeps 1/d − 1/depth = −2/r', () => {
    const { depth } = convexMirrorImage({ subjectDistance: 37, ballRadius: 4.1 });
    expect(1 / 37 - 1 / depth).toEqual(closeTo(-2 / 4.1, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('comes to half the radius for what is far away', () => {
    const { depth } = convexMirrorImage({ subjectDistance: 1e9, ballRadius: 4 });
    expect(depth).toEqual(closeTo(2, { relative: 1e-8, because: 'r/(2 d) is left' }));
  });

  it('refuses what touches the ball', () => {
    expect(() => convexMirrorImage({ subjectDistance: 0, ballRadius: 4 })).toThrow(OutOfRange);
    expect(() => convexMirrorImage({ subjectDistance: 5, ballRadius: NaN })).toThrow(/ball-radius/);
  });
});
