import fc from 'fast-check';
import { describeAnyNumber } from '#tests/support/any-number.ts';
import { airyIntensity, encircledEnergy } from './airy-pattern.ts';
import { airyProfile } from './airy-profile.ts';
import { airyRings } from './airy-rings.ts';
import { bestEffectiveFNumberOfCone } from './best-effective-f-number-of-cone.ts';
import { bestFNumber } from './best-f-number.ts';
import { blurDiscTransfer } from './blur-disc-transfer.ts';
import { energyProfile } from './energy-profile.ts';
import { opticalTransfer } from './optical-transfer.ts';
import { photopicEnergyProfile, photopicProfile } from './photopic-spread.ts';
import { photopicTransfer } from './photopic-transfer.ts';
import { pixelTransfer } from './pixel-transfer.ts';
import { pointSpreadProfile, strehlRatio } from './point-spread.ts';
import { stoppedDownAberration } from './pupil.ts';
import { subjectResolution } from './subject-resolution.ts';

/** Numbers such as fields and addresses hold: sensible ones, any size that a slip of units makes, and garbage. */
const anyNumber = fc
  .oneof(
    { weight: 6, arbitrary: fc.double({ min: 1e-4, max: 30, noNaN: true }) },
    { weight: 2, arbitrary: fc.double({ min: -1e30, max: 1e30, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(0, -0, NaN, Infinity, -Infinity, -1, 1e-30, 1e30) },
  )
  // Products of what is smaller vanish and their inverses overflow; no field holds such numbers.
  .map((number) => (Math.abs(number) < 1e-30 ? 0 : number));

const given = fc.record({
  imageRadius: anyNumber,
  wavelength: fc.oneof(fc.constant(0.00055), anyNumber),
  effectiveFNumber: anyNumber,
  fNumber: anyNumber,
  maxAperture: anyNumber,
  magnification: anyNumber,
  pupilMagnification: anyNumber,
  subjectDepth: anyNumber,
  spatialFrequency: anyNumber,
  cutoffFrequency: anyNumber,
  pixelPitch: anyNumber,
  circleOfConfusion: anyNumber,
  defocusBlur: anyNumber,
  defocusAberration: anyNumber,
  sphericalAberration: anyNumber,
  inverseEntrancePupilDistance: fc.oneof(fc.double({ min: -0.2, max: 0.2, noNaN: true }), anyNumber),
});
type Given = typeof given extends fc.Arbitrary<infer Each> ? Each : never;

const coneAt =
  ({ magnification, inverseEntrancePupilDistance }: Given) =>
  (fNumber: number) => ({ magnification, inverseEntrancePupilDistance, effectiveFNumber: 2 * fNumber });

/** Formulas are asked the same by `tests/physics/whole-domain.test.ts`. */
const functions: Readonly<Record<string, (values: Given) => unknown>> = {
  airyIntensity,
  bestEffectiveFNumberOfCone,
  blurDiscTransfer,
  encircledEnergy,
  opticalTransfer,
  photopicTransfer,
  pixelTransfer,
  stoppedDownAberration,
  strehlRatio,
  subjectResolution,
  airyProfile: (values) => airyProfile(values, 4),
  airyRings: (values) => airyRings(values, 3),
  bestFNumber: (values) => bestFNumber({ ...values, coneAt: coneAt(values) }, [values.fNumber]),
  bestFNumberInTheMiddle: (values) =>
    bestFNumber({ ...values, coneAt: coneAt(values), planeDepth: values.subjectDepth / 2 }, [values.fNumber]),
  bestFNumberWideOpen: (values) =>
    bestFNumber({ ...values, coneAt: coneAt(values), wideOpen: values }, [values.fNumber]),
  energyProfile: (values) => energyProfile({ ...values, imageRadius: values.imageRadius / 1e3 }, 3),
  photopicEnergyProfile: (values) => photopicEnergyProfile({ ...values, imageRadius: values.imageRadius / 1e3 }, 3),
  photopicProfile: (values) => photopicProfile({ ...values, imageRadius: values.imageRadius / 1e3 }, 3),
  pointSpreadProfile: (values) => pointSpreadProfile({ ...values, imageRadius: values.imageRadius / 1e3 }, 3),
};

describeAnyNumber(functions, given, 400);
