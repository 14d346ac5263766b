import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { extensionForMagnification } from '#core/gaussian/extension-for-magnification.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { focusDistanceFormula } from '#core/gaussian/focus-distance.formula.ts';
import { imageDistanceFormula } from '#core/gaussian/image-distance.formula.ts';
import { lightLossFormula } from '#core/gaussian/light-loss.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { camelCase } from '#core/quantity/formula.ts';
import { renamed } from '#core/quantity/renamed.ts';
import { step, under } from '#core/quantity/answers-from.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { effectiveFNumberOfReversedLensFormula } from '#core/rig/effective-f-number-of-reversed-lens.formula.ts';
import { entrancePupilDistanceOfReversedLensFormula } from '#core/rig/entrance-pupil-distance-of-reversed-lens.formula.ts';
import { entrancePupilOfReversedLensFormula } from '#core/rig/entrance-pupil-of-reversed-lens.formula.ts';
import { magnificationOfReversedLensFormula } from '#core/rig/magnification-of-reversed-lens.formula.ts';
import { remainingRearProtrusion } from '#core/rig/rear-protrusion.ts';
import { workingDistanceOfRackedOutReversedLensFormula } from '#core/rig/working-distance-of-racked-out-reversed-lens.formula.ts';
import { Bench, choiceOf, keptChoice, startsOf } from '#site/state/bench.svelte.ts';
import { bodies, lenses } from '#site/state/crate.ts';
import { parts } from '#site/state/crate-parts.ts';
import { infinite, noneAtInfinity, roomInWords } from '#site/state/edges.ts';
import { claws } from '#site/state/stands-out.ts';
import { ofLens, ownLenses } from './figures/gear.ts';

/** On rings the right way round, a lens at infinity needs this much of them for the same size. */
const ringForTheSame = step({
  from: ['focal-length', 'magnification'],
  gives: ['unreversed.extension'],
  evaluate: (given) => ({ unreversedExtension: extensionForMagnification({ ...given, focusMagnification: 0 }) }),
});

/** Claws and contacts stay with the flange; glass beyond them goes with the lens, and draws back as that is racked out. */
const standsOut = step({
  from: ['rear-protrusion', 'focus-travel'],
  gives: ['remaining.rear-protrusion'],
  evaluate: ({ rearProtrusion, focusTravel }) => ({
    remainingRearProtrusion: remainingRearProtrusion({ rearProtrusion, fixed: claws, focusTravel }),
  }),
});

const { from: counted } = workingDistanceOfRackedOutReversedLensFormula;
const room = renamed(workingDistanceOfRackedOutReversedLensFormula, {
  gives: 'working-distance',
  from: counted.map((name) => (name === 'rear-protrusion' ? 'remaining.rear-protrusion' : name)),
  keys: counted.map(camelCase),
});

const tooNear = 'none: too near the sensor';
/** Lengths that are alike to a nanometre are alike. */
const nanometre = 1e-6;

export const bench = new Bench({
  inputs: {
    'focal-length': ownLenses['lens-28']['focal-length'],
    ...startsOf(parts['reversing-ring'], ['extension']),
    ...startsOf(lenses['lens-28'], ['f-number']),
    ...startsOf(ownLenses['lens-28'], [
      'front-principal-depth',
      'pupil-magnification',
      'principal-separation',
      'rear-protrusion',
    ]),
    'focus-travel': 0,
    'reversed-lens.register-distance': ownLenses['lens-28']['reversed-lens.register-distance'],
    ...startsOf(bodies['body-36'], ['register-distance', 'sensor-width']),
  },
  choices: {
    lens: { ...choiceOf('Lens', ownLenses, ofLens), takes: 'infinity' },
    drawn: keptChoice('In the figure', {
      both: 'both ways, one above the other',
      upright: 'the right way round alone',
      turned: 'turned round alone',
    }),
    sensor: choiceOf('Camera', bodies, ['sensor-width', 'register-distance']),
  },
  formulas: [
    magnificationOfReversedLensFormula,
    imageDistanceFormula,
    subjectDistanceFormula,
    standsOut,
    room,
    focusDistanceFormula,
    effectiveFNumberOfReversedLensFormula,
    lightLossFormula,
    entrancePupilOfReversedLensFormula,
    entrancePupilDistanceOfReversedLensFormula,
    fieldWidthFormula,
    ringForTheSame,
    ...under('unreversed', [workingDistanceFormula, effectiveFNumberFormula, lightLossFormula]),
  ],
  words: {
    magnification: (value) => (value === undefined ? tooNear : noneAtInfinity(value)),
    'subject-distance': { infinite },
    'working-distance': (room) =>
      room === undefined || (room > 0 && room < Infinity)
        ? undefined
        : room === Infinity
          ? infinite
          : `inside the lens, ${printQuantity('working-distance', -room)} behind its foremost part`,
    'focus-distance': { none: 'none: H and H′ cannot be so far apart here', infinite },
    'light-loss': (stops = 0) => (stops < -0.05 ? `none: ${printQuantity('light-loss', -stops)} gained` : undefined),
    'entrance-pupil-distance': { infinite },
    'field-width': { infinite },
    'unreversed.working-distance': roomInWords,
  },
  /** Held off by one focal length, as the right way round at infinity, a lens is sharp at infinity. */
  edge(known) {
    const apart = known['register-distance']! + known.extension! + known['front-principal-depth']!;
    if (known['image-distance'] !== undefined || Math.abs(apart - known['focal-length']!) > nanometre) return undefined;
    const fNumber = known['f-number']!;
    const effective = fNumber / known['pupil-magnification']!;
    return {
      magnification: 0,
      'image-distance': known['focal-length']!,
      'subject-distance': Infinity,
      'working-distance': Infinity,
      'focus-distance': Infinity,
      'effective-f-number': effective,
      'light-loss': 2 * Math.log2(effective / fNumber),
      'entrance-pupil-distance': Infinity,
      'field-width': Infinity,
      'unreversed.extension': 0,
      'unreversed.working-distance': Infinity,
      'unreversed.effective-f-number': fNumber,
      'unreversed.light-loss': 0,
    };
  },
});
