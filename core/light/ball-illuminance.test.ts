import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { ballIlluminance } from './ball-illuminance.ts';
import type { FlatSource } from './flat-source.ts';

const lamp: FlatSource = { shape: 'disc', sourceSize: 200, luminance: 1000, centre: [0, 0, 110], facing: [0, 0, -1] };
const ball = { ballRadius: 10 };
const towards = (degrees: number) =>
  [Math.sin((degrees * Math.PI) / 180), 0, Math.cos((degrees * Math.PI) / 180)] as const;

describe('ballIlluminance', () => {
  it('is that of a flat surface where the ball faces the light', () => {
    const because = 'a few roundings';
    expect(ballIlluminance([lamp], ball, [0, 0, 3])).toEqual(closeTo(500 * Math.PI, { relative: 1e-14, because }));
  });

  it('falls all the way around to the side that no light reaches', () => {
    const around = [0, 20, 40, 60, 80, 100, 120].map((degrees) => ballIlluminance([lamp], ball, towards(degrees)));
    expect(around).toEqual(around.toSorted((a, b) => b - a));
    expect(around.at(-2)).toBeGreaterThan(0);
    expect(ballIlluminance([lamp], ball, towards(150))).toBe(0);
  });

  it('reaches as far round the ball as the rim of the light, which a small light does not', () => {
    const small = { ...lamp, sourceSize: 2 };
    expect(ballIlluminance([small], ball, towards(95))).toBe(0);
    expect(ballIlluminance([lamp], ball, towards(95))).toBeGreaterThan(0);
  });

  it('refuses a ball of no radius', () => {
    expect(() => ballIlluminance([lamp], { ballRadius: 0 }, [0, 0, 1])).toThrow(OutOfRange);
  });
});
