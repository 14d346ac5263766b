import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { imageThrough } from './image-through.ts';
import type { Surface } from './prescription.ts';

const rounding = { relative: 1e-13, because: 'rounding' };
const ball: readonly Surface[] = [
  { radius: 5, thickness: 10, index: 1.5 },
  { radius: -5, thickness: 2.5, index: 1 },
];
const plate: readonly Surface[] = [
  { radius: Infinity, thickness: 6, index: 1.5 },
  { radius: Infinity, thickness: 0, index: 1 },
];

describe('imageThrough', () => {
  it('is as far behind a ball as the subject is in front of it at life size', () => {
    const { imageDistance, magnification } = imageThrough(ball, 10);
    expect(imageDistance).toEqual(closeTo(10, rounding));
    expect(magnification).toEqual(closeTo(-1, rounding));
  });

  it('gives the subject its place back when the light runs the other way', () => {
    const { imageDistance, magnification } = imageThrough(ball, 37);
    const back = imageThrough(ball, imageDistance);
    expect(back.imageDistance).toEqual(closeTo(37, { relative: 1e-12, because: 'rounding' }));
    expect(back.magnification * magnification).toEqual(closeTo(1, { relative: 1e-12, because: 'rounding' }));
  });

  it('counts the ratio of the indices into the magnification of a single surface', () => {
    const { imageDistance, magnification } = imageThrough([{ radius: 800, thickness: 0, index: 1.5 }], 300);
    expect(magnification).toEqual(closeTo(-imageDistance / (1.5 * 300), rounding));
  });

  it('is moved by a plate of glass by (1 − 1/n) of its thickness', () => {
    expect(imageThrough(plate, 100).imageDistance).toEqual(closeTo(-100 - 6 / 1.5, rounding));
  });

  it('refuses a subject in the focal plane by name', () => {
    expect(() => imageThrough(ball, 2.5)).toThrow(OutOfRange);
    expect(() => imageThrough(ball, 2.5)).toThrow(/subject-distance is 2.5/);
    expect(() => imageThrough(ball, NaN)).toThrow(/subject-distance is NaN/);
  });

  it('refuses a subject infinitely far away, whose image has no magnification, and surfaces that are none', () => {
    expect(() => imageThrough(ball, Infinity)).toThrow(/subject-distance is Infinity/);
    expect(() => imageThrough([{ radius: NaN, thickness: 0, index: 1.5 }], 300)).toThrow(OutOfRange);
    const endless = [{ radius: 10, thickness: Infinity, index: 1.5 }, ball[1]!];
    expect(() => imageThrough(endless, 300)).toThrow(OutOfRange);
  });
});
