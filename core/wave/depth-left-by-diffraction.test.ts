import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depthOfFieldOfCone } from '#core/depth/depth-of-field-of-cone.formula.ts';
import { effectiveFNumberForDepth } from '#core/depth/effective-f-number-for-depth.formula.ts';
import { subjectDepthInOneFrame } from '#core/depth/subject-depth-in-one-frame.formula.ts';
import { depthLeftByDiffraction } from './depth-left-by-diffraction.ts';
import { finestEffectiveFNumber } from './finest-effective-f-number.formula.ts';

const rule = { circleOfConfusion: 0.02, wavelength: 0.00055 };
const telecentric = (magnification: number, effectiveFNumber: number) => ({
  magnification,
  effectiveFNumber,
  inverseEntrancePupilDistance: 0,
});
const close = (one: number, other: number) => expect(Math.abs(one / other - 1)).toBeLessThan(1e-9);

describe('depthLeftByDiffraction', () => {
  it('gives 0.575 mm at life size, f/16 effective', () => {
    // 2 × 16 × √(0.02² − 0.0088²), by hand.
    expect(depthLeftByDiffraction(telecentric(1, 16), rule)).toBeCloseTo(0.57473, 4);
  });

  it('is undone by the f-number for a depth', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 25.7, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        (N, m) => {
          const subjectDepth = depthLeftByDiffraction(telecentric(m, N), rule);
          // Near the deepest the f-number hangs on the depth’s last figures.
          const back = effectiveFNumberForDepth({
            ...rule,
            magnification: m,
            subjectDepth: subjectDepth * (1 - 1e-12),
          });
          expect(Math.abs(back / N - 1)).toBeLessThan(1e-4);
        },
      ),
      { seed: 1 },
    );
  });

  it('is deepest where one frame holds most, and less on both sides', () => {
    const finest = finestEffectiveFNumber(rule);
    const deepest = depthLeftByDiffraction(telecentric(2, finest), rule);
    close(deepest, subjectDepthInOneFrame({ ...rule, magnification: 2 }));
    for (const off of [0.8, 1.25])
      expect(depthLeftByDiffraction(telecentric(2, finest * off), rule)).toBeLessThan(deepest);
  });

  it('is the depth of field where waves are short, less otherwise, and nothing from c/λ on', () => {
    const cone = { magnification: 1, effectiveFNumber: 16, inverseEntrancePupilDistance: 0.01 };
    const alone = depthOfFieldOfCone({ ...cone, circleOfConfusion: 0.02 });
    close(depthLeftByDiffraction(cone, { ...rule, wavelength: 1e-9 }), alone);
    expect(depthLeftByDiffraction(cone, rule)).toBeLessThan(alone);
    expect(depthLeftByDiffraction(telecentric(1, 0.02 / 0.00055), rule)).toBe(0);
    expect(depthLeftByDiffraction(telecentric(1, 90), rule)).toBe(0);
  });

  it.each([
    [{ ...rule, wavelength: 0 }, 16],
    [{ ...rule, circleOfConfusion: NaN }, 16],
    [rule, 0],
  ])('refuses %o at %d', (given, N) => {
    expect(() => depthLeftByDiffraction(telecentric(1, N), given)).toThrow(/range|wavelength|circle|f-number/i);
  });
});
