import { backgroundBlur } from '#core/depth/background-blur.formula.ts';
import { backgroundWidth } from '#core/depth/background-width.formula.ts';
import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { depthOfFieldOfCone } from '#core/depth/depth-of-field-of-cone.formula.ts';
import { depthOfField } from '#core/depth/depth-of-field.formula.ts';
import { farLimitOfCone } from '#core/depth/far-limit-of-cone.formula.ts';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { hyperfocalDistanceFromPupil } from '#core/depth/hyperfocal-distance-from-pupil.formula.ts';
import { nearLimitOfCone } from '#core/depth/near-limit-of-cone.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { motionBlurTurningAboutPupil } from '#core/exposure/motion-blur-turning-about-pupil.formula.ts';
import { motionBlurTurningAboutSensor } from '#core/exposure/motion-blur-turning-about-sensor.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { fieldWidth } from '#core/gaussian/field-width.formula.ts';
import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { nearestFocusDistance } from '#core/gaussian/nearest-focus-distance.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistance } from '#core/gaussian/working-distance.formula.ts';
import { edgeShift } from '#core/stack/edge-shift.formula.ts';
import { scaleChangeFocusing } from '#core/stack/scale-change-focusing.formula.ts';
import { scaleChangeOnRail } from '#core/stack/scale-change-on-rail.formula.ts';
import { oursById, type Answer } from '#tests/support/reference-case.ts';

interface Focused {
  focalLength: number;
  fNumber: number;
  pupilMagnification: number;
  principalSeparation: number;
  frontPrincipalDepth: number;
  magnification: number;
  circleOfConfusion: number;
  backgroundDistance: number;
  sensorWidth: number;
  pixelPitch: number;
  frameStep: number;
  shakeRate: number;
  exposureTime: number;
  stabilisation: number;
}

function focused(given: Focused): Answer {
  const lens = {
    ...given,
    entrancePupil: entrancePupil(given),
    entrancePupilDistance: entrancePupilDistance(given),
    subjectDistance: subjectDistance(given),
    effectiveFNumber: effectiveFNumber(given),
    fieldWidth: fieldWidth(given),
  };
  const scaleChange = scaleChangeOnRail(lens);
  return {
    workingDistance: workingDistance(lens),
    focusDistance: focusDistance(lens),
    entrancePupil: lens.entrancePupil,
    entrancePupilDistance: lens.entrancePupilDistance,
    effectiveFNumber: lens.effectiveFNumber,
    nearLimit: nearLimit(lens),
    farLimit: farLimit(lens),
    depthOfField: depthOfField(lens),
    depthCloseUp: depthOfFieldCloseUp(lens),
    backgroundBlur: backgroundBlur(lens),
    backgroundWidth: backgroundWidth(lens),
    scaleChangeOnRail: scaleChange,
    edgeShift: edgeShift({ ...lens, scaleChange }),
    scaleChangeFocusing: scaleChangeFocusing(lens),
    blurAboutSensor: motionBlurTurningAboutSensor(lens),
    blurAboutPupil: motionBlurTurningAboutPupil(lens),
  };
}

const hyperfocal = (given: Parameters<typeof hyperfocalDistanceFromPupil>[0]) => ({
  hyperfocal: hyperfocalDistanceFromPupil(given),
});

const nearest = (given: Parameters<typeof nearestFocusDistance>[0]) => ({
  nearestFocusDistance: nearestFocusDistance(given),
});

const cone = (given: Parameters<typeof depthOfFieldOfCone>[0]) => ({
  nearLimit: nearLimitOfCone(given),
  farLimit: farLimitOfCone(given),
  depthOfField: depthOfFieldOfCone(given),
});

export const ours = oursById({
  'pupils-matrix-1': focused,
  'pupils-matrix-2': focused,
  'pupils-matrix-3': focused,
  'pupils-matrix-4': focused,
  'pupils-matrix-5': focused,
  'hyperfocal-matrix-1': hyperfocal,
  'hyperfocal-matrix-2': hyperfocal,
  'hyperfocal-matrix-3': hyperfocal,
  'hyperfocal-matrix-4': hyperfocal,
  'nearest-matrix-1': nearest,
  'nearest-matrix-2': nearest,
  'nearest-matrix-3': nearest,
  'nearest-matrix-4': nearest,
  'cone-matrix-1': cone,
  'cone-matrix-2': cone,
  'cone-matrix-3': cone,
  'cone-matrix-4': cone,
});
