import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { degree } from '#core/quantity/units.ts';
import type { GreyPhotograph } from '#core/ruler/photograph.ts';
import { rulerPicture } from '#core/ruler/ruler-picture.ts';
import { sampleCamera, sampleLens, truthOf, type Sample } from './samples.ts';

/** Renders a sample as its camera would have taken it. Takes a second: for a worker. */
export function renderSample(sample: Sample): GreyPhotograph {
  const { columns, rows, sensorWidth } = sampleCamera;
  const { magnification, entrancePupilDistance } = truthOf(sample);
  const { tilt, turn, focus, fNumber, seed } = sample;
  const { pupilMagnification } = sampleLens;
  return rulerPicture({
    spacing: 1,
    tilt: tilt * degree,
    turn: turn * degree,
    focus,
    view: {
      magnification,
      effectiveFNumber: effectiveFNumber({ fNumber, magnification, pupilMagnification }),
      pupilMagnification,
      entrancePupilDistance,
      pitch: sensorWidth / columns,
      columns,
      rows,
      electronsAtWhite: 2500,
      readNoise: 4,
      seed,
    },
  });
}
