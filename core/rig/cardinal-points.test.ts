import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { camera, lens28, lens50, on, ring } from '#tests/support/rig-parts.ts';
import { assembleRig } from './assemble.ts';
import { cardinalPoints, rigMatrix } from './cardinal-points.ts';
import type { Part } from './part.ts';

const pointsOf = (...parts: Part[]) => cardinalPoints(assembleRig([camera, ...parts]));
const rounding = { relative: 1e-12, because: 'rounding' };

describe('cardinalPoints', () => {
  it('are those of the lens itself where it is alone', () => {
    const points = pointsOf(ring(36), on(lens50, { at: 0.1 }));
    expect(points?.focalLength).toEqual(closeTo(50, rounding));
    expect(points?.frontPrincipalDepth).toEqual(closeTo(22, rounding));
    expect(points?.principalSeparation).toEqual(closeTo(-4, rounding));
    expect(points?.imageDistance).toEqual(closeTo(91, rounding));
  });

  it('swap when the lens is turned round', () => {
    const points = pointsOf(on(lens28, { reversed: true }));
    const flangeDepth = 28 - 46.5;
    expect(points?.frontPrincipalDepth).toEqual(closeTo(flangeDepth, rounding));
    expect(points?.imageDistance).toEqual(closeTo(44 + 34, rounding));
    expect(points?.principalSeparation).toEqual(closeTo(12, rounding));
  });

  it('are k times as long with a converter', () => {
    const converter: Part = { part: 'converter', converterFactor: 1.7, converterLength: 30, registerDistance: 44 };
    expect(pointsOf(converter, on(lens50))?.focalLength).toEqual(closeTo(85, rounding));
  });

  it('do not exist where an objective stands the sum of focal lengths from its tube lens', () => {
    const objective: Part = {
      part: 'objective',
      objectiveMagnification: 10,
      numericalAperture: 0.25,
      workingDistance: 12,
      design: { tubeFocalLength: 200 },
      parfocalDistance: 45,
    };
    const tubeLens: Part = { part: 'tube lens', focalLength: 200 };
    expect(pointsOf(ring(156), tubeLens, ring(220 - 25), objective)).toBeNull();
    expect(pointsOf(ring(156), tubeLens, ring(190 - 25), objective)).not.toBeNull();
  });
});

describe('rigMatrix', () => {
  it('keeps the product of height and slope: its determinant is one', () => {
    const [A, B, C, D] = rigMatrix(
      assembleRig([camera, ring(20), on(lens50), ring(3), on(lens28, { reversed: true })]),
    );
    expect(A * D - B * C).toEqual(closeTo(1, rounding));
  });
});
