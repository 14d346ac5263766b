import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import type { FlatSource } from './flat-source.ts';
import { illuminanceFrom } from './illuminance-from.ts';

const bowl: FlatSource = { shape: 'disc', sourceSize: 200, luminance: 1000, centre: [0, 0, 100], facing: [0, 0, -1] };
const card: FlatSource = {
  shape: 'rectangle',
  sourceSize: 100,
  height: 50,
  luminance: 200,
  centre: [-80, 0, 20],
  facing: [1, 0, 0],
};
const subject = { point: [0, 0, 0], normal: [0, 0, 4] } as const;
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('illuminanceFrom', () => {
  it('is half of π L for a disc as far as its radius', () => {
    expect(illuminanceFrom([bowl], subject)).toEqual(closeTo(500 * Math.PI, rounding));
  });

  it('adds lights up, each in step with its luminance', () => {
    const apart = illuminanceFrom([bowl], subject) + 3 * illuminanceFrom([card], subject);
    expect(illuminanceFrom([bowl, { ...card, luminance: 600 }], subject)).toEqual(closeTo(apart, rounding));
  });

  it('is nothing from no light, and from one that shows its back', () => {
    expect(illuminanceFrom([], subject)).toBe(0);
    expect(illuminanceFrom([{ ...bowl, facing: [0, 0, 1] }], subject)).toBe(0);
    expect(illuminanceFrom([{ ...card, facing: [-1, 0, 0] }], subject)).toBe(0);
  });

  it('refuses a light or a surface that is none, even where it would give nothing', () => {
    expect(() => illuminanceFrom([{ ...bowl, sourceSize: 0 }], subject)).toThrow(OutOfRange);
    expect(() => illuminanceFrom([{ ...bowl, facing: [0, 0, 1], luminance: NaN }], subject)).toThrow(/luminance/);
    expect(() => illuminanceFrom([bowl], { ...subject, normal: [0, 0, 0] })).toThrow(OutOfRange);
    for (const light of [bowl, card]) {
      expect(() => illuminanceFrom([light], { ...subject, point: [0, NaN, 0] })).toThrow(/flash-distance is NaN/);
    }
  });
});
