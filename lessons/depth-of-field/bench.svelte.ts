import { circleOfConfusionByDiagonal } from '#core/depth/circle-of-confusion-by-diagonal.formula.ts';
import { circleOfConfusionByPixels } from '#core/depth/circle-of-confusion-by-pixels.formula.ts';
import { circleOfConfusionByViewing } from '#core/depth/circle-of-confusion-by-viewing.formula.ts';
import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { depthOfField } from '#core/depth/depth-of-field.formula.ts';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { hyperfocalDistance } from '#core/depth/hyperfocal-distance.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { waveDepth } from '#core/depth/wave-depth.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { numericalAperture } from '#core/gaussian/numerical-aperture.formula.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { photographed, subjectChoice, type Photographed } from '#site/figures/picture/photographed.ts';
import type { Answer } from '#site/state/answer.ts';
import { Bench, choiceOf } from '#site/state/bench.svelte.ts';
import { bodies, lenses } from '#site/state/crate.ts';

const body = bodies['body-36'];
const lens = lenses['lens-50'];
/** A print of 300 mm looked at from 400 mm. */
const viewing = { 'print-width': 300, 'viewing-distance': 400 };

/** Above this numerical aperture geometry alone misleads (README of `core/depth`, Waves). */
const wideCone = 0.1;

type Given =
  'magnification' | 'f-number' | 'focal-length' | 'pupil-magnification' | 'circle-of-confusion' | 'wavelength';

export const bench = new Bench({
  inputs: {
    magnification: 0.5,
    'f-number': lens['f-number'],
    'focal-length': lens['focal-length'],
    'pupil-magnification': lens['pupil-magnification'],
    'circle-of-confusion': circleOfConfusionByViewing({
      viewingDistance: viewing['viewing-distance'],
      printWidth: viewing['print-width'],
      sensorWidth: body['sensor-width'],
    }),
    ...viewing,
    'sensor-width': body['sensor-width'],
    'sensor-height': body['sensor-height'],
    'pixel-pitch': body['pixel-pitch'],
    wavelength: 0.00055,
  },
  choices: {
    'circle-of-confusion-by': {
      label: 'Circle of confusion chosen',
      options: {
        viewing: {
          label: 'by viewing',
          fills: (given) => ({
            'circle-of-confusion': circleOfConfusionByViewing({
              viewingDistance: given['viewing-distance'],
              printWidth: given['print-width'],
              sensorWidth: given['sensor-width'],
            }),
          }),
        },
        diagonal: {
          label: 'by diagonal',
          fills: (given) => ({
            'circle-of-confusion': circleOfConfusionByDiagonal({
              sensorWidth: given['sensor-width'],
              sensorHeight: given['sensor-height'],
            }),
          }),
        },
        pixels: {
          label: 'by pixels',
          fills: (given) => ({
            'circle-of-confusion': circleOfConfusionByPixels({ pixelPitch: given['pixel-pitch'] }),
          }),
        },
      },
    },
    sensor: choiceOf('Camera', bodies, ['sensor-width', 'sensor-height', 'pixel-pitch']),
    subject: subjectChoice(Object.keys(photographed) as Photographed[]),
  },
  compute: depths,
});

/** The optics of the lesson, for the bench and for figures that ask what other apertures and lenses would do. */
export function depths(given: Readonly<Record<Given, number>>) {
  const { magnification } = given;
  const circleOfConfusion = given['circle-of-confusion'];
  const lens = {
    focalLength: given['focal-length'],
    fNumber: given['f-number'],
    magnification,
    pupilMagnification: given['pupil-magnification'],
  };
  const effective = effectiveFNumber(lens);
  const cone = {
    circleOfConfusion,
    magnification,
    entrancePupil: entrancePupil(lens),
    entrancePupilDistance: entrancePupilDistance(lens),
  };
  const depth = depthOfField(cone);
  return {
    'depth-of-field': inWordsAtInfinity(depth, '∞, no end'),
    'near-limit': nearLimit(cone),
    'far-limit': inWordsAtInfinity(farLimit(cone), '∞, no limit'),
    'depth-of-field-close-up': depthOfFieldCloseUp({ circleOfConfusion, effectiveFNumber: effective, magnification }),
    'effective-f-number': effective,
    'hyperfocal-distance': hyperfocalDistance({ ...lens, circleOfConfusion }),
    'entrance-pupil': cone.entrancePupil,
    'entrance-pupil-distance': cone.entrancePupilDistance,
    ...waves(given.wavelength, magnification, effective),
  };
}

/** What the wave allows; nothing where no lens in air could make such a cone. */
function waves(
  wavelength: number,
  magnification: number,
  effective: number,
): Record<'numerical-aperture' | 'wave-depth', Answer> {
  if (effective <= magnification / 2) return { 'numerical-aperture': noSuchCone, 'wave-depth': noSuchCone };
  const aperture = numericalAperture({ magnification, effectiveFNumber: effective });
  const wave = waveDepth({ wavelength, numericalAperture: aperture });
  return { 'numerical-aperture': aperture, 'wave-depth': aperture > wideCone ? besideGeometry(wave) : wave };
}

const noSuchCone: Answer = { words: 'no lens in air has so wide a cone' };

function inWordsAtInfinity(depth: number, words: string): Answer {
  return depth < Infinity ? depth : { value: depth, words };
}

/** With a wide cone the wave's depth is added to that of geometry. */
function besideGeometry(wave: number): Answer {
  return { value: wave, words: `${printQuantity('wave-depth', wave)}, add to T` };
}
