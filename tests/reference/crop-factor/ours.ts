import { cropFactor, referenceDiagonal } from '#core/gaussian/crop-factor.formula.ts';
import { fieldWidth } from '#core/gaussian/field-width.formula.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';

interface Sensor {
  sensorWidth: number;
  sensorHeight: number;
}

interface Camera extends Sensor {
  focalLength: number;
  subjectDistance: number;
}

/** Rows that give a lens ask for its equivalent on 36 × 24 mm, the others for the factor and the diagonal behind it. */
export function ours(given: Sensor | Camera) {
  const factor = cropFactor(given);
  if (!('focalLength' in given)) return { cropFactor: factor, diagonal: referenceDiagonal / factor };

  const equivalentFocalLength = factor * given.focalLength;
  const equivalent = { ...given, sensorWidth: 36, focalLength: equivalentFocalLength };
  return { equivalentFocalLength, fieldRatio: field(given) / field(equivalent) };
}

function field(camera: Pick<Camera, 'sensorWidth' | 'focalLength' | 'subjectDistance'>): number {
  return fieldWidth({ sensorWidth: camera.sensorWidth, magnification: magnificationOfSubject(camera) });
}
