import { closeFocusFocalLength } from '#core/gaussian/close-focus-focal-length.formula.ts';
import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { imageDistanceOfSubject } from '#core/gaussian/image-distance-of-subject.formula.ts';
import {
  magnificationFromTravel,
  magnificationFromTravelFormula,
} from '#core/gaussian/magnification-from-travel.formula.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';
import { nearestFocusDistance } from '#core/gaussian/nearest-focus-distance.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { onlyRoot } from '#core/quantity/solve.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Lens {
  readonly focalLength: number;
}

const thin = { principalSeparation: 0 };

const image = (given: Lens & { subjectDistance: number }) => ({ imageDistance: imageDistanceOfSubject(given) });

/** How near a lens comes whose way ends so far from the film. */
const nearest = ({ focalLength, farthestFromFilm }: Lens & { farthestFromFilm: number }) => {
  const magnification = magnificationFromTravel({ focusTravel: farthestFromFilm - focalLength, focalLength });
  return { subjectDistance: subjectDistance({ focalLength, magnification }) };
};

/** The travel with which m = q/f is the magnification of a subject so far away. */
const travelTo = (given: Lens & { subjectDistance: number }) =>
  onlyRoot(magnificationFromTravelFormula, {
    ask: 'focus-travel',
    given: { magnification: magnificationOfSubject(given), 'focal-length': given.focalLength },
  });
const travel = (given: Lens & { subjectDistance: number }) => ({ focusTravel: travelTo(given) });

/** A lens between object and screen, by its place: the magnification is the ratio of the two sides. */
const placed = ({ toObject, toScreen }: { toObject: number; toScreen: number }) => ({
  focalLength: closeFocusFocalLength({
    ...thin,
    focusDistance: toObject + toScreen,
    magnification: toScreen / toObject,
  }),
});

export const ours = oursById({
  'giancoli-23-49a': image,
  'giancoli-23-49b': image,
  'giancoli-23-49c': image,
  'giancoli-23-49d': nearest,
  'close-up-23': nearest,
  'car-20cm': nearest,
  'camera-71mm': (given: Lens & { subjectDistance: number }) => ({
    ...image(given),
    magnification: magnificationFromTravel({ ...travel(given), focalLength: given.focalLength }),
  }),
  'range-45mm': travel,
  'from-far-to-near-50mm': ({ focalLength, from, to }: Lens & { from: number; to: number }) => ({
    moved: travelTo({ focalLength, subjectDistance: to }) - travelTo({ focalLength, subjectDistance: from }),
  }),
  'washington-infinity-setting': travel,
  'notes-extension': ({ focusTravel, focalLength }: Lens & { focusTravel: number }) => {
    const magnification = magnificationFromTravel({ focusTravel, focalLength });
    return { magnification, beyondFocus: subjectDistance({ focalLength, magnification }) - focalLength };
  },
  'ncert-screen-90cm': ({ apart, moved }: { apart: number; moved: number }) =>
    placed({ toObject: (apart - moved) / 2, toScreen: (apart + moved) / 2 }),
  'two-places-40-80': ({ first, second }: { first: number; second: number }) =>
    placed({ toObject: first, toScreen: second }),
  'two-places-16cm': ({ focalLength, moved }: Lens & { moved: number }) => {
    // s − s' = f (1/m − m) is how far apart the two places are.
    const half = moved / focalLength / 2;
    return { apart: focusDistance({ ...thin, focalLength, magnification: Math.hypot(half, 1) - half }) };
  },
  'longest-focal-length': ({ apart }: { apart: number }) => ({
    apart: nearestFocusDistance({ ...thin, focalLength: apart / 4 }),
  }),
});
