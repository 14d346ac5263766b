import { fieldHeight } from '#core/gaussian/field-height.formula.ts';
import { focalLengthFromConjugates } from '#core/gaussian/focal-length-from-conjugates.formula.ts';
import { imageDistanceOfSubject } from '#core/gaussian/image-distance-of-subject.formula.ts';
import { imageWidth } from '#core/gaussian/image-width.formula.ts';
import { magnificationFromExtension } from '#core/gaussian/magnification-from-extension.formula.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';
import { magnification } from '#core/gaussian/magnification.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Lens {
  focalLength: number;
  subjectDistance: number;
}

interface MovedOut {
  focalLength: number;
  imageDistance: number;
}

/** The book counts the magnification of an inverted, real image negative; the core gives it no sign. */
const signed = (lens: Lens) => (lens.subjectDistance < lens.focalLength ? 1 : -1) * magnificationOfSubject(lens);

/** How tall the image of something *height* tall is, unsigned as the core gives it. */
const tall = (lens: Lens, height: number) =>
  imageWidth({ magnification: magnificationOfSubject(lens), subjectWidth: height });

const position = (lens: Lens) => ({ imageDistance: imageDistanceOfSubject(lens) });
const image = (lens: Lens) => ({ ...position(lens), magnification: signed(lens) });
const imageOf = (lens: Lens & { subjectHeight: number }) => ({
  ...image(lens),
  imageHeight: tall(lens, lens.subjectHeight),
});

/** A lens at *s'* from the sensor stands *s' − f* farther out than at infinity. */
const movedOut = ({ focalLength, imageDistance }: MovedOut) =>
  magnificationFromExtension({ focusMagnification: 0, extension: imageDistance - focalLength, focalLength });

/** Far enough for the core to take an object as infinitely distant, in mm. */
const farAway = 1e12;

export const ours = oursById({
  'up3-ex2.4a': imageOf,
  'up3-ex2.4b': imageOf,
  'up3-ex2.4c': imageOf,
  'up3-ex2.5': (found: { subjectDistance: number; imageDistance: number }) => ({
    focalLength: focalLengthFromConjugates(found),
    magnification: -magnification({ imageWidth: found.imageDistance, subjectWidth: found.subjectDistance }),
  }),
  'up3-2.51': (lens: Lens & { slideHeight: number; slideWidth: number }) => ({
    ...position(lens),
    imageHeight: tall(lens, lens.slideHeight),
    imageWidth: tall(lens, lens.slideWidth),
  }),
  'up3-2.53': image,
  'up3-2.55': (lens: MovedOut & { imageHeight: number }) => ({
    subjectDistance: subjectDistance({ focalLength: lens.focalLength, magnification: movedOut(lens) }),
    subjectHeight: fieldHeight({ sensorHeight: lens.imageHeight, magnification: movedOut(lens) }),
  }),
  'cp2e-25.45': (lens: MovedOut) => ({
    subjectDistance: subjectDistance({ focalLength: lens.focalLength, magnification: movedOut(lens) }),
    magnification: -movedOut(lens),
  }),
  'up3-2.59': (lens: Lens & { subjectHeight: number }) => ({ imageHeight: -tall(lens, lens.subjectHeight) }),
  'up3-2.6-selfie': position,
  'up3-2.6-far': position,
  'up3-ex2.7': image,
  'up3-2.115': ({ focalLength, angle }: { focalLength: number; angle: number }) => ({
    imageHeight: tall({ focalLength, subjectDistance: farAway }, farAway * Math.tan(angle)),
  }),
  'up3-2.61': (lens: Lens & { subjectHeight: number }) => ({
    ...position(lens),
    imageHeight: tall(lens, lens.subjectHeight),
  }),
  'cp2e-25.42': imageOf,
  'cp2e-25.47': (magnifier: { magnification: number; subjectDistance: number }) => ({
    focalLength: focalLengthFromConjugates({
      subjectDistance: magnifier.subjectDistance,
      imageDistance: -magnifier.magnification * magnifier.subjectDistance,
    }),
  }),
  'cp2e-25.49a': (lens: Lens) => ({ magnification: signed(lens) }),
  'cp2e-25.49b': (lens: Lens) => ({ magnification: signed(lens) }),
  'up3-2.87': (lens: Lens & { eyeToLens: number; nearPoint: number }) => ({
    ...position(lens),
    // The virtual image's angle at the eye, over that of the bare object at the near point.
    angularMagnification: (signed(lens) * lens.nearPoint) / (lens.eyeToLens - imageDistanceOfSubject(lens)),
  }),
  'up3-2.97': (lens: Lens & { eyepiece: number }) => ({
    ...image(lens),
    overallMagnification: signed(lens) * lens.eyepiece,
  }),
  'cp2e-26.30': microscope,
});

/** The objective's image is the eyepiece's object. */
function microscope(given: {
  objectiveFocalLength: number;
  subjectDistance: number;
  eyepieceFocalLength: number;
  separation: number;
}) {
  const objective = image({ focalLength: given.objectiveFocalLength, subjectDistance: given.subjectDistance });
  const eyepieceSubjectDistance = given.separation - objective.imageDistance;
  const eyepiece = image({ focalLength: given.eyepieceFocalLength, subjectDistance: eyepieceSubjectDistance });
  return {
    objectiveImageDistance: objective.imageDistance,
    objectiveMagnification: objective.magnification,
    eyepieceSubjectDistance,
    eyepieceImageDistance: eyepiece.imageDistance,
    eyepieceMagnification: eyepiece.magnification,
    overallMagnification: objective.magnification * eyepiece.magnification,
  };
}
