import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { fieldWidth } from '#core/gaussian/field-width.formula.ts';
import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { imageDistance } from '#core/gaussian/image-distance.formula.ts';
import { lightLoss } from '#core/gaussian/light-loss.formula.ts';
import { magnificationFromExtension } from '#core/gaussian/magnification-from-extension.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistance } from '#core/gaussian/working-distance.formula.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { answerOr, type Answer } from '#site/state/answer.ts';
import { Bench, choiceOf } from '#site/state/bench.svelte.ts';
import { bodies, lenses } from '#site/state/crate.ts';

const start = lenses['lens-50'];

export const bench = new Bench({
  inputs: {
    'focal-length': start['focal-length'],
    extension: 24,
    'focus-magnification': start['focus-magnification'],
    'f-number': start['f-number'],
    'pupil-magnification': start['pupil-magnification'],
    'front-principal-depth': start['front-principal-depth'],
    'principal-separation': start['principal-separation'],
    'sensor-width': bodies['body-36']['sensor-width'],
  },
  choices: {
    lens: choiceOf('Lens, at its closest focus', lenses, [
      'focal-length',
      'focus-magnification',
      'pupil-magnification',
      'front-principal-depth',
      'principal-separation',
    ]),
    sensor: choiceOf('Camera', bodies, ['sensor-width']),
  },
  compute(given) {
    const focalLength = given['focal-length'];
    const magnification = magnificationFromExtension({
      focusMagnification: given['focus-magnification'],
      extension: given.extension,
      focalLength,
    });
    if (magnification < asGoodAsZero) return farAway(focalLength, given['f-number']);
    const lens = { focalLength, magnification };
    const fromH = subjectDistance(lens);
    const fNumber = given['f-number'];
    const effective = effectiveFNumber({ fNumber, magnification, pupilMagnification: given['pupil-magnification'] });
    return {
      magnification,
      'subject-distance': fromH,
      'image-distance': imageDistance(lens),
      'focus-distance': answerOr('none: H and H′ cannot be so far apart here', () =>
        focusDistance({ ...lens, principalSeparation: given['principal-separation'] }),
      ),
      'working-distance': inFrontOfTheRim(
        workingDistance({ subjectDistance: fromH, frontPrincipalDepth: given['front-principal-depth'] }),
      ),
      'effective-f-number': effective,
      'light-loss': lightLoss({ effectiveFNumber: effective, fNumber }),
      'field-width': fieldWidth({ sensorWidth: given['sensor-width'], magnification }),
    };
  },
});

/** A subject a million times its image away, or farther, is at infinity for every purpose here. */
const asGoodAsZero = 1e-6;

/** No ring on a lens set to infinity: the subject is infinitely far, and the rest follows. */
function farAway(focalLength: number, fNumber: number) {
  const infinite: Answer = { value: Infinity, words: '∞, set to infinity' };
  return {
    magnification: { value: 0, words: '0, set to infinity' },
    'subject-distance': infinite,
    'image-distance': focalLength,
    'focus-distance': infinite,
    'working-distance': infinite,
    'effective-f-number': fNumber,
    'light-loss': 0,
    'field-width': infinite,
  };
}

/** A working distance at or below zero is an answer, and needs words. */
function inFrontOfTheRim(distance: number): Answer {
  if (distance > 0) return distance;
  return { value: distance, words: `inside the lens, ${printQuantity('working-distance', -distance)} behind the rim` };
}
