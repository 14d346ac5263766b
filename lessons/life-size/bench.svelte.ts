import { cropFactor } from '#core/gaussian/crop-factor.formula.ts';
import { fieldHeight } from '#core/gaussian/field-height.formula.ts';
import { fieldWidth } from '#core/gaussian/field-width.formula.ts';
import { imageWidth } from '#core/gaussian/image-width.formula.ts';
import { magnificationFromField } from '#core/gaussian/magnification-from-field.formula.ts';
import { pixelsPerMillimetre } from '#core/gaussian/pixels-per-millimetre.formula.ts';
import { printQuantity } from '#core/quantity/print.ts';
import type { Answer } from '#site/state/answer.ts';
import { Bench, choiceOf, keptChoice } from '#site/state/bench.svelte.ts';
import { bodies } from '#site/state/crate.ts';
import { subjects } from './figures/subjects.ts';

const start = bodies['body-36'];

export const bench = new Bench({
  inputs: {
    magnification: 0.5,
    'subject-width': subjects['postage-stamp']['subject-width'],
    'sensor-width': start['sensor-width'],
    'sensor-height': start['sensor-height'],
    'pixel-pitch': start['pixel-pitch'],
  },
  choices: {
    sensor: choiceOf('Camera', bodies, ['sensor-width', 'sensor-height', 'pixel-pitch']),
    subject: choiceOf('Subject', subjects, ['subject-width']),
    ruler: keptChoice('Marks on the ruler', { mm: 'millimetres', in: 'inches' }),
  },
  handles: {
    'field-width': {
      sets: 'magnification',
      to: (value, given) => magnificationFromField({ sensorWidth: given['sensor-width'], fieldWidth: value }),
    },
  },
  compute(given) {
    const { magnification } = given;
    const sensor = { sensorWidth: given['sensor-width'], sensorHeight: given['sensor-height'] };
    const image = imageWidth({ magnification, subjectWidth: given['subject-width'] });
    return {
      'field-width': fieldWidth({ ...sensor, magnification }),
      'field-height': fieldHeight({ ...sensor, magnification }),
      'image-width': onTheSensor(image, sensor.sensorWidth),
      'crop-factor': cropFactor(sensor),
      'pixels-per-millimetre': pixelsPerMillimetre({ magnification, pixelPitch: given['pixel-pitch'] }),
    };
  },
});

/** An image may be wider than the sensor that should catch it. That is an answer, and needs words. */
function onTheSensor(image: number, sensorWidth: number): Answer {
  if (image <= sensorWidth) return image;
  return { value: image, words: `${printQuantity('image-width', image)}, wider than the sensor` };
}
