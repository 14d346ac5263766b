import { circleOfConfusionByDiagonal } from '#core/depth/circle-of-confusion-by-diagonal.formula.ts';
import { depthOfField } from '#core/depth/depth-of-field.formula.ts';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { hyperfocalDistance } from '#core/depth/hyperfocal-distance.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { cropFactor } from '#core/gaussian/crop-factor.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { fieldWidth } from '#core/gaussian/field-width.formula.ts';
import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { lightLoss } from '#core/gaussian/light-loss.formula.ts';
import { magnificationFromExtension } from '#core/gaussian/magnification-from-extension.formula.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';
import { nearestFocusDistance } from '#core/gaussian/nearest-focus-distance.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Stopped {
  focalLength: number;
  fNumber: number;
  circleOfConfusion: number;
}

type CloseUp = Stopped & { magnification: number };

/** The trade computes with symmetric lenses whose principal planes coincide. */
const symmetric = { pupilMagnification: 1, principalSeparation: 0 };

const cone = (lens: { fNumber: number; magnification: number }) => effectiveFNumber({ ...lens, ...symmetric });
const loss = (lens: { fNumber: number; magnification: number }) => ({
  lightLoss: lightLoss({ fNumber: lens.fNumber, effectiveFNumber: cone(lens) }),
});

const ringed = (lens: { focalLength: number; extension: number }) => ({
  magnification: magnificationFromExtension({ ...lens, focusMagnification: 0 }),
});

/** What the limits of the depth need to know of a lens. */
const seen = (lens: CloseUp) => ({
  ...lens,
  entrancePupil: entrancePupil(lens),
  entrancePupilDistance: entrancePupilDistance({ ...lens, ...symmetric }),
});

const farOverNear = (lens: CloseUp) => farLimit(seen(lens)) / nearLimit(seen(lens));
const depthRatio = (lenses: readonly CloseUp[]) => {
  const [first, second] = lenses.map((lens) => depthOfField(seen(lens))) as [number, number];
  return { depthRatio: second / first };
};

/** The lens focused at a distance instead of a magnification. */
const focusedAt = (lens: Stopped, distance: number): CloseUp => ({
  ...lens,
  magnification: magnificationOfSubject({ ...lens, subjectDistance: distance }),
});

export const ours = oursById({
  'life-size-two-stops': loss,
  'half-life-size-stop': loss,
  'life-size-f11': (lens: { fNumber: number; magnification: number }) => ({ effectiveFNumber: cone(lens) }),
  'field-36': (camera: { sensorWidth: number; magnification: number }) => ({ fieldWidth: fieldWidth(camera) }),
  'field-crop': (camera: { sensorWidth: number; sensorHeight: number; magnification: number }) => ({
    cropFactor: cropFactor(camera),
    fieldWidth: fieldWidth(camera),
  }),
  'extension-focal-length': ringed,
  'half-extension': ringed,
  'four-focal-lengths': ({ focalLength }: { focalLength: number }) => ({
    focusDistance: focusDistance({ focalLength, magnification: 1, ...symmetric }),
    nearestFocusDistance: nearestFocusDistance({ focalLength, ...symmetric }),
  }),
  'two-focal-lengths': (lens: { focalLength: number }) => ({
    subjectDistance: subjectDistance({ ...lens, magnification: 1 }),
  }),
  'depth-any-focal-length': ({
    focalLengths,
    ...shared
  }: Omit<CloseUp, 'focalLength'> & { focalLengths: readonly number[] }) =>
    depthRatio(focalLengths.map((focalLength) => ({ ...shared, focalLength }))),
  'depth-two-stops': ({ fNumbers, ...shared }: Omit<CloseUp, 'fNumber'> & { fNumbers: readonly number[] }) =>
    depthRatio(fNumbers.map((fNumber) => ({ ...shared, fNumber }))),
  'depth-half-and-half': (lens: CloseUp) => ({ farOverNear: farOverNear(lens) }),
  'depth-one-third': (lens: Stopped) => ({ farOverNear: farOverNear(focusedAt(lens, hyperfocalDistance(lens) / 3)) }),
  'hyperfocal-half': (lens: Stopped) => {
    const hyperfocal = hyperfocalDistance(lens);
    return { nearOverHyperfocal: 1 - nearLimit(seen(focusedAt(lens, hyperfocal))) / hyperfocal };
  },
  'circle-thirtieth': (sensor: { sensorWidth: number; sensorHeight: number }) => ({
    circleOfConfusion: circleOfConfusionByDiagonal(sensor),
  }),
  'fifty-at-two-metres': (lens: { focalLength: number; subjectDistance: number }) => ({
    inverseMagnification: 1 / magnificationOfSubject(lens),
  }),
});
