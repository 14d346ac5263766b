import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lens50 } from '#tests/support/rig-parts.ts';
import { internalFocusBrackets } from './internal-focus-brackets.ts';
import { lensInUse } from './lens-in-use.ts';
import type { InternalFocusing, Lens } from './lens.ts';

const macro = (keeps: InternalFocusing['keeps'] = 'f-number'): Lens => ({
  focalLength: 90,
  principalSeparation: 10,
  frontPrincipalDepth: 50,
  pupilMagnification: 0.8,
  registerDistance: 44,
  focusing: { by: 'internal', closestMagnification: 1, closestFocusDistance: 290, keeps },
  apertureControl: 'camera',
});
const rounding = { relative: 1e-13, because: 'rounding' };

describe('internalFocusBrackets', () => {
  it('is N to N (1 + 1/P) and f/2 to f at life size, and the distance that is known', () => {
    const { effectiveFNumber, focalLength, focusDistance, workingDistance } = internalFocusBrackets(macro(), 1, 4);
    expect(effectiveFNumber).toEqual({ least: 4, most: closeTo(9, rounding) });
    expect(focalLength).toEqual({ least: 45, most: 90 });
    expect(focusDistance).toEqual({ least: 290, most: 290 });
    // The rim stands 150 mm before the sensor at infinity, and moves out by 90 at most.
    expect(workingDistance).toEqual({ least: 50, most: 140 });
  });

  it('closes towards infinity: nothing is unknown there', () => {
    const { effectiveFNumber, focalLength, inverseEntrancePupilDistance } = internalFocusBrackets(macro(), 1e-9, 4);
    expect(effectiveFNumber.most).toEqual(closeTo(effectiveFNumber.least, { relative: 1e-8, because: 'm₀ is 1e-9' }));
    expect(focalLength.least).toEqual(closeTo(focalLength.most, { relative: 1e-8, because: 'm₀ is 1e-9' }));
    expect(inverseEntrancePupilDistance.most).toEqual(closeTo(0, { absolute: 1e-10, because: 'm₀ is 1e-9' }));
  });

  it('takes iris and rear group still for knowledge, and what else a lens is taken to keep for a guess', () => {
    const still = internalFocusBrackets(macro('iris-and-rear-group'), 0.5, 4);
    expect(still.effectiveFNumber).toEqual({ least: 4, most: 4 });
    expect(internalFocusBrackets(macro('entrance-pupil'), 0.5, 4)).toEqual(internalFocusBrackets(macro(), 0.5, 4));
  });

  it.each(['f-number', 'entrance-pupil', 'iris-and-rear-group'] as const)(
    'holds the lens that keeps its %s',
    (keeps) => {
      for (const at of [0.05, 0.4, 1]) {
        const lens = macro(keeps);
        const { effectiveFNumber, focalLength, inverseEntrancePupilDistance } = internalFocusBrackets(lens, at, 4);
        const inUse = lensInUse(lens, at, 4);
        const { focalLength: f, pupilMagnification: P, entrancePupil } = inUse;
        for (const [value, { least, most }] of [
          [f, focalLength],
          [(f / entrancePupil) * (1 + at / P), effectiveFNumber],
          [1 / (f * (1 / at + 1 / P)), inverseEntrancePupilDistance],
        ] as const) {
          expect(value).toBeGreaterThanOrEqual(least * (1 - 1e-12));
          expect(value).toBeLessThanOrEqual(most * (1 + 1e-12));
        }
      }
    },
  );

  it('refuses infinity, what is beyond the closest setting, other ways of focusing and f/0, by name', () => {
    for (const at of [0, -0.1, 1.1, NaN]) {
      expect(() => internalFocusBrackets(macro(), at, 4)).toThrow(OutOfRange);
      expect(() => internalFocusBrackets(macro(), at, 4)).toThrow(`focus-magnification is ${at}; accepted: above 0`);
    }
    expect(() => internalFocusBrackets(lens50, 0.1, 4)).toThrow(/up to 0, which internal focusing reaches/);
    expect(() => internalFocusBrackets(macro(), 0.5, 0)).toThrow(/f-number is 0/);
    const nowhere: Lens = {
      ...macro(),
      focusing: { ...macro().focusing, closestFocusDistance: -1 } as InternalFocusing,
    };
    expect(() => internalFocusBrackets(nowhere, 0.5, 4)).toThrow(/focus-distance is -1/);
  });
});
