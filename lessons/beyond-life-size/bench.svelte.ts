import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { fieldWidth } from '#core/gaussian/field-width.formula.ts';
import { lightLoss } from '#core/gaussian/light-loss.formula.ts';
import { magnificationFromExtensionFormula } from '#core/gaussian/magnification-from-extension.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { step, under } from '#core/quantity/answers-from.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { converterFactorWithRingBehindFormula } from '#core/rig/converter-factor-with-ring-behind.formula.ts';
import { effectiveFNumberOfCoupledLensesFormula } from '#core/rig/effective-f-number-of-coupled-lenses.formula.ts';
import { effectiveFNumberOfObjectiveOnLensFormula } from '#core/rig/effective-f-number-of-objective-on-lens.formula.ts';
import { effectiveFNumberOfReversedLensFormula } from '#core/rig/effective-f-number-of-reversed-lens.formula.ts';
import { effectiveFNumberWithConverterFormula } from '#core/rig/effective-f-number-with-converter.formula.ts';
import { magnificationOfCoupledLensesFormula } from '#core/rig/magnification-of-coupled-lenses.formula.ts';
import { magnificationOfInfinityObjectiveFormula } from '#core/rig/magnification-of-infinity-objective.formula.ts';
import { magnificationOfReversedLensFormula } from '#core/rig/magnification-of-reversed-lens.formula.ts';
import { magnificationWithRingsAroundConverterFormula } from '#core/rig/magnification-with-rings-around-converter.formula.ts';
import { workingDistanceOfReversedLensFormula } from '#core/rig/working-distance-of-reversed-lens.formula.ts';
import { workingDistanceWithConverterFormula } from '#core/rig/working-distance-with-converter.formula.ts';
import { Bench, choiceOf, keptChoice, startsOf } from '#site/state/bench.svelte.ts';
import { bodies, lenses, rings } from '#site/state/crate.ts';
import { parts } from '#site/state/crate-parts.ts';
import { asGoodAsZero, infinite, noneAtInfinity } from '#site/state/edges.ts';
import {
  converters,
  frontChoice,
  mainChoice,
  objectives,
  ofConverter,
  ofLens,
  ofObjective,
  starts,
  turnedChoice,
} from './figures/gear.ts';
import { answersOf, ofRoads, roads, type Road } from './figures/roads.ts';

/** Where the chosen road leads. */
const onTheRoad = step({
  from: [...ofRoads, 'sensor-width'],
  gives: ['magnification', 'working-distance', 'effective-f-number', 'light-loss', 'field-width'],
  evaluate(given, { route }) {
    const { mark, ...answer } = answersOf[route as Road](given);
    const { magnification, effectiveFNumber } = answer;
    return {
      ...answer,
      lightLoss: mark === undefined ? undefined : lightLoss({ effectiveFNumber, fNumber: mark }),
      fieldWidth: magnification === 0 ? Infinity : fieldWidth({ ...given, magnification }),
    };
  },
});

/** What is less than this of a stop is printed as none. */
const dust = 0.05;
const tooNear = 'none: too near the sensor to focus';

export const bench = new Bench({
  inputs: {
    extension: rings.at(-1)!,
    ...startsOf(starts, ofLens),
    'f-number': 8,
    'turned-lens.extension': parts['reversing-ring'].extension,
    'turned-lens.focal-length': starts['turned-lens.focal-length'],
    'turned-lens.pupil-magnification': starts['turned-lens.pupil-magnification'],
    'turned-lens.front-principal-depth': starts['turned-lens.front-principal-depth'],
    'turned-lens.principal-separation': starts['turned-lens.principal-separation'],
    'turned-lens.register-distance': starts['turned-lens.register-distance'],
    'turned-lens.rear-protrusion': starts['turned-lens.rear-protrusion'],
    'main-lens.focal-length': starts['main-lens.focal-length'],
    'main-lens.f-number': 8,
    'reversed-lens.focal-length': starts['reversed-lens.focal-length'],
    'reversed-lens.f-number': starts['reversed-lens.f-number'],
    'reversed-lens.register-distance': starts['reversed-lens.register-distance'],
    'reversed-lens.rear-protrusion': starts['reversed-lens.rear-protrusion'],
    'converter-factor': { start: starts['converter-factor'], least: 1.01 },
    'converter-length': starts['converter-length'],
    'front-ring.extension': 0,
    'rear-ring.extension': 0,
    ...startsOf(starts, ofObjective),
    'objective.working-distance': { start: starts['objective.working-distance'], least: 0.1, most: 100 },
    ...startsOf(bodies['body-36'], ['sensor-width', 'register-distance']),
  },
  choices: {
    route: keptChoice('Road', roads),
    lens: choiceOf('Lens, at its closest focus', lenses, ofLens),
    turned: turnedChoice,
    main: mainChoice,
    front: frontChoice,
    converter: choiceOf('Converter', converters, ofConverter),
    objective: choiceOf('Objective', objectives, ofObjective),
    sensor: choiceOf('Camera', bodies, ['sensor-width']),
  },
  formulas: [
    onTheRoad,
    ...under('rings', [
      magnificationFromExtensionFormula,
      subjectDistanceFormula,
      workingDistanceFormula,
      effectiveFNumberFormula,
    ]),
    ...under(
      'turned-lens',
      [magnificationOfReversedLensFormula, workingDistanceOfReversedLensFormula, effectiveFNumberOfReversedLensFormula],
      {
        extension: 'turned-lens.extension',
        'focal-length': 'turned-lens.focal-length',
        'front-principal-depth': 'turned-lens.front-principal-depth',
        'pupil-magnification': 'turned-lens.pupil-magnification',
        'reversed-lens.register-distance': 'turned-lens.register-distance',
      },
    ),
    ...under('pair', [magnificationOfCoupledLensesFormula, effectiveFNumberOfCoupledLensesFormula]),
    converterFactorWithRingBehindFormula,
    ...under('converter', [magnificationWithRingsAroundConverterFormula]),
    ...under('converter', [workingDistanceWithConverterFormula, effectiveFNumberWithConverterFormula], {
      'converter-factor': 'working.converter-factor',
      magnification: 'converter.magnification',
    }),
    ...under('objective', [magnificationOfInfinityObjectiveFormula, effectiveFNumberOfObjectiveOnLensFormula], {
      'focal-length': 'main-lens.focal-length',
      'f-number': 'main-lens.f-number',
    }),
  ],
  words: {
    magnification: (value) => (value === undefined ? tooNear : noneAtInfinity(value)),
    'turned-lens.magnification': { none: tooNear },
    'rings.subject-distance': { infinite },
    'rings.working-distance': { infinite },
    'converter.working-distance': { infinite },
    'working-distance'(room = NaN) {
      if (room === Infinity) return infinite;
      return room <= 0 ? `inside the lens, ${printQuantity('working-distance', -room)} behind its front` : undefined;
    },
    'light-loss'(stops) {
      if (stops === undefined) return 'none stated: the objective decides, and has no mark';
      return stops < -dust ? `none: ${printQuantity('light-loss', -stops)} gained` : undefined;
    },
    'field-width': { infinite },
  },
  /** A lens at infinity without rings has its subject infinitely far away, with a converter and without. */
  edge(known) {
    const [rings, converter] = [known['rings.magnification'], known['converter.magnification']];
    if (rings === undefined || converter === undefined) return undefined;
    const ends = {
      ...(rings < asGoodAsZero && {
        'rings.magnification': 0,
        'rings.subject-distance': Infinity,
        'rings.working-distance': Infinity,
      }),
      ...(converter < asGoodAsZero && { 'converter.magnification': 0, 'converter.working-distance': Infinity }),
    };
    return Object.keys(ends).length > 0 ? ends : undefined;
  },
});
