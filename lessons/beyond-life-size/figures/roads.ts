import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { magnificationFromExtension } from '#core/gaussian/magnification-from-extension.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistance } from '#core/gaussian/working-distance.formula.ts';
import type { Named } from '#core/quantity/formula.ts';
import { converterFactorWithRingBehind } from '#core/rig/converter-factor-with-ring-behind.formula.ts';
import { effectiveFNumberOfCoupledLenses } from '#core/rig/effective-f-number-of-coupled-lenses.formula.ts';
import { effectiveFNumberOfObjectiveOnLens } from '#core/rig/effective-f-number-of-objective-on-lens.formula.ts';
import { effectiveFNumberOfReversedLens } from '#core/rig/effective-f-number-of-reversed-lens.formula.ts';
import { effectiveFNumberWithConverter } from '#core/rig/effective-f-number-with-converter.formula.ts';
import { magnificationOfCoupledLenses } from '#core/rig/magnification-of-coupled-lenses.formula.ts';
import { magnificationOfInfinityObjective } from '#core/rig/magnification-of-infinity-objective.formula.ts';
import { magnificationOfReversedLens } from '#core/rig/magnification-of-reversed-lens.formula.ts';
import { magnificationWithRingsAroundConverter } from '#core/rig/magnification-with-rings-around-converter.formula.ts';
import { workingDistanceOfReversedLens } from '#core/rig/working-distance-of-reversed-lens.formula.ts';
import { workingDistanceWithConverter } from '#core/rig/working-distance-with-converter.formula.ts';
import { asGoodAsZero } from '#site/state/edges.ts';

/** The roads past life size, as the reader chooses among them. */
export const roads = {
  rings: 'rings or bellows',
  reversed: 'lens turned round',
  coupled: 'coupled lenses',
  converter: 'converter',
  objective: 'objective',
} as const;

export type Road = keyof typeof roads;

/** What each road goes by, in the order of its fields. */
export const inputsOf = {
  rings: [
    'extension',
    'focal-length',
    'focus-magnification',
    'f-number',
    'pupil-magnification',
    'front-principal-depth',
    'principal-separation',
  ],
  reversed: [
    'turned-lens.extension',
    'turned-lens.focal-length',
    'f-number',
    'turned-lens.pupil-magnification',
    'turned-lens.front-principal-depth',
    'turned-lens.principal-separation',
    'turned-lens.register-distance',
    'turned-lens.rear-protrusion',
    'register-distance',
  ],
  coupled: [
    'main-lens.focal-length',
    'main-lens.f-number',
    'reversed-lens.focal-length',
    'reversed-lens.f-number',
    'reversed-lens.register-distance',
    'reversed-lens.rear-protrusion',
  ],
  converter: [
    'converter-factor',
    'converter-length',
    'front-ring.extension',
    'rear-ring.extension',
    'focal-length',
    'focus-magnification',
    'f-number',
    'pupil-magnification',
    'front-principal-depth',
    'principal-separation',
  ],
  objective: [
    'objective-magnification',
    'numerical-aperture',
    'tube-focal-length',
    'objective.working-distance',
    'main-lens.focal-length',
    'main-lens.f-number',
  ],
} as const;

type OfRoads = (typeof inputsOf)[Road][number];
export const ofRoads = [...new Set(Object.values(inputsOf).flat())] as readonly OfRoads[];
export type RoadGiven = Readonly<Named<OfRoads>>;

/** What a road gives. */
export interface RoadAnswer {
  readonly magnification: number;
  readonly workingDistance: number;
  readonly effectiveFNumber: number;
  /** *N* as marked on what limits the light; undefined where that has no mark. */
  readonly mark: number | undefined;
}

/** Where each road leads. Throws OutOfRange for a lens turned round that is too near the sensor to focus. */
export const answersOf: Readonly<Record<Road, (given: RoadGiven) => RoadAnswer>> = {
  rings(given) {
    const magnification = magnificationFromExtension(given);
    return {
      ...sizeAndRoom(magnification, () =>
        workingDistance({ ...given, subjectDistance: subjectDistance({ ...given, magnification }) }),
      ),
      effectiveFNumber: effectiveFNumber({ ...given, magnification }),
      mark: given.fNumber,
    };
  },

  reversed(given) {
    const turned = turnedOf(given);
    const magnification = magnificationOfReversedLens(turned);
    return {
      magnification,
      // From whatever stands foremost: glass behind its flange now looks at the subject.
      workingDistance: workingDistanceOfReversedLens({ ...turned, magnification }) - given.turnedLensRearProtrusion,
      effectiveFNumber: effectiveFNumberOfReversedLens({ ...turned, magnification }),
      mark: given.fNumber,
    };
  },

  coupled(given) {
    const magnification = magnificationOfCoupledLenses(given);
    const worksAt = effectiveFNumberOfCoupledLenses({ ...given, magnification });
    return {
      magnification,
      workingDistance: given.reversedLensRegisterDistance - given.reversedLensRearProtrusion,
      effectiveFNumber: worksAt,
      mark: worksAt === given.mainLensFNumber ? given.mainLensFNumber : given.reversedLensFNumber,
    };
  },

  converter(given) {
    const workingConverterFactor = converterFactorWithRingBehind(given);
    const magnification = magnificationWithRingsAroundConverter({ ...given, workingConverterFactor });
    const working = { ...given, converterFactor: workingConverterFactor, magnification };
    return {
      ...sizeAndRoom(magnification, () => workingDistanceWithConverter(working)),
      effectiveFNumber: effectiveFNumberWithConverter(working),
      mark: given.fNumber,
    };
  },

  objective(given) {
    const [focalLength, fNumber] = [given.mainLensFocalLength, given.mainLensFNumber];
    const magnification = magnificationOfInfinityObjective({ ...given, focalLength });
    const worksAt = effectiveFNumberOfObjectiveOnLens({ ...given, magnification, fNumber });
    return {
      magnification,
      workingDistance: given.objectiveWorkingDistance,
      effectiveFNumber: worksAt,
      mark: worksAt === fNumber ? fNumber : undefined,
    };
  },
};

/** A lens at infinity without a ring has its subject infinitely far away. */
function sizeAndRoom(magnification: number, room: () => number) {
  return magnification < asGoodAsZero
    ? { magnification: 0, workingDistance: Infinity }
    : { magnification, workingDistance: room() };
}

/** The lens turned round as the formulas of one lens call it. */
const turnedOf = (given: RoadGiven) => ({
  focalLength: given.turnedLensFocalLength,
  frontPrincipalDepth: given.turnedLensFrontPrincipalDepth,
  pupilMagnification: given.turnedLensPupilMagnification,
  extension: given.turnedLensExtension,
  registerDistance: given.registerDistance,
  reversedLensRegisterDistance: given.turnedLensRegisterDistance,
  fNumber: given.fNumber,
});
