import { focalLengthFromConjugates } from '#core/gaussian/focal-length-from-conjugates.formula.ts';
import { imageDistanceOfSubject } from '#core/gaussian/image-distance-of-subject.formula.ts';
import { imageDistance } from '#core/gaussian/image-distance.formula.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';
import { magnification } from '#core/gaussian/magnification.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Lens {
  focalLength: number;
  magnification: number;
}

interface Lengths {
  subjectLength: number;
  imageLength: number;
}

const scale = ({ subjectLength, imageLength }: Lengths) =>
  magnification({ imageWidth: imageLength, subjectWidth: subjectLength });
const conjugates = (lens: Lens) => ({ subjectDistance: subjectDistance(lens), imageDistance: imageDistance(lens) });
const conjugatesOf = ({ focalLength, ...lengths }: Lengths & { focalLength: number }) =>
  conjugates({ focalLength, magnification: scale(lengths) });

export const ours = oursById({
  'ss0511-106': (copy: Lengths & { focalLength: number }) => ({ magnification: scale(copy), ...conjugatesOf(copy) }),
  'navedtra-1-27': conjugates,
  'navedtra-1-27-formula': conjugates,
  'book-of-photography-reduce': conjugatesOf,
  'book-of-photography-enlarge': conjugates,
  'sinclair-enlarge': conjugates,
  'telephotographic-100in': (lens: { focalLength: number; subjectDistance: number }) => ({
    inverseMagnification: 1 / magnificationOfSubject(lens),
    inverseExtensionInFocalLengths: lens.focalLength / (imageDistanceOfSubject(lens) - lens.focalLength),
  }),
  'telephotographic-tenth': conjugates,
  'high-speed-camera-focal-length': ({ subjectDistance, ...lengths }: Lengths & { subjectDistance: number }) => ({
    focalLength: focalLengthFromConjugates({ subjectDistance, imageDistance: subjectDistance * scale(lengths) }),
  }),
  'high-speed-camera-distance': (camera: Lengths & { focalLength: number }) => ({
    subjectDistance: conjugatesOf(camera).subjectDistance,
  }),
});
