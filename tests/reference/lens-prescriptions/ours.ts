import { assembleRig } from '#core/rig/assemble.ts';
import { requirePrescription } from '#core/rig/faulty-prescription.ts';
import { lensOfPrescription } from '#core/rig/lens-of-prescription.ts';
import { stateAt } from '#core/rig/lens-in-use.ts';
import { prescriptionSettings } from '#core/rig/prescription-settings.ts';
import { glassPoints, glassPupils } from '#core/rig/paraxial-trace.ts';
import type { Prescription } from '#core/rig/prescription.ts';
import { surfacesAt } from '#core/rig/surfaces-at.ts';
import { reversedPrescription } from '#core/rig/reversed-prescription.ts';
import { solveRig } from '#core/rig/solve.ts';
import { prescriptions, type PrescriptionName } from '#tests/support/prescriptions.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Given {
  prescription: PrescriptionName;
}

/** Everything that a trace at infinity says of a lens, of which each row compares what its source prints. */
function traced(prescription: Prescription) {
  const { surfaces, stop } = requirePrescription(prescription);
  const points = glassPoints(surfaces);
  const pupils = glassPupils(surfaces, stop);
  const toSensor = surfaces.at(-1)!.thickness;
  return {
    ...points,
    ...pupils,
    exitFromImage: pupils.exitPosition - toSensor,
    focusFromImage: points.backFocus - toSensor,
    entranceFromPrincipal: pupils.entrancePosition - points.frontPrincipal,
    exitFromPrincipal: pupils.exitPosition - points.rearPrincipal,
    focusSum: points.backFocus + points.frontFocus,
  };
}

const comparing =
  (...names: (keyof ReturnType<typeof traced>)[]) =>
  ({ prescription }: Given) => {
    const all = traced(prescriptions[prescription]);
    return Object.fromEntries(names.map((name) => [name, all[name]]));
  };

const pointsAndPupil = [
  'focalLength',
  'entrancePosition',
  'exitFromImage',
  'pupilMagnification',
  'frontPrincipal',
] as const;

const registerDistance = 20;

/** The lens on a camera at each of its settings, solved as a chain. */
function settingsOf({ prescription }: Given, fNumber = 4) {
  const lens = lensOfPrescription(prescriptions[prescription], { registerDistance, apertureControl: 'camera' });
  return prescriptionSettings(prescriptions[prescription]).traced.map((focusMagnification) => ({
    focusMagnification,
    focalLength: stateAt(lens, focusMagnification).focalLength,
    solved: solveRig(
      assembleRig([
        { part: 'camera', registerDistance, sensorWidth: 36, sensorHeight: 24 },
        { part: 'lens', lens, focusMagnification, fNumber },
      ]),
    ),
  }));
}

const sharpSettings = (given: Given) =>
  settingsOf(given).flatMap(({ solved }) => ('workingDistance' in solved ? [solved] : []));

/** At each published setting but infinity; negative, as sources count images upside down. */
const magnifications = (given: Given) => ({
  magnifications: sharpSettings(given).map(({ magnification }) => -magnification),
});

export const ours = oursById({
  'triplet-course': comparing(
    ...(['focalLength', 'frontFocus', 'frontPrincipal', 'backFocus', 'rearPrincipal'] as const),
    ...(['principalSeparation', 'entrancePosition', 'exitPosition', 'pupilMagnification'] as const),
  ),
  'triplet-50': comparing(...pointsAndPupil, 'focusFromImage'),
  'double-gauss-100': comparing(...pointsAndPupil, 'backFocus'),
  'retrofocus-2': comparing(...pointsAndPupil, 'backFocus'),
  'retrofocus-2-reversed': ({ prescription }: Given) => {
    const all = traced(reversedPrescription(prescriptions[prescription]));
    const { focalLength, pupilMagnification, backFocus, frontFocus } = all;
    return { focalLength, pupilMagnification, backFocus, frontFocus };
  },
  'four-elements-100': comparing('focalLength', 'backFocus'),
  'symmetric-us-583336': comparing('pupilMagnification', 'entranceFromPrincipal', 'exitFromPrincipal', 'focusSum'),
  'macro-60-infinity': comparing('focalLength', 'backFocus'),
  'macro-200-infinity': comparing('focalLength', 'backFocus'),
  'macro-100-infinity': comparing('focalLength'),
  'macro-35-infinity': comparing('focalLength'),
  'macro-60-magnifications': magnifications,
  'macro-200-magnifications': magnifications,
  'macro-35-magnifications': magnifications,
  'macro-100-magnifications': (given: Given) => ({
    ...magnifications(given),
    subjectToFront: sharpSettings(given).map(({ workingDistance }) => workingDistance),
  }),
  'macro-200-groups': ({ prescription, groups }: Given & { groups: readonly [number, number][] }) => ({
    focalLengths: groups.map(
      ([from, to]) => glassPoints(prescriptions[prescription].surfaces.slice(from, to)).focalLength,
    ),
  }),
  'macro-200-distance': (given: Given & { focalLength: number }) => ({
    subjectInFocalLengths: (sharpSettings(given).at(-1)?.workingDistance ?? NaN) / given.focalLength,
  }),
  'macro-200-cone': (given: Given & { fNumber: number }) => ({
    effectiveFNumbers: settingsOf(given, given.fNumber).map(({ solved }) =>
      'effectiveFNumber' in solved ? solved.effectiveFNumber : NaN,
    ),
  }),
  'macro-60-distances': (given: Given) => ({
    focalLengths: settingsOf(given).map(({ focalLength }) => focalLength),
    subjectToFront: sharpSettings(given).map(({ workingDistance }) => workingDistance),
    subjectToSensor: sharpSettings(given).map(({ focusDistance }) => focusDistance),
  }),
  'macro-60-effective': (given: Given & { stopDiameter: number }) => {
    const prescription = prescriptions[given.prescription];
    const surfaces = surfacesAt(prescription, 0);
    const entrancePupil = glassPupils(surfaces, prescription.stop).entranceOverStop * given.stopDiameter;
    const fNumber = glassPoints(surfaces).focalLength / entrancePupil;
    const settings = settingsOf(given, fNumber);
    return {
      effectiveFNumbers: settings.map(({ solved }) => ('effectiveFNumber' in solved ? solved.effectiveFNumber : NaN)),
      shortForm: settings.map(({ focusMagnification }) => fNumber * (1 + focusMagnification)),
    };
  },
});
