import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { prescriptions } from '#tests/support/prescriptions.ts';
import { lens50 } from '#tests/support/rig-parts.ts';
import { lensInUse } from '../lens-in-use.ts';
import { lensOfPrescription } from '../lens-of-prescription.ts';
import type { Lens } from '../lens.ts';
import { focusTo, settingOf } from './setting.ts';

const lenses: readonly Lens[] = [
  lens50,
  { ...lens50, rearProtrusion: 9, fixedProtrusion: 3 },
  { ...lens50, focusing: { by: 'internal', closestMagnification: 0.5, closestFocusDistance: 190, keeps: 'f-number' } },
  {
    ...lens50,
    focusing: { by: 'internal', closestMagnification: 0.5, closestFocusDistance: 190, keeps: 'entrance-pupil' },
  },
  {
    ...lens50,
    focusing: { by: 'internal', closestMagnification: 0.5, closestFocusDistance: 190, keeps: 'iris-and-rear-group' },
  },
  lensOfPrescription(prescriptions['macro-200-us-5751485'], { registerDistance: 46.5, apertureControl: 'lens' }),
];

describe('focusTo', () => {
  it.each(lenses)('holds what lensInUse answers, setting by setting: %#', (lens) => {
    const setting = settingOf(lens);
    for (const share of [0, 0.3, 1, 0.5]) {
      focusTo(setting, share * setting.closest);
      const exact = lensInUse(lens, share * setting.closest, 8);
      const near = (value: number) => closeTo(value, { absolute: 1e-11, because: 'rounding' });
      expect(setting.focalLength).toEqual(near(exact.focalLength));
      expect(setting.flangeDepth).toEqual(near(exact.flangeDepth));
      expect(setting.rearProtrusion).toEqual(near(exact.rearProtrusion));
      expect(setting.frontPrincipalDepth).toEqual(near(exact.frontPrincipalDepth));
      expect(setting.principalSeparation).toEqual(near(exact.principalSeparation));
      expect(setting.pupilMagnification).toEqual(near(exact.pupilMagnification));
      expect(setting.focalLength / (8 * setting.fNumberDrift)).toEqual(near(exact.entrancePupil));
    }
  });
});
