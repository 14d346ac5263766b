import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { cornersOf, isBefore, sourceAxes, type DiscSource, type RectangleSource } from './flat-source.ts';
import { cross } from './vector.ts';

const softBox: RectangleSource = {
  shape: 'rectangle',
  sourceSize: 60,
  height: 40,
  centre: [0, 0, 100],
  facing: [0, 0, -5],
  luminance: 1000,
};
const bowl: DiscSource = { shape: 'disc', sourceSize: 50, centre: [10, 0, 30], facing: [1, 2, -3], luminance: 0 };

describe('sourceAxes', () => {
  it.each([softBox, bowl])('turn so that the first × the second points out of the back of a $shape', (source) => {
    const { first, second, back } = sourceAxes(source);
    const product = cross(first, second);
    const rounding = { absolute: 1e-15, because: 'a few roundings' };
    expect(product).toEqual(back.map((coordinate) => closeTo(coordinate, rounding)));
  });

  it.each([
    { ...softBox, sourceSize: 0 },
    { ...softBox, height: -1 },
    { ...softBox, luminance: -1 },
    { ...softBox, centre: [0, NaN, 0] as const },
    { ...softBox, facing: [0, 0, 0] as const },
    { ...softBox, up: [0, 0, 0] as const },
  ])('refuse a light that is none', (source) => {
    expect(() => sourceAxes(source)).toThrow(OutOfRange);
  });
});

describe('cornersOf', () => {
  it('puts the width across and the height along up', () => {
    const corners = cornersOf(softBox);
    expect(corners.map(([x]) => Math.abs(x))).toEqual([30, 30, 30, 30]);
    expect(corners.map(([, y]) => y)).toEqual([-20, -20, 20, 20]);
    expect(corners.every(([, , z]) => z === 100)).toBe(true);
  });

  it('turns with up', () => {
    const turned = cornersOf({ ...softBox, up: [1, 0, 0] });
    expect(turned.map(([x]) => Math.abs(x))).toEqual([20, 20, 20, 20]);
  });
});

describe('isBefore', () => {
  it('tells the lit side from the dark back', () => {
    expect(isBefore(softBox, [5, 5, 99])).toBe(true);
    expect(isBefore(softBox, [5, 5, 101])).toBe(false);
    expect(isBefore(softBox, [5, 5, 100])).toBe(false);
  });
});
