import {
  circleOfConfusionByDiagonal,
  circlesAlongDiagonal,
} from '#core/depth/circle-of-confusion-by-diagonal.formula.ts';
import { hyperfocalDistance } from '#core/depth/hyperfocal-distance.formula.ts';
import { lightValue } from '#core/exposure/light-value.formula.ts';
import { cropFactor } from '#core/gaussian/crop-factor.formula.ts';
import { fieldWidth } from '#core/gaussian/field-width.formula.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';
import { sharpFromLens } from '#tests/support/depth-from-lens.ts';

interface Tagged {
  focalLength: number;
  equivalentFocalLength: number;
  fNumber: number;
  subjectDistance: number;
  exposureTime: number;
  iso: number;
}

/** What ExifTool divides the diagonal by. */
const exifCirclesAlongDiagonal = 1440;

/** The core's answers in ExifTool's conventions, which PROVENANCE.md lists. */
export function ours(shot: Tagged) {
  const enlarged = shot.equivalentFocalLength / shot.focalLength;
  const sensor = { sensorWidth: 36 / enlarged, sensorHeight: 24 / enlarged };
  const circleOfConfusion = (circleOfConfusionByDiagonal(sensor) * circlesAlongDiagonal) / exifCirclesAlongDiagonal;
  const lens = { ...shot, circleOfConfusion };
  return {
    scaleFactor: cropFactor(sensor),
    circleOfConfusion,
    hyperfocal: hyperfocalDistance(lens) - shot.focalLength,
    ...sharpFromLens(lens),
    fieldAngle: fieldAngle(shot, sensor.sensorWidth),
    lightValue: lightValue({ ...shot, effectiveFNumber: shot.fNumber }),
  };
}

/** The field at any distance, seen from the front focal point: the angle at infinity focus. */
function fieldAngle(shot: Tagged, sensorWidth: number): number {
  const field = fieldWidth({ sensorWidth, magnification: magnificationOfSubject(shot) });
  return 2 * Math.atan(field / 2 / (shot.subjectDistance - shot.focalLength));
}
