import { focalLengthFromConjugates } from '#core/gaussian/focal-length-from-conjugates.formula.ts';
import { focalLengthInContact, powerInContact } from '#core/gaussian/powers-in-contact.ts';
import { unitWorth } from '#core/quantity/units.ts';
import { oursById } from '#tests/support/reference-case.ts';

/** A dioptre is one over a metre: the same number turns a focal length in mm into dpt and back. */
const metre = unitWorth('mm', 'm') as number;

const power = ({ focalLength }: { focalLength: number }) => ({ power: powerInContact([metre / focalLength]) });
const focalLength = ({ power }: { power: number }) => ({ focalLength: focalLengthInContact([metre / power]) });

export const ours = oursById({
  'up3-2.123': power,
  'cp2e-ex25.5': power,
  'cp2e-25.6-text': power,
  'cp2e-25.37-long': power,
  'cp2e-25.37-short': power,
  'cp2e-25.39': focalLength,
  'cp2e-25.43': focalLength,
  'cp2e-25.47-power': power,
  'up3-ex2.6': ({ focalLengths }: { focalLengths: readonly number[] }) => ({
    focalLength: focalLengthInContact(focalLengths),
    power: powerInContact(focalLengths.map((each) => metre / each)),
  }),
  'close-up-lens-stack': ({ powers }: { powers: readonly number[] }) => ({ power: powerInContact(powers) }),
  'close-up-lens-25cm': power,
  'clerc-118': power,
  'up3-ex2.8': power,
  // The glass shows the page, virtually, at the eye's own near point; both distances count from the glass.
  'up3-ex2.9': (eye: { nearPoint: number; readingDistance: number; vertexDistance: number }) =>
    power({
      focalLength: focalLengthFromConjugates({
        subjectDistance: eye.readingDistance - eye.vertexDistance,
        imageDistance: eye.vertexDistance - eye.nearPoint,
      }),
    }),
});
