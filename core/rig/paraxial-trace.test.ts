import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { glassPoints, glassPupils } from './paraxial-trace.ts';
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

describe('glassPoints', () => {
  it('is 7.5 mm for a ball of 10 mm and index 1.5, both principal planes in its middle', () => {
    const points = glassPoints(ball);
    expect(points.focalLength).toEqual(closeTo(7.5, rounding));
    expect(points.backFocus).toEqual(closeTo(2.5, rounding));
    expect(points.frontFocus).toEqual(closeTo(-2.5, rounding));
    expect(points.frontPrincipal).toEqual(closeTo(5, rounding));
    expect(points.rearPrincipal).toEqual(closeTo(-5, rounding));
    expect(points.principalSeparation).toEqual(closeTo(0, { absolute: 1e-13, because: 'rounding' }));
    expect(points.track).toBe(10);
  });

  it('tends to the lens maker’s formula as the lens gets thin', () => {
    const thin = glassPoints([
      { radius: 30, thickness: 1e-9, index: 1.6 },
      { radius: 60, thickness: 0, index: 1 },
    ]);
    expect(thin.focalLength).toEqual(closeTo(100, { relative: 1e-10, because: 'a thousand-millionth of a mm thick' }));
  });

  it('refuses a flat plate, which has no focal length, by name', () => {
    expect(() => glassPoints(plate)).toThrow(OutOfRange);
    expect(() => glassPoints(plate)).toThrow(/focal-length is Infinity/);
  });

  it('refuses surfaces that are none: endless glass, a radius or an index that is no number', () => {
    const [front, back] = [
      { radius: 10, thickness: 5, index: 1.5 },
      { radius: -10, thickness: 0, index: 1 },
    ];
    expect(glassPoints([front, back]).focalLength).toBeGreaterThan(0);
    for (const odd of [{ thickness: Infinity }, { thickness: NaN }, { radius: NaN }, { index: NaN }, { radius: 0 }]) {
      expect(() => glassPoints([{ ...front, ...odd }, back]), JSON.stringify(odd)).toThrow(OutOfRange);
    }
  });
});

describe('glassPupils', () => {
  it('are the stop itself where it stands in front of all glass', () => {
    const stopInFront: readonly Surface[] = [{ radius: Infinity, thickness: 3, index: 1 }, ...ball];
    expect(glassPupils(stopInFront, 0)).toMatchObject({ entrancePosition: 0, entranceOverStop: 1 });
  });

  it('are alike on both sides of a stop in the middle of a ball, twice as far apart as its index tells', () => {
    const halves: readonly Surface[] = [
      { radius: 5, thickness: 5, index: 1.5 },
      { radius: Infinity, thickness: 5, index: 1.5 },
      { radius: -5, thickness: 0, index: 1 },
    ];
    const { pupilMagnification, entrancePosition, exitPosition, entranceOverStop } = glassPupils(halves, 1);
    expect(pupilMagnification).toEqual(closeTo(1, rounding));
    // The middle of a ball is seen where it is, and n times as large.
    expect(entrancePosition).toEqual(closeTo(5, rounding));
    expect(exitPosition).toEqual(closeTo(-5, rounding));
    expect(entranceOverStop).toEqual(closeTo(1.5, rounding));
  });

  it('refuses a telecentric lens by name', () => {
    const stopInFocus: readonly Surface[] = [
      { radius: 5, thickness: 10, index: 1.5 },
      { radius: -5, thickness: 2.5, index: 1 },
      { radius: Infinity, thickness: 10, index: 1 },
    ];
    expect(() => glassPupils(stopInFocus, 2)).toThrow(/entrance-pupil is Infinity/);
  });

  it('refuses a stop where no surface is, and surfaces that are none', () => {
    const unknown: readonly Surface[] = [{ radius: NaN, thickness: 1, index: 1.5 }];
    expect(() => glassPupils(unknown, 1)).toThrow(/stop is at surface 1, of 1/);
    expect(() => glassPoints(unknown)).toThrow(/focal-length is NaN/);
  });

  it.each([{ thickness: Infinity }, { thickness: -Infinity }, { thickness: NaN }, { radius: 0 }, { index: NaN }])(
    'refuses a surface that is none, by name: %o',
    (odd) => {
      const none: readonly Surface[] = [{ ...ball[0]!, ...odd }, ball[1]!];
      expect(() => glassPoints(none)).toThrow(OutOfRange);
      expect(() => glassPoints(none)).toThrow(/focal-length is/);
      expect(() => glassPupils(none, 1)).toThrow(/entrance-pupil is NaN/);
    },
  );

  it('do not ask how far the sensor is', () => {
    const anywhere: readonly Surface[] = [ball[0]!, { ...ball[1]!, thickness: Infinity }];
    expect(glassPoints(anywhere)).toEqual(glassPoints(ball));
  });
});
